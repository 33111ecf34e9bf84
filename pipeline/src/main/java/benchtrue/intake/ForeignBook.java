package benchtrue.intake;

import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.columns.BookColumn;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.Table;
import benchtrue.intake.dialects.Dialect;
import benchtrue.intake.dialects.DialectDetector;
import benchtrue.intake.dialects.Header;
import benchtrue.intake.dialects.PlainFileProbe;
import benchtrue.intake.dialects.TextFile;
import benchtrue.intake.files.Records;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.PriceBook;
import benchtrue.shop.Refusal;
import benchtrue.shop.RepairType;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The newest price book that another system wrote. It can be written anew with the rows of another version: in its own
 * columns, words, letters and number form, and what did not change as it stands, byte for byte.
 */
public final class ForeignBook {
    private final ExportFile file;
    private final Dialect dialect;
    private final TextFile form;
    private final String text;

    private ForeignBook(ExportFile file, Dialect dialect, TextFile form, String text) {
        this.file = file;
        this.dialect = dialect;
        this.form = form;
        this.text = text;
    }

    /**
     * Finds it among the files of {@code price-book/}; empty where the shop has none but the program's own.
     *
     * @param settings how the shop's files are read
     */
    public static Optional<Path> newest(Path shop, Settings settings) {
        return file(shop, settings).map(ExportFile::path);
    }

    private static Optional<ExportFile> file(Path shop, Settings settings) {
        return Inbox.find(shop, settings).files(Table.PRICE_BOOK).stream()
                .filter(file -> file.name().startsWith(Inbox.BOOKS) && !OwnBook.is(file.path()))
                .reduce((older, newer) -> newer);
    }

    /**
     * Writes a version into a folder as the newest of these files, under the version's first day, and reads it back through
     * the same rule.
     *
     * @return the file; empty, and nothing written, where it would not read as that very version: the file is a workbook, or
     *     lacks a cell that changed
     */
    public static Optional<Path> write(Path shop, Settings settings, PriceBook book, Path folder) {
        ExportFile newest = file(shop, settings).orElseThrow();
        try {
            Optional<ForeignBook> like = read(newest);
            return like.isEmpty() ? Optional.empty() : like.get().write(book, settings, folder);
        } catch (IOException failed) {
            throw new Refusal(
                    ExitCode.CANNOT_WRITE,
                    newest.name() + ": writing it anew into " + folder + " failed: " + failed.getMessage() + ".",
                    failed);
        }
    }

    /** Returns a file that can be put back as it stands. */
    private static Optional<ForeignBook> read(ExportFile file) throws IOException {
        Dialect dialect = DialectDetector.ofWhole(file);
        if (dialect.text().isEmpty()) {
            return Optional.empty();
        }
        TextFile form = dialect.text().get();
        byte[] bytes = Files.readAllBytes(file.path());
        int mark = form.encoding().mark();
        try {
            ByteBuffer letters = ByteBuffer.wrap(bytes, mark, bytes.length - mark);
            String text = form.encoding().charset().newDecoder().decode(letters).toString();
            ForeignBook book = new ForeignBook(file, dialect, form, text);
            return Arrays.equals(book.bytes(text), bytes) ? Optional.of(book) : Optional.empty();
        } catch (CharacterCodingException notItsLetters) {
            return Optional.empty();
        }
    }

    private byte[] bytes(String anew) throws CharacterCodingException {
        ByteBuffer letters = form.encoding().charset().newEncoder().encode(CharBuffer.wrap(anew));
        int mark = form.encoding().mark();
        byte[] marked = "\uFEFF".getBytes(form.encoding().charset());
        byte[] bytes = Arrays.copyOf(Arrays.copyOf(marked, mark), mark + letters.remaining());
        letters.get(bytes, mark, letters.remaining());
        return bytes;
    }

    private Optional<Path> write(PriceBook book, Settings settings, Path folder) throws IOException {
        Optional<BookRows> rows = rows();
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        String ending = file.name().substring(file.name().lastIndexOf('.'));
        Path anew = folder.resolve(LocalDate.ofEpochDay(book.effective()) + ending);
        try {
            Files.write(
                    anew,
                    bytes(new WriteForeign(file, form.layout(), dialect.cells(), text, rows.get(), settings.words())
                            .with(book)));
        } catch (CharacterCodingException noSuchLetter) {
            return Optional.empty();
        }
        ExportFile again = new ExportFile(
                anew, file.file(), file.sheet(), file.table(), book.effective(), file.mapping(), List.of());
        Optional<ForeignBook> back = read(again);
        if (back.isPresent()
                && back.get().rows().filter(found -> found.isOf(book)).isPresent()) {
            return Optional.of(anew);
        }
        Files.delete(anew);
        return Optional.empty();
    }

    /** Returns the rows with their places; empty where a cell is written in some way of its own. */
    private Optional<BookRows> rows() throws IOException {
        int[] lines = CellPlaces.lines(text);
        List<CellPlaces> places = new ArrayList<>();
        TableRowsBuilder rows = new TableRowsBuilder(Table.PRICE_BOOK);
        try (Records records = dialect.open(new ByteArrayInputStream(bytes(text)), file.name())) {
            records.next();
            Header header = Header.read(records, Table.PRICE_BOOK, file.mapping(), file.name());
            rows.begin(header, file.mapping());
            CellFormat format = MappedCells.of(dialect.cells(), file.mapping());
            while (records.next()) {
                CellPlaces.of(text, lines[records.line() - 1], records, form.layout())
                        .ifPresent(places::add);
                rows.add(records, format, 0);
            }
            return places.size() == rows.size()
                    ? Optional.of(new BookRows(header, rows.build(), places))
                    : Optional.empty();
        }
    }

    /** Whether a file is in the words of the data contract itself, as the program writes adopted books. */
    static final class OwnBook {
        private static final String HEADER = String.join(
                ",", Table.PRICE_BOOK.columns().stream().map(Column::header).toList());

        private OwnBook() {}

        static boolean is(Path file) {
            try {
                String beginning = new String(PlainFileProbe.beginning(file), java.nio.charset.StandardCharsets.UTF_8);
                return beginning.startsWith(HEADER + "\r\n");
            } catch (IOException unreadable) {
                return false; // The reader of files says so with its reason.
            }
        }
    }

    /** The rows of a price book's file. */
    record BookRows(Header header, TableRows rows, List<CellPlaces> places) {
        String key(int row) {
            return rows.text(BookColumn.REPAIR_TYPE, row);
        }

        /** Returns whether every row that can be read is the version's, and every row of the version is there. */
        boolean isOf(PriceBook book) {
            List<String> keys = new ArrayList<>();
            for (int row = 0; row < rows.size(); row++) {
                if (rows.readable(row)) {
                    keys.add(key(row));
                    Optional<RepairType> type = book.type(key(row));
                    if (type.isEmpty() || !changed(row, type.get()).isEmpty()) {
                        return false;
                    }
                }
            }
            return keys.containsAll(book.types().keySet());
        }

        /** Returns the columns of the file in which a row is not as a version has it. */
        List<BookColumn> changed(int row, RepairType type) {
            return Arrays.stream(BookColumn.values())
                    .filter(column -> header.cell(column) != Header.NO_CELL)
                    .filter(column -> !BookCells.same(column, rows, row, type))
                    .toList();
        }

        /** Returns what stands in a column, empty cells left out. */
        List<String> texts(BookColumn column) {
            List<String> texts = new ArrayList<>();
            for (int row = 0; row < rows.size(); row++) {
                if (!rows.text(column, row).isBlank()) {
                    texts.add(rows.text(column, row));
                }
            }
            return texts;
        }
    }
}
