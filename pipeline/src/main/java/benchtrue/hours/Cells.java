package benchtrue.hours;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The groups of lines that share one load factor: each repair type's ordinary jobs by type code, then one group for each
 * kind of line that is no ordinary job, so that a free return or a minimum charge never bends a repair type's factor.
 */
final class Cells {
    private static final int REWORK = 0;
    private static final int MINIMUM = 1;
    private static final int EVALUATION = 2;
    private static final int ON_TIME = 3;
    private static final int NO_WORK_CHARGE = 4;
    private static final int WITHOUT_QUOTE = 5;
    private static final int GROUPS = 6;
    private final int types;
    private final int[] family;
    private final int families;
    private final double[] jobHours;

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
        jobHours = new double[types + GROUPS];
        for (int cell = 0; cell < family.length; cell++) {
            long book = cell < types ? books.secondsToday(cell) : Absent.AMOUNT;
            jobHours[cell] = Absent.has(book) ? Hours.of(book) : 1;
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

    /** Returns the hours of one job at the book, which the prior counts in. */
    double jobHours(int cell) {
        return jobHours[cell];
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

    int onTime() {
        return types + ON_TIME;
    }

    int noWorkCharge() {
        return types + NO_WORK_CHARGE;
    }

    int withoutQuote() {
        return types + WITHOUT_QUOTE;
    }
}
