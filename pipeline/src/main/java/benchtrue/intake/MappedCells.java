package benchtrue.intake;

import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.cells.HoursText;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.dialects.DialectEvidence;
import java.util.Map;

/**
 * Cells of a file with words and units of its own.
 *
 * @param written how the file writes numbers, dates and times
 * @param mapping what its words and units mean
 */
record MappedCells(CellFormat written, Mapping mapping) implements CellFormat {
    /** Returns how the cells of a file are understood. */
    static CellFormat of(CellFormat written, Mapping mapping) {
        return mapping == Mapping.NONE ? written : new MappedCells(written, mapping);
    }

    @Override
    public String canonical(Column column, String text) {
        if (mapping.constants().containsKey(column)) {
            return text;
        }
        String part = mapping.part(column, text);
        String word = mapping.words().getOrDefault(column, Map.of()).get(Mapping.plain(part));
        if (word != null) {
            return word;
        }
        String canonical = written.canonical(column, part);
        return DialectEvidence.isHours(column) ? HoursText.counted(canonical.strip(), mapping.hours()) : canonical;
    }
}
