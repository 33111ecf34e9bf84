package benchtrue.answers;

import benchtrue.reconcile.Ledger;
import benchtrue.revision.ComingBook;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A price book beside the one before it, by family and title.
 *
 * @param book the newer one
 * @param before the one in force until then; empty for the first
 * @param families its rows by family, in the order of their names
 */
public record PriceList(PriceBook book, Optional<PriceBook> before, List<Family> families) {
    private static final Comparator<Row> BY_TITLE = Comparator.comparing(
                    (Row row) -> row.repair().title())
            .thenComparing(row -> row.repair().repairType());

    public PriceList {
        families = List.copyOf(families);
    }

    /** The repairs of one family; its name is empty where the book has none. */
    public record Family(String name, List<Row> rows) {
        public Family {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One repair.
     *
     * @param repair as the newer book has it; as the older one had it where the newer no longer does
     * @param before as the older one had it; empty where it is new
     * @param change what became of it
     */
    public record Row(RepairType repair, Optional<RepairType> before, Change change) {}

    /** What became of a repair from one book to the next. */
    public enum Change {
        SAME,
        CHANGED,
        NEW,
        NO_LONGER_OFFERED
    }

    /** Returns the list of each book to come, the earliest first; where none is to come, that of the book in force. */
    public static List<PriceList> of(Ledger ledger, List<ComingBook> coming) {
        List<PriceBook> versions = ledger.books().versions();
        List<PriceBook> told = coming.isEmpty()
                ? List.of(ledger.books().inForce(ledger.asOf()))
                : coming.stream().map(ComingBook::book).toList();
        return told.stream()
                .map(book -> between(
                        book,
                        versions.stream()
                                .filter(version -> version.effective() < book.effective())
                                .reduce((earlier, later) -> later)))
                .toList();
    }

    /** Returns a book beside another. */
    public static PriceList between(PriceBook book, Optional<PriceBook> before) {
        Map<String, List<Row>> families = new TreeMap<>();
        book.types().values().forEach(type -> add(families, row(type, before)));
        before.stream()
                .flatMap(older -> older.types().values().stream())
                .filter(type -> book.type(type.repairType()).isEmpty())
                .forEach(type -> add(families, new Row(type, Optional.of(type), Change.NO_LONGER_OFFERED)));
        return new PriceList(
                book,
                before,
                families.entrySet().stream()
                        .map(family -> new Family(
                                family.getKey(),
                                family.getValue().stream().sorted(BY_TITLE).toList()))
                        .toList());
    }

    private static void add(Map<String, List<Row>> families, Row row) {
        families.computeIfAbsent(row.repair().family(), fresh -> new ArrayList<>())
                .add(row);
    }

    private static Row row(RepairType type, Optional<PriceBook> before) {
        Optional<RepairType> old = before.flatMap(book -> book.type(type.repairType()));
        if (before.isPresent() && old.isEmpty()) {
            return new Row(type, old, Change.NEW);
        }
        boolean same = old.isEmpty() || type.quotesAs(old.get());
        return new Row(type, old, same ? Change.SAME : Change.CHANGED);
    }

    /** Returns how many repairs are not as they were. */
    public long changes() {
        return families.stream()
                .flatMap(family -> family.rows().stream())
                .filter(row -> row.change() != Change.SAME)
                .count();
    }
}
