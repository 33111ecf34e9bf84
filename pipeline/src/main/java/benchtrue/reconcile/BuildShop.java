package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.OverheadColumn;
import benchtrue.intake.columns.PaidColumn;
import benchtrue.intake.columns.WageColumn;
import benchtrue.intake.columns.WaitColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.CostBehaviour;
import benchtrue.shop.Months;
import benchtrue.shop.Overhead;
import benchtrue.shop.PaidHours;
import benchtrue.shop.PayBasis;
import benchtrue.shop.Wage;
import benchtrue.shop.Wait;
import benchtrue.shop.WaitReason;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Builds the wage list, the hours paid, the overheads and the waits. */
final class BuildShop {
    private static final CostBehaviour[] BEHAVIOURS = CostBehaviour.values();
    private static final WaitReason[] REASONS = WaitReason.values();
    private static final PayBasis[] BASES = PayBasis.values();
    private final int asOf;
    private final int lastMonth;

    BuildShop(int asOf) {
        this.asOf = asOf;
        lastMonth = Months.of(asOf);
    }

    List<Wage> wages(RowDispositions table, People people) {
        TableRows rows = table.rows();
        List<Wage> wages = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            if (rows.day(WageColumn.EFFECTIVE_FROM, row) > asOf) {
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

    List<PaidHours> paid(RowDispositions table, People people) {
        TableRows rows = table.rows();
        List<PaidHours> paid = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            int month = rows.day(PaidColumn.MONTH, row);
            if (month > lastMonth) {
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

    List<Overhead> overheads(RowDispositions table) {
        TableRows rows = table.rows();
        List<Overhead> overheads = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            int month = rows.day(OverheadColumn.MONTH, row);
            if (month > lastMonth) {
                table.after(row);
            }
            if (table.accepted(row)) {
                long behaviour = rows.value(OverheadColumn.BEHAVIOUR, row);
                overheads.add(new Overhead(
                        month,
                        rows.text(OverheadColumn.ACCOUNT, row),
                        rows.value(OverheadColumn.AMOUNT, row),
                        BEHAVIOURS[Absent.has(behaviour) ? (int) behaviour : 0]));
            }
        }
        overheads.sort(Comparator.comparingInt(Overhead::month).thenComparing(Overhead::account));
        return overheads;
    }

    List<Wait> waits(RowDispositions table, TicketKeys keys) {
        TableRows rows = table.rows();
        int[] ticketOf = keys.find(rows.column(WaitColumn.TICKET));
        List<Wait> waits = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            int ticket = ticketOf[rows.code(WaitColumn.TICKET, row)];
            if (table.inQuestion(row)) {
                check(table, row, ticket, keys);
            }
            if (table.accepted(row)) {
                int to = rows.day(WaitColumn.TO, row);
                waits.add(new Wait(
                        ticket,
                        rows.day(WaitColumn.FROM, row),
                        to > asOf ? Absent.DAY : to,
                        REASONS[rows.day(WaitColumn.REASON, row)]));
            }
        }
        waits.sort(Comparator.comparingInt(Wait::ticket).thenComparingInt(Wait::from));
        return waits;
    }

    private void check(RowDispositions table, int row, int ticket, TicketKeys keys) {
        TableRows rows = table.rows();
        if (ticket == TicketKeys.UNKNOWN) {
            String key = rows.text(WaitColumn.TICKET, row);
            table.setAside(row, WaitColumn.TICKET, key, keys.expected(key));
        }
        int to = rows.day(WaitColumn.TO, row);
        if (Absent.has(to) && to < rows.day(WaitColumn.FROM, row)) {
            table.setAside(row, WaitColumn.TO, rows.text(WaitColumn.TO, row), "a day not before the first one");
        }
        if (ticket == TicketKeys.AFTER || rows.day(WaitColumn.FROM, row) > asOf) {
            table.after(row);
        }
    }
}
