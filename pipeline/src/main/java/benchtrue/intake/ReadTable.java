package benchtrue.intake;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Notice;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads all files of one table, older exports first. */
final class ReadTable {
    private final TableRowsBuilder rows;
    private final List<Notice> notices = new ArrayList<>();
    private final List<CellFormat> formats = new ArrayList<>();
    private Optional<Refusal> refusal = Optional.empty();

    ReadTable(Table table) {
        rows = new TableRowsBuilder(table);
    }

    void read(ExportFile file, Dialect dialect) {
        int first = rows.size();
        try (DigestedFile bytes = new DigestedFile(file.path(), file.name())) {
            records(file, dialect, bytes);
            String digest = bytes.finish();
            rows.end(new InputFile(
                    file.name(), file.table(), digest, bytes.size(), first, rows.size() - first, file.day()));
        } catch (IOException failed) {
            throw new Refusal(
                    ExitCode.READ_FAILED,
                    file.name() + ": reading failed part-way: " + failed.getMessage()
                            + ". Look whether the file can be opened and run again.",
                    failed);
        }
    }

    private void records(ExportFile file, Dialect dialect, DigestedFile bytes) throws IOException {
        Records records = dialect.open(bytes, file.name());
        if (!records.next()) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file.name() + ", line 1: found an empty file, expected a header with the columns of "
                            + file.table().title() + ". Export it again, or take the file out.");
        }
        Header header = Header.read(records, file.table(), file.name());
        if (file.table() == Table.PRICE_BOOK && file.name().startsWith("exports/") && !header.isSetAside()) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file.name()
                            + ": found a price book in the inbox, expected it in the folder price-book, named by the"
                            + " day it takes effect, such as price-book/2026-01-01.csv. Move it there.");
        }
        header.misspelt(file.table()).forEach((found, near) -> notices.add(misspelt(file, found, near)));
        rows.begin(header);
        int number = number(dialect.cells());
        while (records.next()) {
            rows.add(records, dialect.cells(), number);
        }
    }

    private static Notice misspelt(ExportFile file, String found, String near) {
        return new Notice(
                "unread-column",
                "A column was not read although its name is close to a known one: rename it if that is meant.",
                1,
                List.of(file.name() + ": \"" + Problem.shown(found) + "\", nearest " + near));
    }

    private int number(CellFormat format) {
        if (!formats.contains(format)) {
            formats.add(format);
        }
        return formats.indexOf(format);
    }

    /** Keeps why the table can't be read, so that the first table's words are heard whichever was read first. */
    void refuse(Refusal why) {
        refusal = Optional.of(why);
    }

    Optional<Refusal> refusal() {
        return refusal;
    }

    TableRows rows() {
        return rows.build();
    }

    List<Notice> notices() {
        return notices;
    }
}
