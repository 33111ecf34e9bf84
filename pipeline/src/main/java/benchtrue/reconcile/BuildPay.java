package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.PaidColumn;
import benchtrue.intake.columns.WageColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.PaidHours;
import benchtrue.shop.PayBasis;
import benchtrue.shop.Wage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Builds the wage list and the hours paid. */
final class BuildPay {
    private static final PayBasis[] BASES = PayBasis.values();
    private final People people;
    private final AsOf asOf;

    BuildPay(People people, AsOf asOf) {
        this.people = people;
        this.asOf = asOf;
    }

    List<Wage> wages(RowDispositions table) {
        TableRows rows = table.rows();
        List<Wage> wages = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            if (rows.day(WageColumn.EFFECTIVE_FROM, row) > asOf.day()) {
                table.after(row);
            }
            if (table.accepted(row)) {
                long basis = rows.value(WageColumn.PAY_BASIS, row);
                wages.add(new Wage(
                        people.names().code(rows.text(WageColumn.TECHNICIAN, row)),
                        rows.value(WageColumn.HOURLY_WAGE, row),
                        rows.day(WageColumn.EFFECTIVE_FROM, row),
                        rows.value(WageColumn.WEEKLY_BENCH_HOURS, row),
                        rows.text(WageColumn.GRADE, row),
                        Absent.has(basis) ? BASES[(int) basis] : null));
            }
        }
        wages.sort(Comparator.comparingInt(Wage::technician).thenComparingInt(Wage::effectiveFrom));
        return wages;
    }

    List<PaidHours> paid(RowDispositions table) {
        TableRows rows = table.rows();
        List<PaidHours> paid = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            int month = rows.day(PaidColumn.MONTH, row);
            if (month > asOf.month()) {
                table.after(row);
            }
            if (table.accepted(row)) {
                paid.add(new PaidHours(
                        people.names().code(rows.text(PaidColumn.TECHNICIAN, row)),
                        month,
                        rows.value(PaidColumn.HOURS, row)));
            }
        }
        paid.sort(Comparator.comparingInt(PaidHours::technician).thenComparingInt(PaidHours::month));
        return paid;
    }
}
