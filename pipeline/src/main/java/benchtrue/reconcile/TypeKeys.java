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
        int[] found = new int[column.distinct()];
        for (int code = 0; code < found.length; code++) {
            String text = column.text(code);
            int type = names.code(oneOffs.contains(text) ? PriceBooks.ONE_OFF : text);
            found[code] = code == 0 ? Absent.INDEX : type == Absent.INDEX ? UNKNOWN : type;
        }
        return found;
    }

    String expected(String key) {
        return "a repair type of the price book"
                + Spelling.mistyped(key, names.all())
                        .map(near -> " (the nearest there is \"" + near + "\")")
                        .orElse("");
    }
}
