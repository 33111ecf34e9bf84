package benchtrue.reconcile;

import benchtrue.format.Spelling;
import benchtrue.intake.TextColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.Names;
import benchtrue.shop.PriceBooks;
import java.util.Set;
import java.util.TreeSet;

/** Repair types of every price book, and work that needs no book entry. */
final class TypeKeys {
    /** No price book has the repair type. */
    static final int UNKNOWN = -2;

    private final Names names;

    private final Set<String> oneOffs;

    /**
     * Takes the price books.
     *
     * @param oneOffs further names that mean work without a book entry
     */
    TypeKeys(PriceBooks books, Set<String> oneOffs) {
        this.oneOffs = oneOffs;
        TreeSet<String> keys = books.keys();
        keys.add(PriceBooks.ONE_OFF);
        names = Names.of(keys);
    }

    Names names() {
        return names;
    }

    /** Returns for each code of a column the repair type, {@link Absent#INDEX} for empty, or {@link #UNKNOWN}. */
    int[] find(TextColumn column) {
        return column.each(text -> {
            int type = names.code(oneOffs.contains(text) ? PriceBooks.ONE_OFF : text);
            return text.isEmpty() ? Absent.INDEX : type == Absent.INDEX ? UNKNOWN : type;
        });
    }

    String expected(String key) {
        return "a repair type of the price book"
                + Spelling.mistyped(key, names.all())
                        .map(near -> " (the nearest there is \"" + near + "\")")
                        .orElse("");
    }
}
