package benchtrue.intake;

import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.Mapping;
import benchtrue.settings.HoursUnit;
import benchtrue.shop.Hours;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Cells of a file with words and units of its own.
 *
 * @param written how the file writes numbers, dates and times
 * @param mapping what its words and units mean
 */
record MappedCells(CellFormat written, Mapping mapping) implements CellFormat {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,12}(\\.\\d{0,12})?|\\.\\d{1,12})");

    /** Returns how the cells of a file are understood. */
    static CellFormat of(CellFormat written, Mapping mapping) {
        return mapping == Mapping.NONE ? written : new MappedCells(written, mapping);
    }

    @Override
    public String canonical(Column column, String text) {
        if (mapping.constants().containsKey(column)) {
            return text;
        }
        String word = mapping.words().getOrDefault(column, Map.of()).get(Mapping.plain(text));
        if (word != null) {
            return word;
        }
        String canonical = written.canonical(column, text);
        Kind kind = column.cell().kind();
        boolean counted = mapping.hours() != HoursUnit.HOURS && (kind == Kind.HOURS || kind == Kind.SIGNED_HOURS);
        return counted && NUMBER.matcher(canonical.strip()).matches() ? hours(canonical.strip()) : canonical;
    }

    /** Returns hours as h:mm:ss, in decimals where a second is broken. */
    private String hours(String number) {
        BigDecimal seconds = new BigDecimal(number)
                .multiply(BigDecimal.valueOf(Hours.SECONDS / mapping.hours().anHour()));
        if (seconds.stripTrailingZeros().scale() > 0) {
            return seconds.divide(BigDecimal.valueOf(Hours.SECONDS), new MathContext(18))
                    .toPlainString();
        }
        long whole = seconds.abs().longValue();
        return (seconds.signum() < 0 ? "-" : "") + whole / Hours.SECONDS + ":" + two(whole / 60 % 60) + ":"
                + two(whole % 60);
    }

    private static String two(long number) {
        return (number < 10 ? "0" : "") + number;
    }
}
