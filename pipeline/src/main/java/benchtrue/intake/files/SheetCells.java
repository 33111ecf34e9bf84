package benchtrue.intake.files;

import benchtrue.intake.cells.ClockText;
import benchtrue.intake.cells.DateSystem;
import benchtrue.intake.cells.SerialDate;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.model.SharedStrings;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;

/** What stands in a sheet's cells, as text that the data contract would write: dates, times and durations told by format. */
final class SheetCells {
    private static final double SECONDS_OF_DAY = 86_400;

    /** Below it a serial with a format of hours is a duration, not a moment of 1900. */
    private static final int FIRST_LIKELY_DAY = 61;

    private static final double LAST_DAY = 2_958_466;

    private final SharedStrings texts;
    private final StylesTable styles;
    private final DateSystem dates;
    private final Map<Integer, Form> forms = new HashMap<>();

    /** What a number's format makes of it. */
    private enum Form {
        NUMBER,
        DATE,
        /** Hours that may pass 24, {@code [h]:mm}. */
        DURATION
    }

    SheetCells(SharedStrings texts, StylesTable styles, DateSystem dates) {
        this.texts = texts;
        this.styles = styles;
        this.dates = dates;
    }

    /**
     * Returns the text of a cell.
     *
     * @param type of the cell as the file says it, or null
     * @param style index of its format, or null
     * @param stored what the file stores: a value, an index into the shared texts, or text
     */
    String text(String type, String style, String stored) {
        if (stored.isEmpty()) {
            return "";
        }
        if (type == null || type.equals("n")) {
            return number(stored, style);
        }
        return switch (type) {
            case "s" -> shared(stored);
            case "b" -> stored.equals("1") ? "true" : "false";
            default -> stored;
        };
    }

    private String shared(String index) {
        if (texts == null) {
            throw new IllegalArgumentException("no shared texts");
        }
        return texts.getItemAt(Integer.parseInt(index.strip())).getString();
    }

    private String number(String stored, String style) {
        double value = Double.parseDouble(stored);
        if (!Double.isFinite(value)) {
            return stored;
        }
        Form form = style == null ? Form.NUMBER : forms.computeIfAbsent(Integer.valueOf(style), this::form);
        if (form == Form.NUMBER || value < 0 || value >= LAST_DAY) {
            return plain(value);
        }
        return form == Form.DURATION ? ClockText.clock(Math.round(value * SECONDS_OF_DAY)) : moment(value);
    }

    private static String plain(double value) {
        BigDecimal exact = new BigDecimal(Double.toString(value));
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }

    private String moment(double value) {
        long seconds = Math.round(value * SECONDS_OF_DAY);
        int day = (int) (seconds / (long) SECONDS_OF_DAY);
        long time = seconds % (long) SECONDS_OF_DAY;
        if (day < FIRST_LIKELY_DAY && (time > 0 || day == 0)) {
            return ClockText.clock(seconds);
        }
        if (dates == DateSystem.FROM_1900 && day == SerialDate.NO_SUCH_DAY) {
            return "1900-02-29";
        }
        String date = SerialDate.of(day, dates).toString();
        return time == 0 ? date : date + " " + ClockText.clock(time);
    }

    private Form form(int index) {
        if (styles == null || index < 0 || index >= styles.getNumCellStyles()) {
            return Form.NUMBER;
        }
        XSSFCellStyle style = styles.getStyleAt(index);
        String format = style.getDataFormatString();
        if (format != null && format.toLowerCase(java.util.Locale.ROOT).matches(".*\\[(h+|m+|s+)\\].*")) {
            return Form.DURATION;
        }
        return DateUtil.isADateFormat(style.getDataFormat(), format) ? Form.DATE : Form.NUMBER;
    }
}
