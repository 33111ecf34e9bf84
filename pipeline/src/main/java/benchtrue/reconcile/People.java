package benchtrue.reconcile;

import benchtrue.intake.TextColumn;
import benchtrue.intake.columns.PaidColumn;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.intake.columns.WageColumn;
import benchtrue.shop.Names;
import java.util.TreeSet;

/** Names of technicians in the time log, on the wage list or among the hours paid. */
final class People {
    private final Names names;

    People(RowDispositions time, RowDispositions wages, RowDispositions paid) {
        TreeSet<String> all = new TreeSet<>();
        addAll(all, time.rows().column(TimeColumn.TECHNICIAN));
        addAll(all, wages.rows().column(WageColumn.TECHNICIAN));
        addAll(all, paid.rows().column(PaidColumn.TECHNICIAN));
        names = Names.of(all);
    }

    private static void addAll(TreeSet<String> all, TextColumn column) {
        for (int code = 1; code < column.distinct(); code++) {
            all.add(column.text(code));
        }
    }

    Names names() {
        return names;
    }

    /** Returns the technician for each code of a column. */
    int[] codes(TextColumn column) {
        return column.each(names::code);
    }
}
