package benchtrue.workbook.sheet;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFFont;

/** The cell styles of a workbook, each made once. */
public final class CellStyles {
    /** What a cell holds, and so how it looks. */
    public enum Kind {
        TEXT("@"),
        WRAPPED("@"),
        NOTE("@"),
        HEADING("@"),
        FIGURE_HEADING("@"),
        NOTE_HEADING("@"),
        TITLE("@"),
        COUNT("#,##0"),
        HOURS("#,##0.00"),
        SPLIT_HOURS("#,##0.00"),
        RATIO("0.00"),
        SHARE("0%"),
        TENTHS("#,##0.0"),
        CHANGE("+0%;-0%;0%"),
        TOTAL_WORDS("@"),
        TOTAL_COUNT("#,##0"),
        TOTAL("#,##0.00"),
        MONEY("#,##0.00"),
        WHOLE_MONEY("#,##0"),
        DATE("yyyy-mm-dd"),
        MONTH("yyyy-mm"),
        YEAR("0"),
        MONTH_HEADING("yyyy-mm"),
        INPUT("#,##0.00"),
        INPUT_SHARE("0%"),
        INPUT_CHANGE("+0%;-0%;0%"),
        ENTRY("@"),
        ENTRY_HOURS("#,##0.00"),
        ENTRY_DATE("yyyy-mm-dd");

        private final String format;

        Kind(String format) {
            this.format = format;
        }
    }

    private final Map<Kind, CellStyle> styles = new EnumMap<>(Kind.class);

    public CellStyles(Workbook workbook) {
        for (Kind kind : Kind.values()) {
            CellStyle style = workbook.createCellStyle();
            style.setDataFormat(workbook.createDataFormat().getFormat(kind.format));
            style.setVerticalAlignment(VerticalAlignment.TOP);
            styles.put(kind, style);
        }
        styles.get(Kind.WRAPPED).setWrapText(true);
        styles.get(Kind.NOTE).setWrapText(true);
        styles.get(Kind.NOTE).setAlignment(HorizontalAlignment.LEFT);
        styles.get(Kind.NOTE).setIndention((short) 1);
        heading(workbook, styles.get(Kind.HEADING), HorizontalAlignment.LEFT);
        heading(workbook, styles.get(Kind.FIGURE_HEADING), HorizontalAlignment.RIGHT);
        heading(workbook, styles.get(Kind.MONTH_HEADING), HorizontalAlignment.RIGHT);
        heading(workbook, styles.get(Kind.NOTE_HEADING), HorizontalAlignment.LEFT);
        styles.get(Kind.NOTE_HEADING).setIndention((short) 1);
        Font title = blank(workbook);
        title.setBold(true);
        title.setFontHeightInPoints((short) 14);
        styles.get(Kind.TITLE).setFont(named(workbook, title));
        List.of(Kind.TOTAL_WORDS, Kind.TOTAL_COUNT, Kind.TOTAL).forEach(kind -> total(workbook, styles.get(kind)));
        Font split = blank(workbook);
        split.setItalic(true);
        split.setFontHeightInPoints(workbook.getFontAt(0).getFontHeightInPoints());
        split.setColor(IndexedColors.GREY_80_PERCENT.getIndex());
        styles.get(Kind.SPLIT_HOURS).setFont(named(workbook, split));
        List.of(Kind.INPUT, Kind.INPUT_SHARE, Kind.INPUT_CHANGE, Kind.ENTRY, Kind.ENTRY_HOURS, Kind.ENTRY_DATE)
                .forEach(kind -> input(styles.get(kind)));
        styles.get(Kind.ENTRY).setWrapText(true);
    }

    /** A new font without the size and name that the library puts first: the format wants them after weight and slant. */
    private static Font blank(Workbook workbook) {
        XSSFFont font = (XSSFFont) workbook.createFont();
        font.getCTFont().removeSz(0);
        font.getCTFont().removeName(0);
        return font;
    }

    /** The name comes last, after size and colour. */
    private static Font named(Workbook workbook, Font font) {
        font.setFontName(workbook.getFontAt(0).getFontName());
        return font;
    }

    private static Font bold(Workbook workbook) {
        Font bold = blank(workbook);
        bold.setBold(true);
        bold.setFontHeightInPoints(workbook.getFontAt(0).getFontHeightInPoints());
        return named(workbook, bold);
    }

    private static void heading(Workbook workbook, CellStyle style, HorizontalAlignment side) {
        style.setFont(bold(workbook));
        style.setWrapText(true);
        style.setAlignment(side);
        style.setVerticalAlignment(VerticalAlignment.BOTTOM);
        style.setBorderBottom(BorderStyle.MEDIUM);
    }

    private static void total(Workbook workbook, CellStyle style) {
        style.setFont(bold(workbook));
        style.setBorderTop(BorderStyle.THIN);
    }

    /** Cells that the owner fills are yellow and unlocked. */
    private static void input(CellStyle style) {
        style.setLocked(false);
        style.setFillForegroundColor(IndexedColors.LEMON_CHIFFON.getIndex());
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        style.setBorderBottom(BorderStyle.THIN);
        style.setBorderTop(BorderStyle.THIN);
        style.setBorderLeft(BorderStyle.THIN);
        style.setBorderRight(BorderStyle.THIN);
    }

    CellStyle of(Kind kind) {
        return styles.get(kind);
    }
}
