package benchtrue.nightly;

import benchtrue.revision.AlreadyDecided;
import benchtrue.revision.ComingBook;
import benchtrue.revision.Kept;
import benchtrue.shop.Absent;
import benchtrue.shop.PriceBook;
import benchtrue.shop.PriceBooks;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the owner decided up to a day. A decision counts where the book of its day stands and has the row as it was decided:
 * what was withdrawn, or never written, does not.
 */
final class Decisions {
    private final PriceBooks books;
    private final int asOf;
    private final List<Sitting> standing;

    /**
     * Takes the records of a shop.
     *
     * @param asOf decisions made later are left out
     */
    Decisions(DecisionFiles files, PriceBooks books, int asOf) {
        this.books = books;
        this.asOf = asOf;
        standing = files.standing();
    }

    /** Returns what is not asked again. */
    AlreadyDecided already() {
        return new AlreadyDecided(kept(), coming());
    }

    /** Returns the day of the newest decisions, {@link Absent#DAY} without any. */
    int lastDecided() {
        return standing.stream()
                .filter(sitting -> known(sitting) && book(sitting.effective()).isPresent())
                .mapToInt(Sitting::decidedOn)
                .max()
                .orElse(Absent.DAY);
    }

    private boolean known(Sitting sitting) {
        return sitting.decidedOn() <= asOf;
    }

    private Optional<PriceBook> book(int effective) {
        return books.versions().stream()
                .filter(version -> version.effective() == effective)
                .findFirst();
    }

    private List<Kept> kept() {
        Map<String, Kept> kept = new TreeMap<>();
        for (Sitting sitting : standing) {
            Optional<PriceBook> book = book(sitting.effective());
            for (Sitting.Row row : sitting.rows()) {
                if (known(sitting) && book.isPresent() && row.standsIn(book.get())) {
                    kept.remove(row.repairType());
                    if (row.kept()) {
                        kept.put(row.repairType(), new Kept(row.repairType(), row.until(), row.reason()));
                    }
                }
            }
        }
        return List.copyOf(kept.values());
    }

    /** Returns the books whose first day is after the as-of date, the earliest first; not those decided later than that. */
    List<ComingBook> coming() {
        return after(asOf);
    }

    /** Returns the same for a day of its own. */
    List<ComingBook> after(int day) {
        List<ComingBook> coming = new ArrayList<>();
        for (PriceBook version : books.versions()) {
            List<Sitting> sittings = standing.stream()
                    .filter(sitting -> sitting.effective() == version.effective())
                    .toList();
            boolean adopted = sittings.isEmpty() || sittings.stream().anyMatch(this::known);
            if (version.effective() > day && adopted) {
                coming.add(new ComingBook(version, decided(version, sittings)));
            }
        }
        return coming;
    }

    private SortedMap<String, Integer> decided(PriceBook book, List<Sitting> sittings) {
        SortedMap<String, Integer> decided = new TreeMap<>();
        for (Sitting sitting : sittings) {
            for (Sitting.Row row : sitting.rows()) {
                if (known(sitting) && row.standsIn(book)) {
                    decided.put(row.repairType(), sitting.decidedOn());
                }
            }
        }
        return decided;
    }

    /** Returns the rows that were decided on a draft, each with the first day of the book that it was decided for. */
    SortedMap<String, Integer> onDraft(String draft) {
        SortedMap<String, Integer> decided = new TreeMap<>();
        for (Sitting sitting : standing) {
            Optional<PriceBook> book = book(sitting.effective());
            for (Sitting.Row row : sitting.rows()) {
                if (sitting.draft().equals(draft) && book.isPresent() && row.standsIn(book.get())) {
                    decided.put(row.repairType(), sitting.effective());
                }
            }
        }
        return decided;
    }
}
