package benchtrue.calendar;

import benchtrue.costing.Families;
import benchtrue.format.Figures;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;

/** Deals the work in the shop over the weeks in which it is due and over kinds of work, against the hours really worked. */
final class SumWorkAhead {
    private static final int WEEK = 7;
    private static final int WEEKS = 8;
    private static final int QUARTER = 13 * WEEK;

    private final Ledger ledger;
    private final Visits visits;
    private final Map<Integer, Double> hours = new TreeMap<>();

    /** Takes the lines that are forecast. */
    SumWorkAhead(Ledger ledger, Visits visits, List<OpenLine> lines) {
        this.ledger = ledger;
        this.visits = visits;
        for (OpenLine line : lines) {
            double left = line.expectedHours() - Hours.of(line.secondsSoFar());
            if (left > 0) {
                hours.merge(ledger.lines().ticket(line.line()), left, Double::sum);
            }
        }
    }

    /** Returns the hours by the week of the day promised, else of the day to promise; those without either last. */
    List<WorkAhead> byWeek(IntUnaryOperator promise, Figures figures) {
        double[] due = new double[WEEKS + 3];
        hours.forEach((ticket, left) -> {
            int day = Absent.firstOf(ledger.tickets().promised(ticket), promise.applyAsInt(ticket));
            due[place(day)] += left;
        });
        double worked = visits.weekly(ledger.asOf());
        List<WorkAhead> weeks = new ArrayList<>();
        for (int week = 0; week < due.length; week++) {
            weeks.add(new WorkAhead(name(week, figures), due[week], week == 0 || week > WEEKS ? Double.NaN : worked));
        }
        return weeks;
    }

    private int place(int day) {
        if (!Absent.has(day)) {
            return WEEKS + 2;
        }
        return day <= ledger.asOf() ? 0 : Math.min(WEEKS + 1, (day - ledger.asOf() - 1) / WEEK + 1);
    }

    private String name(int week, Figures figures) {
        if (week == 0) {
            return "overdue";
        }
        if (week > WEEKS) {
            return week == WEEKS + 1 ? "later" : "no day known";
        }
        return "to " + figures.day(ledger.asOf() + week * WEEK);
    }

    /** Returns the hours by the family of each ticket's largest repair, the most weeks of work first. */
    List<WorkAhead> byFamily(Families families) {
        Map<String, double[]> sums = new TreeMap<>();
        hours.forEach((ticket, left) -> add(sums, families, ticket, 0, left));
        TicketDays days = visits.days();
        for (int ticket = 0; ticket < visits.size(); ticket++) {
            for (int sitting = days.to(ticket) - 1; sitting >= days.from(ticket); sitting--) {
                if (days.day(sitting) > ledger.asOf() - QUARTER && days.day(sitting) <= ledger.asOf()) {
                    add(sums, families, ticket, 1, Hours.of(days.seconds(sitting)) * WEEK / QUARTER);
                }
            }
        }
        return sums.entrySet().stream()
                .map(sum -> new WorkAhead(
                        sum.getKey(), sum.getValue()[0], sum.getValue()[1] > 0 ? sum.getValue()[1] : Double.NaN))
                .filter(work -> work.hours() > 0)
                .sorted(Comparator.comparingDouble((WorkAhead work) -> -work.hours() / work.worked())
                        .thenComparing(WorkAhead::name))
                .toList();
    }

    private void add(Map<String, double[]> sums, Families families, int ticket, int which, double amount) {
        int type = visits.largest(ticket);
        if (type != Absent.INDEX) {
            sums.computeIfAbsent(families.ofType(type), key -> new double[2])[which] += amount;
        }
    }
}
