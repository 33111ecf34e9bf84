package benchtrue.hours;

import benchtrue.reconcile.Ledger;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The groups of lines whose hours are expected alike: each repair type by its code, then one group for each kind of line that
 * is no job of a type, so that a free return never bends what a repair type is expected to take.
 */
final class Cells {
    private static final int REWORK = 0;
    private static final int MINIMUM = 1;
    private static final int EVALUATION = 2;
    private static final int NO_WORK_CHARGE = 3;
    private static final int WITHOUT_QUOTE = 4;
    private static final int GROUPS = 5;
    private final int types;
    private final int[] family;
    private final int families;

    Cells(Ledger ledger, BookHours books) {
        types = ledger.repairTypes().size();
        TreeSet<String> names = new TreeSet<>();
        for (int type = 0; type < types; type++) {
            names.add(books.family(type));
        }
        names.add("");
        TreeMap<String, Integer> codes = new TreeMap<>();
        names.forEach(name -> codes.put(name, codes.size()));
        families = codes.size();
        family = new int[types + GROUPS];
        for (int cell = 0; cell < family.length; cell++) {
            family[cell] = codes.get(cell < types ? books.family(cell) : "");
        }
    }

    int size() {
        return family.length;
    }

    /** Returns how many of the cells are repair types. */
    int types() {
        return types;
    }

    int families() {
        return families;
    }

    int family(int cell) {
        return family[cell];
    }

    int rework() {
        return types + REWORK;
    }

    int minimum() {
        return types + MINIMUM;
    }

    int evaluation() {
        return types + EVALUATION;
    }

    int noWorkCharge() {
        return types + NO_WORK_CHARGE;
    }

    int withoutQuote() {
        return types + WITHOUT_QUOTE;
    }
}
