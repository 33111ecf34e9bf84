package benchtrue.intake;

import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.columns.SourceColumn;
import benchtrue.intake.columns.Table;
import benchtrue.intake.dialects.CurrencyMarks;
import benchtrue.intake.dialects.Dialect;
import benchtrue.intake.dialects.DialectDetector;
import benchtrue.intake.dialects.Dialects;
import benchtrue.intake.dialects.Header;
import benchtrue.intake.dialects.LookAgain;
import benchtrue.intake.files.DigestedFile;
import benchtrue.intake.files.Records;
import benchtrue.shop.Absent;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Notice;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads all files of one table, older exports first. */
final class ReadTable {
    private final List<ExportFile> files;
    private final Dialects dialects;
    private final TableRowsBuilder rows;
    private final CurrencyMarks currencies = new CurrencyMarks();
    private final List<Notice> notices = new ArrayList<>();
    private final List<CellFormat> formats = new ArrayList<>();
    private Optional<Refusal> refusal = Optional.empty();
    private ExportFile current;

    /**
     * Takes what there is to read.
     *
     * @param files of the table, older exports first
     * @param dialects how each is written
     */
    ReadTable(Table table, List<ExportFile> files, Dialects dialects) {
        this.files = files;
        this.dialects = dialects;
        rows = new TableRowsBuilder(table);
    }

    void read() {
        dialects.requireToldHours(files);
        for (ExportFile file : files) {
            current = file;
            read(file);
        }
    }

    /** Returns the file that is being read. */
    ExportFile current() {
        return current;
    }

    private void read(ExportFile file) {
        try (DigestedFile bytes = dialects.open(file)) {
            read(file, dialects.of(file), bytes);
        } catch (IOException failed) {
            throw new Refusal(
                    ExitCode.READ_FAILED,
                    file.name() + ": reading failed part-way: " + failed.getMessage()
                            + ". Look whether the file can be opened and run again.",
                    failed);
        }
    }

    private void read(ExportFile file, Dialect dialect, DigestedFile bytes) throws IOException {
        int first = rows.size();
        try {
            readRows(file, dialect, bytes);
            String digest = bytes.finish();
            rows.end(new InputFile(
                    file.name(),
                    file.table(),
                    digest,
                    bytes.size(),
                    first,
                    rows.size() - first,
                    file.table() == Table.PRICE_BOOK && !file.isBook() ? Absent.DAY : file.day(),
                    dialect.told(),
                    file.file(),
                    file.keys()));
            notices.addAll(dialect.notices());
        } catch (Refusal refusal) {
            throw dialect == Dialect.PLAIN && DialectDetector.isForeign(file) ? new LookAgain() : refusal;
        }
    }

    private void readRows(ExportFile file, Dialect dialect, DigestedFile bytes) throws IOException {
        try (Records records = dialect.open(bytes, file.name())) {
            readRows(file, dialect, records);
        }
    }

    private void readRows(ExportFile file, Dialect dialect, Records records) throws IOException {
        if (!records.next()) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file.name() + ", line 1: found an empty file, expected a header with the columns of "
                            + file.table().title() + ". Export it again, or take the file out.");
        }
        Header header = Header.read(records, file.table(), file.mapping(), file.name());
        if (file.table().versioned() && !file.isBook() && !header.isSetAside()) {
            String title = file.table().title();
            String orSay = file.table() == Table.PRICE_BOOK
                    ? ", or say in its rule of shop.toml from which day it holds: effective = \"2026-01-01\"."
                    : ".";
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file.name() + ": found a file of " + title + " in the inbox, expected it in the folder " + title
                            + ", named by the day it takes effect, such as " + title + "/2026-01-01.csv. Move it there"
                            + orSay);
        }
        header.misspelt(file.table()).forEach((found, near) -> notices.add(misspelt(file, found, near)));
        rows.begin(header, header.isSetAside() ? Mapping.NONE : file.mapping());
        if (header.isSetAside()) {
            addReturned(file, header, dialect, records);
        } else {
            add(file, records, MappedCells.of(dialect.cells(), file.mapping()));
        }
    }

    private void add(ExportFile file, Records records, CellFormat cells) throws IOException {
        int number = number(cells);
        CellFormat watched = currencies.watch(cells, file.name(), records);
        while (records.next()) {
            rows.add(records, watched, number);
        }
    }

    /** Adds rows that come back; each is written as the file it came from, since it holds that file's own text. */
    private void addReturned(ExportFile file, Header header, Dialect dialect, Records records) throws IOException {
        int source = header.cell(SourceColumn.SOURCE_FILE);
        Map<String, CellFormat> known = new HashMap<>();
        while (records.next()) {
            CellFormat cells = source < records.size()
                    ? known.computeIfAbsent(text(records, source), name -> cellsOf(name, dialect))
                    : dialect.cells();
            rows.add(records, currencies.watch(cells, file.name(), records), number(cells));
        }
    }

    private static String text(Records records, int cell) {
        int start = records.start(cell);
        return new String(records.bytes(), start, records.end(cell) - start, StandardCharsets.UTF_8);
    }

    private CellFormat cellsOf(String name, Dialect returned) {
        return files.stream()
                .filter(file -> file.name().equals(name))
                .findFirst()
                .map(file -> MappedCells.of(dialects.ofReturned(file, returned), file.mapping()))
                .orElse(returned.cells());
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

    CurrencyMarks currencies() {
        return currencies;
    }

    List<Notice> notices() {
        return notices;
    }
}
