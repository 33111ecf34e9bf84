package benchtrue.reconcile;

import benchtrue.intake.Column;
import benchtrue.intake.PaidColumn;
import benchtrue.intake.TableRows;
import benchtrue.intake.TimeColumn;
import benchtrue.intake.WageColumn;
import benchtrue.shop.Names;
import java.util.TreeSet;

/** Names of technicians in the time log, on the wage list or among the hours paid. */
final class People {
    private final Names names;

    People(Sifting time, Sifting wages, Sifting paid) {
        TreeSet<String> all = new TreeSet<>();
        addAll(all, time.rows(), TimeColumn.TECHNICIAN);
        addAll(all, wages.rows(), WageColumn.TECHNICIAN);
        addAll(all, paid.rows(), PaidColumn.TECHNICIAN);
        names = Names.of(all);
    }

    private static void addAll(TreeSet<String> all, TableRows rows, Column column) {
        for (int code = 1; code < rows.distinct(column); code++) {
            all.add(rows.textOf(column, code));
        }
    }

    Names names() {
        return names;
    }

    /** Returns the technician for each code of a column. */
    int[] codes(TableRows rows, Column column) {
        int[] found = new int[rows.distinct(column)];
        for (int code = 0; code < found.length; code++) {
            found[code] = names.code(rows.textOf(column, code));
        }
        return found;
    }
}
