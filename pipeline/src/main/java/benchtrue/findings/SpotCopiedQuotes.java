package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.statistics.Interval;
import benchtrue.statistics.Jackknife;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Finds repair types whose time log repeats the quote, and what their load factor is without those lines. */
final class SpotCopiedQuotes {
    private static final double SURELY_COPIED = 0.8;

    private final JobLines jobs;
    private final OwnHours own;
    private final LoggedTotals totals;
    private final double[] chance;

    SpotCopiedQuotes(JobLines jobs, OwnHours own) {
        this.jobs = jobs;
        this.own = own;
        totals = LoggedTotals.of(jobs, own);
        chance = CopyChances.of(jobs, totals);
    }

    /** Returns the rows of finished jobs with hours of their own that were probably not copied. */
    int[] honest() {
        return Arrays.stream(own.line())
                .filter(line -> chance[line] <= SURELY_COPIED)
                .toArray();
    }

    /** Returns one row a repair type with a match. */
    List<CopiedQuotes> byType(WeighLoads loads) {
        int types = jobs.ledger().repairTypes().size();
        int[] checked = new int[types];
        int[] matches = new int[types];
        double[] expected = new double[types];
        double[] copied = new double[types];
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line) && !Double.isNaN(totals.honest()[line])) {
                int type = jobs.ledger().lines().repairType(line);
                checked[type]++;
                matches[type] += totals.matches()[line] ? 1 : 0;
                expected[type] += totals.honest()[line];
                copied[type] += chance[line];
            }
        }
        if (Arrays.stream(matches).sum() == 0) {
            return List.of();
        }
        boolean[] out = copied();
        Jackknife[] without = loads.roughly(ticket -> !out[ticket]);
        List<CopiedQuotes> rows = new ArrayList<>();
        for (int type = 0; type < types; type++) {
            if (matches[type] > 0) {
                Interval range = without[type].groups() < FindVerdicts.ENOUGH_TICKETS
                        ? new Interval(Double.NaN, Double.NaN)
                        : WeighLoads.range(without[type]);
                rows.add(new CopiedQuotes(
                        type,
                        checked[type],
                        matches[type],
                        expected[type],
                        copied[type],
                        StrictMath.exp(without[type].estimate()),
                        range.low(),
                        range.high()));
            }
        }
        return rows;
    }

    /** Returns by ticket whether one of its lines was more likely copied than not. */
    private boolean[] copied() {
        boolean[] copied = new boolean[jobs.ledger().tickets().size()];
        for (int line = 0; line < chance.length; line++) {
            copied[jobs.ledger().lines().ticket(line)] |= chance[line] > 0.5;
        }
        return copied;
    }
}
