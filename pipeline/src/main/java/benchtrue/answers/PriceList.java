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
 * A price book beside the one before it, by family and title; what is added on a condition stands as a row below its repair.
 *
 * @param book the newer one
 * @param before the one in force until then; empty for the first
 * @param families its rows by family, in the order of their names
 */
public record PriceList(PriceBook book, Optional<PriceBook> before, List<Family> families) {
    private static final Comparator<Row> BY_TITLE = Comparator.comparing(
                    (Row row) -> row.repair().title().replaceFirst("^\\+ ", ""))
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
        Map<String, RepairType> now = rows(book);
        Optional<Map<String, RepairType>> then = before.map(PriceList::rows);
        now.values().forEach(type -> add(families, row(type, then)));
        then.stream()
                .flatMap(older -> older.values().stream())
                .filter(type -> !now.containsKey(type.repairType()))
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

    /** Repairs, and what is added to them on a condition. */
    private static Map<String, RepairType> rows(PriceBook book) {
        Map<String, RepairType> rows = new TreeMap<>(book.types());
        book.surcharges()
                .forEach(line -> book.type(line.repairType())
                        .map(line::rowBelow)
                        .ifPresent(row -> rows.put(row.repairType(), row)));
        return rows;
    }

    private static Row row(RepairType type, Optional<Map<String, RepairType>> before) {
        Optional<RepairType> old = before.flatMap(book -> Optional.ofNullable(book.get(type.repairType())));
        if (before.isPresent() && old.isEmpty()) {
            return new Row(type, old, Change.NEW);
        }
        boolean same = old.isEmpty() || type.quotesAs(old.get());
        return new Row(type, old, same ? Change.SAME : Change.CHANGED);
    }

    /** Returns what its figures are. */
    public String note() {
        return "Bench hours and price of each repair; parts are quoted apart."
                + (book.surcharges().isEmpty() ? "" : " A row with + is added to its repair wherever it holds.");
    }

    /** Returns how many rows are not as they were. */
    public long changes() {
        return families.stream()
                .flatMap(family -> family.rows().stream())
                .filter(row -> row.change() != Change.SAME)
                .count();
    }
}
