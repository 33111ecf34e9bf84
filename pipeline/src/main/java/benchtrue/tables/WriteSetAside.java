package benchtrue.tables;

import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.SourceColumn;
import benchtrue.intake.columns.Table;
import benchtrue.reconcile.DoubtfulRow;
import benchtrue.reconcile.SetAside;
import benchtrue.reconcile.SetAsideRow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes the rows that can't be used in a form that can be corrected and put back in the inbox, and those that are doubtful. */
public final class WriteSetAside {
    private static final ResultTable<DoubtfulRow> DOUBTFUL = ResultTable.<DoubtfulRow>of(
                    "doubtful", "One row is one row that was used, but may be wrong")
            .text("source_file", "where it stands", DoubtfulRow::file)
            .count("source_line", "its line", DoubtfulRow::line)
            .text("table", "what it is", DoubtfulRow::table)
            .text("doubt", "what is doubtful", DoubtfulRow::doubt)
            .text("assumed", "what was assumed", DoubtfulRow::assumed);

    /**
     * Writes one file a table, such as {@code time-log.csv}: where each row came from, then the canonical columns with the
     * original text; and {@code doubtful.csv}.
     *
     * @param folder made where it is missing; nothing is made when nothing was set aside and nothing is doubtful
     */
    public void write(SetAside rows, Path folder) throws IOException {
        List<DoubtfulRow> doubtful = rows.doubtful();
        if (rows.tables().isEmpty() && doubtful.isEmpty()) {
            return;
        }
        Files.createDirectories(folder);
        for (Table table : rows.tables()) {
            List<SetAsideRow> found = new ArrayList<>();
            rows.forEach(table, found::add);
            declared(table).write(found, folder);
        }
        if (!doubtful.isEmpty()) {
            DOUBTFUL.write(doubtful, folder);
        }
    }

    private static ResultTable<SetAsideRow> declared(Table table) {
        ResultTable<SetAsideRow> declared = ResultTable.<SetAsideRow>of(table.title(), "One row is one row set aside")
                .text(SourceColumn.SOURCE_FILE.header(), "where it stands", SetAsideRow::file)
                .count(SourceColumn.SOURCE_LINE.header(), "its line", SetAsideRow::line)
                .text(SourceColumn.SOURCE_DIGEST.header(), "tells it from any other", SetAsideRow::digest)
                .text(SourceColumn.REASONS.header(), "why", row -> String.join("; ", row.reasons()));
        int place = 0;
        for (Column column : table.columns()) {
            if (column.cell().kind() != Kind.PASSED) {
                int at = place++;
                declared = declared.original(
                        column.header(), "as it stood", row -> row.texts().get(at));
            }
        }
        return declared;
    }
}
