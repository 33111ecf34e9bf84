package benchtrue.nightly;

import benchtrue.costing.CostedLines;
import benchtrue.costing.EarnedMonth;
import benchtrue.costing.WorkMonth;
import benchtrue.format.Figures;
import benchtrue.reconcile.Completeness;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Hours;
import benchtrue.shop.Months;
import benchtrue.shop.Refusal;
import benchtrue.statistics.Quantile;
import java.util.List;
import java.util.stream.IntStream;

/** Refuses to seal a month of which not everything has come in: a seal would make what is missing look final. */
final class ExpectWholeMonth {
    private static final double MOST = 0.5;

    /** With fewer jobs or months to compare with, hours a job tell nothing. */
    private static final int FEWEST_JOBS = 10;

    private static final int FEWEST_MONTHS = 3;

    private final CostedLines costs;
    private final Ledger ledger;
    private final Figures figures;
    private final int month;

    private ExpectWholeMonth(CostedLines costs, Figures figures, int month) {
        this.costs = costs;
        this.ledger = costs.jobs().ledger();
        this.figures = figures;
        this.month = month;
    }

    /**
     * Goes on where a month may be sealed.
     *
     * @param month {@code year * 12 + month - 1}
     * @throws Refusal where it is not over on the as-of date or at the newest row, lies outside the rows, or has most of its
     *     log missing
     */
    static void of(CostedLines costs, Figures figures, int month) {
        ExpectWholeMonth expect = new ExpectWholeMonth(costs, figures, month);
        expect.over();
        expect.insideRows();
        expect.logged();
    }

    private void over() {
        if (month > costs.shop().lastWholeMonth()) {
            throw refused("is not over on the as-of date. Close it after its last day");
        }
    }

    private void insideRows() {
        int[] days = IntStream.concat(
                        IntStream.range(0, ledger.time().size()).map(ledger.time()::workDay),
                        IntStream.range(0, ledger.tickets().size())
                                .flatMap(row -> IntStream.of(
                                        ledger.tickets().opened(row),
                                        ledger.tickets().closed(row))))
                .filter(day -> Absent.has(day) && day <= ledger.asOf())
                .sorted()
                .toArray();
        if (days.length == 0 || last() < days[0]) {
            throw refused("lies before the first row of the tickets and the time log");
        }
        int newest = days[days.length - 1];
        if (newest < last()) {
            throw refused((newest < first() ? "lies after" : "has not ended at")
                    + " the newest row of the tickets and the time log, of " + figures.day(newest)
                    + ". Export what came after it, then close");
        }
    }

    private int first() {
        return (int) Months.yearMonth(month).atDay(1).toEpochDay();
    }

    private int last() {
        return (int) Months.yearMonth(month).atEndOfMonth().toEpochDay();
    }

    private void logged() {
        Completeness.Part unread = ledger.completeness().months().get(month);
        if (unread != null && unread.share() > MOST) {
            throw missing(figures.percent(unread.share()) + " of its hours could not be read");
        }
        WorkMonth work = costs.shop().work().stream()
                .filter(found -> found.month() == month && found.loggedSeconds() > 0)
                .findFirst()
                .orElseThrow(() -> missing("nothing was logged in it"));
        if (work.loggedShare() < MOST) {
            throw missing("only " + figures.percent(work.loggedShare()) + " of its paid hours were logged");
        }
        if (Double.isNaN(work.loggedShare())) {
            hoursAJob();
        }
    }

    /** Without paid hours, what a finished job took in other months tells whether hours are missing. */
    private void hoursAJob() {
        List<WorkMonth> months = costs.shop().work();
        double[] others = Quantile.sorted(months.stream()
                .filter(other -> other.month() != month && finished(other.month()) >= FEWEST_JOBS)
                .mapToDouble(this::hoursAJob)
                .toArray());
        double own = months.stream()
                .filter(found -> found.month() == month)
                .mapToDouble(this::hoursAJob)
                .sum();
        if (finished(month) >= FEWEST_JOBS && others.length >= FEWEST_MONTHS && own < MOST * Quantile.median(others)) {
            throw missing(figures.hours(own) + " were logged for each finished job, in other months "
                    + figures.hours(Quantile.median(others)));
        }
    }

    private double hoursAJob(WorkMonth work) {
        return Hours.of(work.loggedSeconds()) / finished(work.month());
    }

    private int finished(int of) {
        return costs.shop().earned().stream()
                .filter(earned -> earned.month() == of)
                .mapToInt(EarnedMonth::lines)
                .sum();
    }

    private Refusal missing(String why) {
        return refused("has most of its log missing: " + why + ". Bring the log in, then close");
    }

    private Refusal refused(String why) {
        return new Refusal(ExitCode.USAGE, "The month " + Months.yearMonth(month) + " " + why + ".");
    }
}
