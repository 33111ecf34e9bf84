package benchtrue.calendar;

import benchtrue.costing.CostedLines;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.Hours;
import benchtrue.shop.LineState;
import benchtrue.shop.QuotedLines;
import benchtrue.statistics.Normal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * Forecasts the bench hours still to do on open lines. Lines are independent but for the doubt about their type's mean; the
 * sum is taken as log-normal with the same mean and variance (Fenton 1960).
 */
final class SumBacklog {
    private static final double TAIL = 0.05;
    private final CostedLines costs;
    private final JobLines jobs;
    private final Ledger ledger;
    private final UsualHours usual;
    private final WeeklyHours weekly;
    private final GivePromises given;
    private final List<OpenLine> lines = new ArrayList<>();
    private final TreeMap<Integer, Remaining> byTicket = new TreeMap<>();

    SumBacklog(CostedLines costs, GivePromises given) {
        this.given = given;
        this.costs = costs;
        jobs = costs.jobs();
        ledger = jobs.ledger();
        usual = new UsualHours(jobs);
        weekly = WeeklyHours.of(ledger);
    }

    /** Expected hours to do, their variance by line, and their standard error from each type's mean. */
    private record Remaining(double hours, double variance, double[] shared) {
        static Remaining none(int types) {
            return new Remaining(0, 0, new double[types]);
        }

        Remaining plus(Remaining other) {
            double[] both = shared.clone();
            for (int type = 0; type < both.length; type++) {
                both[type] += other.shared[type];
            }
            return new Remaining(hours + other.hours, variance + other.variance, both);
        }

        /** Returns the mean and standard deviation of ln hours of a log-normal with this mean and variance. */
        double[] logNormal() {
            double total = variance;
            for (double error : shared) {
                total += error * error;
            }
            double spread = StrictMath.log(1 + total / (hours * hours));
            return new double[] {StrictMath.log(hours) - spread / 2, StrictMath.sqrt(spread)};
        }

        double quantile(double p) {
            double[] log = logNormal();
            return hours > 0 ? StrictMath.exp(log[0] + log[1] * Normal.quantile(p)) : 0;
        }

        double chanceOver(double limit) {
            if (!(hours > 0)) {
                return 0;
            }
            double[] log = logNormal();
            return limit > 0 ? Normal.upperTail((StrictMath.log(limit) - log[0]) / log[1]) : 1;
        }
    }

    Backlog sum() {
        int types = ledger.repairTypes().size();
        for (int line = 0; line < jobs.size(); line++) {
            if (isAhead(line) && isBenchWork(line)) {
                add(line, types);
            } else if (jobs.state(line) == LineState.OPEN) {
                lines.add(withoutForecast(line));
            }
        }
        Remaining all = Remaining.none(types);
        for (Remaining ticket : byTicket.values()) {
            all = all.plus(ticket);
        }
        return new Backlog(
                lines,
                all.hours,
                all.quantile(TAIL),
                all.quantile(1 - TAIL),
                weekly.hours(),
                weekly.from(),
                promises(types),
                atCost());
    }

    /** Returns whether a line is accepted work that is not finished. */
    private boolean isAhead(int line) {
        return jobs.state(line) == LineState.OPEN
                && !Absent.has(ledger.tickets().finished(ledger.lines().ticket(line)));
    }

    private boolean isBenchWork(int line) {
        ChargeKind kind = ledger.lines().chargeKind(line);
        return kind != ChargeKind.RUSH && kind != ChargeKind.STORAGE && kind != ChargeKind.OUTSIDE_WORK;
    }

    private void add(int line, int types) {
        QuotedLines quotes = ledger.lines();
        long quoted = quotes.judgedSeconds(line) > 0 ? quotes.judgedSeconds(line) : jobs.bookSecondsThen(line);
        long done = Math.max(0, jobs.actualSeconds(line));
        double base = jobs.todayQuotedHours(line) > 0
                ? jobs.todayQuotedHours(line)
                : Absent.has(quoted) ? Hours.of(quoted) : Double.NaN;
        if (!(base > 0)) {
            lines.add(withoutForecast(line));
            return;
        }
        int type = quotes.repairType(line);
        HoursAhead ahead = new HoursAhead(StrictMath.log(base) + usual.mean(type), usual.spread(type), Hours.of(done));
        double hours = ahead.mean() - Hours.of(done);
        double[] shared = new double[types];
        shared[type] = usual.meanError(type) * hours;
        byTicket.merge(quotes.ticket(line), new Remaining(hours, ahead.variance(), shared), Remaining::plus);
        lines.add(new OpenLine(
                line,
                quoted,
                done,
                ahead.mean(),
                ahead.quantile(TAIL),
                ahead.quantile(1 - TAIL),
                ahead.chanceOver(Hours.of(quoted))));
    }

    /** A line that is done but not handed over, that takes no bench time, or that nobody put hours to. */
    private OpenLine withoutForecast(int line) {
        long quoted = ledger.lines().judgedSeconds(line);
        long done = Math.max(0, jobs.actualSeconds(line));
        if (isAhead(line)) {
            return new OpenLine(line, quoted, done, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        }
        double hours = Hours.of(done);
        double over = Absent.has(quoted) ? (done > quoted ? 1 : 0) : Double.NaN;
        return new OpenLine(line, quoted, done, hours, hours, hours, over);
    }

    private List<Promise> promises(int types) {
        List<Integer> order = new ArrayList<>(byTicket.keySet());
        order.sort(Comparator.comparingInt(this::due).thenComparingInt(ticket -> ticket));
        List<Promise> promises = new ArrayList<>();
        Remaining before = Remaining.none(types);
        for (int ticket : order) {
            before = before.plus(byTicket.get(ticket));
            int promised = ledger.tickets().promised(ticket);
            if (Absent.has(promised)) {
                double late = given.chanceLate(ticket, promised);
                promises.add(new Promise(
                        ticket,
                        promised,
                        byTicket.get(ticket).hours,
                        given.open(ticket),
                        Double.isNaN(late) ? late(before, promised) : late));
            }
        }
        return promises;
    }

    /** Bench hours alone, worked in the order of promised days (Jackson 1955). */
    private double late(Remaining before, int promised) {
        double available = weekly.hours() * Math.max(0, promised - ledger.asOf()) / WeeklyHours.DAYS;
        return weekly.hours() > 0 ? before.chanceOver(available) : Double.NaN;
    }

    /** Tickets without a promise come after all others. */
    private int due(int ticket) {
        int promised = ledger.tickets().promised(ticket);
        return Absent.has(promised) ? promised : Integer.MAX_VALUE;
    }

    private long atCost() {
        if (ledger.wages().isEmpty()) {
            return Absent.AMOUNT;
        }
        long cost = 0;
        for (int line = 0; line < jobs.size(); line++) {
            if (isAhead(line)) {
                cost += costs.knownCost(line);
            }
        }
        return cost;
    }
}
