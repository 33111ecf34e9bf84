package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Ints;
import benchtrue.statistics.Interval;
import benchtrue.statistics.Jackknife;
import benchtrue.statistics.Moments;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

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

    /** Returns how finely each technician writes time down. */
    EntryGrid grid() {
        return totals.grid();
    }

    /** Returns the finished jobs that tell how long the work took. */
    SurelyOwnJobs surelyOwn() {
        return new SurelyOwnJobs(honest(), copied());
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

    /** Rests the evidence on each repair of which many lines were copied on the tickets without a copy. */
    void leaveOut(List<CopiedQuotes> rows, WeighLoads loads, LoadEvidence[] evidence, ShopPace.Corrections today) {
        if (rows.stream().anyMatch(CopiedQuotes::many)) {
            boolean[] out = copied();
            Jackknife[] measured = loads.jackknives(ticket -> !out[ticket]);
            rows.stream()
                    .filter(CopiedQuotes::many)
                    .map(CopiedQuotes::repairType)
                    .forEach(type -> evidence[type] = loads.measured(measured[type], evidence[type], today, type));
        }
    }

    /** Returns by repair-type code the load of lines that were not copied over that of all; 1 where few were copied. */
    double[] measuredPerAll() {
        boolean[] out = copied();
        double[][] hours = new double[4][jobs.ledger().repairTypes().size()];
        double[][] lines = new double[2][hours[0].length];
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line)) {
                int type = jobs.ledger().lines().repairType(line);
                int copied = out[jobs.ledger().lines().ticket(line)] ? 1 : 0;
                hours[copied][type] += jobs.todayQuotedHours(line);
                hours[2 + copied][type] += jobs.actualSeconds(line) + jobs.reworkSeconds(line);
                lines[copied][type]++;
            }
        }
        double[] ratio = new double[hours[0].length];
        Arrays.setAll(ratio, type -> {
            boolean many = lines[1][type] >= CopiedQuotes.MANY * (lines[0][type] + lines[1][type]);
            double all = (hours[2][type] + hours[3][type]) / (hours[0][type] + hours[1][type]);
            return many && lines[0][type] >= FindVerdicts.ENOUGH_TICKETS ? hours[2][type] / hours[0][type] / all : 1;
        });
        return ratio;
    }

    /** Returns the rows of lines that were more likely copied than not. */
    Set<Integer> copiedLines() {
        return IntStream.range(0, chance.length)
                .filter(line -> chance[line] > 0.5)
                .boxed()
                .collect(Collectors.toSet());
    }

    /** Returns by ticket whether one of its lines was more likely copied than not. */
    boolean[] copied() {
        boolean[] copied = new boolean[jobs.ledger().tickets().size()];
        for (int line = 0; line < chance.length; line++) {
            copied[jobs.ledger().lines().ticket(line)] |= chance[line] > 0.5;
        }
        return copied;
    }

    /**
     * The chance that each line's hours were copied from its quote: a mixture of copies, which always match, and honest totals,
     * which match by rounding alone. The share of copies is estimated by EM (Dempster, Laird, Rubin 1977) for the shop, then for
     * whoever did the logging as if the shop had lent twenty totals; it is never shown by person.
     */
    static final class CopyChances {
        private static final double LENT = 20;
        private static final double START = 0.05;
        private static final int ROUNDS = 50;

        private final LoggedTotals totals;
        private final int[] matched;
        private final int[] logger;
        private final double[] compared;
        private final double[] share;

        private CopyChances(JobLines jobs, LoggedTotals totals) {
            this.totals = totals;
            int loggers = jobs.ledger().technicians().size() + 1;
            share = new double[loggers];
            compared = new double[loggers];
            logger = new int[jobs.size()];
            Ints rows = new Ints();
            for (int line = 0; line < logger.length; line++) {
                int technician = jobs.mainTechnician(line);
                logger[line] = technician == Absent.INDEX ? loggers - 1 : technician;
                if (!Double.isNaN(totals.honest()[line])) {
                    compared[logger[line]] += totals.weight()[line];
                    if (totals.matches()[line]) {
                        rows.add(line);
                    }
                }
            }
            matched = rows.toArray();
        }

        /** Returns the chance of each line; 0 where it does not match or could not be compared. */
        static double[] of(JobLines jobs, LoggedTotals totals) {
            CopyChances mixture = new CopyChances(jobs, totals);
            mixture.estimate();
            double[] chance = new double[jobs.size()];
            for (int line : mixture.matched) {
                chance[line] = mixture.chance(line);
            }
            return chance;
        }

        private void estimate() {
            double all = Moments.sum(compared);
            Arrays.fill(share, START);
            for (int round = 0; round < ROUNDS && all > 0; round++) {
                Arrays.fill(share, Moments.sum(copies()) / all);
            }
            double shop = share[0];
            for (int round = 0; round < ROUNDS; round++) {
                double[] copies = copies();
                for (int i = 0; i < share.length; i++) {
                    share[i] = (copies[i] + LENT * shop) / (compared[i] + LENT);
                }
            }
        }

        private double[] copies() {
            double[] copies = new double[share.length];
            for (int line : matched) {
                copies[logger[line]] += totals.weight()[line] * chance(line);
            }
            return copies;
        }

        private double chance(int line) {
            double copied = share[logger[line]];
            return copied == 0 ? 0 : copied / (copied + (1 - copied) * totals.honest()[line]);
        }
    }
}
