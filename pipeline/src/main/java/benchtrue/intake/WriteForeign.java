package benchtrue.intake;

import benchtrue.format.FormulaGuard;
import benchtrue.intake.ForeignBook.BookRows;
import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.columns.BookColumn;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.dialects.Header;
import benchtrue.intake.files.TextLayout;
import benchtrue.settings.FileRule;
import benchtrue.settings.Pair;
import benchtrue.settings.ValueMap;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.QuoteMode;

/** Puts the rows of a version into the text of another system's price book: cells that changed, and no others. */
final class WriteForeign {
    private final ExportFile file;
    private final TextLayout layout;
    private final CSVFormat csv;
    private final CellFormat written;
    private final String text;
    private final BookRows found;
    private final List<ValueMap> words;

    WriteForeign(
            ExportFile file,
            TextLayout layout,
            CellFormat written,
            String text,
            BookRows found,
            List<ValueMap> shared) {
        this.file = file;
        this.layout = layout;
        this.written = written;
        this.text = text;
        this.found = found;
        words = Stream.concat(file.rule().stream().flatMap(rule -> rule.values().stream()), shared.stream())
                .toList();
        csv = CSVFormat.RFC4180
                .builder()
                .setDelimiter(layout.delimiter())
                .setQuote(layout.quote() == FileRule.NO_QUOTE ? null : layout.quote())
                .get();
    }

    /** Returns the text with a version's rows; where any changed, without a total, which would no longer be one. */
    String with(PriceBook book) {
        StringBuilder anew = new StringBuilder();
        TreeSet<String> missing = new TreeSet<>(book.types().keySet());
        int at = 0;
        for (int row = 0; row < found.places().size(); row++) {
            CellPlaces place = found.places().get(row);
            anew.append(text, at, place.start());
            Optional<RepairType> type = book.type(found.key(row));
            if (type.isPresent()) {
                anew.append(row(row, type.get()));
                missing.remove(found.key(row));
            } else if (!found.rows().readable(row)) {
                anew.append(text, place.start(), place.end());
            }
            at = place.end();
        }
        missing.forEach(key -> append(anew, book.type(key).orElseThrow()));
        boolean same = anew.toString().equals(text.substring(0, at));
        return same || text.substring(at).isBlank() ? anew + text.substring(at) : anew.toString();
    }

    private String row(int row, RepairType type) {
        CellPlaces place = found.places().get(row);
        StringBuilder anew = new StringBuilder(text.substring(place.start(), place.end()));
        List<BookColumn> changed = new ArrayList<>(found.changed(row, type));
        changed.sort((one, other) -> found.header().cell(other) - found.header().cell(one));
        for (BookColumn column : changed) {
            int[] cell = place.cells().get(found.header().cell(column));
            boolean quoted = cell[1] > cell[0] && text.charAt(cell[0]) == layout.quote();
            String cellAnew = cell(column, found.rows().text(column, row), type);
            anew.replace(
                    cell[0] - place.start(), cell[1] - place.start(), quoted ? quoted(cellAnew) : csv.format(cellAnew));
        }
        return anew.toString();
    }

    private String quoted(String text) {
        return csv.builder().setQuoteMode(QuoteMode.ALL).get().format(text);
    }

    private void append(StringBuilder anew, RepairType type) {
        String[] cells = new String[found.header().size()];
        Arrays.fill(cells, "");
        for (BookColumn column : BookColumn.values()) {
            if (found.header().cell(column) != Header.NO_CELL) {
                cells[found.header().cell(column)] = cell(column, "", type);
            }
        }
        String end = text.contains("\r\n") ? "\r\n" : "\n";
        boolean ended = anew.length() == 0 || anew.charAt(anew.length() - 1) == end.charAt(end.length() - 1);
        anew.append(ended ? "" : end).append(csv.format((Object[]) cells)).append(end);
    }

    private String cell(BookColumn column, String old, RepairType type) {
        if (column.cell().kind().isText()) {
            return FormulaGuard.written(words(column, BookCells.text(column, type)));
        }
        long amount = BookCells.amount(column, type);
        List<String> texts = found.texts(column);
        String like = old.isBlank() ? texts.stream().findFirst().orElse("") : old;
        NumberForm form = new NumberForm(mark(), texts);
        if (!Absent.has(amount)) {
            return "";
        }
        return switch (column.cell().kind()) {
            case HOURS -> form.hours(amount, file.mapping().hours(), like.strip());
            case MONEY -> form.written(new BigDecimal(Money.text(amount)), like);
            default -> form.written(BigDecimal.valueOf(amount), like);
        };
    }

    /** Returns the file's own words for the contract's. */
    private String words(BookColumn column, String contract) {
        if (column.cell().kind() == Kind.TEXT) {
            return word(column, contract);
        }
        return String.join(
                ";",
                Arrays.stream(contract.split(";"))
                        .map(word -> word(column, word))
                        .toList());
    }

    private String word(BookColumn column, String contract) {
        return words.stream()
                .filter(values -> values.column().equals(column.header()))
                .flatMap(values -> values.words().stream())
                .filter(pair -> pair.text().equals(contract))
                .map(Pair::key)
                .findFirst()
                .orElse(contract);
    }

    /** Returns what the file has before decimals: what it reads so; where it reads both, what its delimiter leaves. */
    private char mark() {
        boolean comma = reads("1,5");
        boolean point = reads("1.5");
        return comma && (!point || layout.delimiter() == ';') ? ',' : '.';
    }

    private boolean reads(String number) {
        return written.canonical(BookColumn.BOOK_LABOUR, number).equals("1.5");
    }
}
