package benchtrue.reconcile;

import benchtrue.format.FormulaGuard;
import benchtrue.intake.Column;
import benchtrue.intake.Kind;
import benchtrue.intake.SourceColumn;
import benchtrue.intake.Table;
import benchtrue.shop.FileOut;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Writes the rows that can't be used in a form that can be corrected and put back in the inbox. */
public final class WriteSetAside {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9.:,]+");

    /**
     * Writes one file a table, such as {@code time-log.csv}: UTF-8, CRLF, where each row came from, then the canonical
     * columns with the original text. Text that a spreadsheet would run begins with an apostrophe, which reading takes
     * off again.
     *
     * @param folder made where it is missing; nothing is made when nothing was set aside
     */
    public void write(SetAside rows, Path folder) throws IOException {
        for (Table table : rows.tables()) {
            Files.createDirectories(folder);
            Path file = folder.resolve(table.title() + ".csv");
            try (Writer out = FileOut.text(file)) {
                out.write(header(table));
                rows.forEach(table, row -> write(row, out));
            } catch (UncheckedIOException failed) {
                throw failed.getCause();
            }
        }
    }

    private static String header(Table table) {
        List<String> names = Stream.concat(
                        Stream.of(SourceColumn.values()).map(Column::header),
                        table.columns().stream()
                                .filter(column -> column.cell().kind() != Kind.PASSED)
                                .map(Column::header))
                .toList();
        return String.join(",", names) + "\r\n";
    }

    private static void write(SetAsideRow row, Writer out) {
        Stream<String> source =
                Stream.of(row.file(), Integer.toString(row.line()), row.digest(), String.join("; ", row.reasons()));
        List<String> cells = Stream.concat(source, row.texts().stream())
                .map(WriteSetAside::cell)
                .toList();
        try {
            out.write(String.join(",", cells) + "\r\n");
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static String cell(String text) {
        String safe = NUMBER.matcher(text).matches() ? text : FormulaGuard.written(text);
        boolean quoted = safe.chars().anyMatch(letter -> "\",\r\n".indexOf(letter) >= 0);
        return quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }
}
