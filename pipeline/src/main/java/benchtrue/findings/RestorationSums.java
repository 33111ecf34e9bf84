package benchtrue.findings;

import benchtrue.findings.Restorations.By;
import benchtrue.hours.JobLines;
import benchtrue.settings.Settings;
import benchtrue.shop.Hours;
import benchtrue.statistics.RatioOfSums;
import benchtrue.statistics.StudentT;
import java.util.ArrayList;
import java.util.List;

/**
 * Restorations of one group, summed: their load is a ratio of sums, its error that of what each takes beyond it (Cochran 1977).
 * A first sign is held against the other restorations by hours over those that its repairs usually take, so that a group of
 * instruments is not told apart for getting other repairs. Mutable.
 */
final class RestorationSums {
    private static final double TAIL = 0.05;
    /** Share of a group's hours on repairs that are not judged themselves beyond which it isn't either. */
    private static final double MOST_HELD = 0.5;

    /** Jobs that all take exactly the same are sure, not infinitely so. */
    private static final double LEAST_ERROR = 1e-9;

    private final By by;
    private final String words;
    private final JobLines jobs;
    private final UnreadShares unread;
    private final double[] pace;
    private final double[] load;
    private final List<double[]> each = new ArrayList<>();
    private double quoted;
    private double usually;
    private double taken;
    private double found;
    private double held;
    private double missing;
    private double foreign;
    private double least;
    private double most;
    private RestorationSums others;

    RestorationSums(By by, String words, JobLines jobs, UnreadShares unread, double[] pace, double[] load) {
        this.by = by;
        this.words = words;
        this.jobs = jobs;
        this.unread = unread;
        this.pace = pace;
        this.load = load;
    }

    /** Adds one restoration, or the part of it that counts; nothing where no line does. */
    void add(int[] lines) {
        double itsQuoted = 0;
        double itsTaken = 0;
        double usual = 0;
        for (int line : lines) {
            int type = jobs.ledger().lines().repairType(line);
            double hours = Hours.of(jobs.actualSeconds(line)) * pace[type];
            itsQuoted += jobs.todayQuotedHours(line);
            usual += jobs.todayQuotedHours(line) * (load[type] > 0 ? load[type] * pace[type] : 1);
            itsTaken += hours;
            found += jobs.foundLater(line) ? jobs.todayQuotedHours(line) : 0;
            if (hours > 0) {
                held += unread.holds(type) ? hours : 0;
                missing += hours * unread.missing(type);
                foreign += hours * unread.foreign(type);
                least += hours * unread.lower(type);
                most += hours * unread.higher(type);
            }
        }
        if (itsQuoted > 0) {
            each.add(new double[] {itsQuoted, usual, itsTaken});
            quoted += itsQuoted;
            usually += usual;
            taken += itsTaken;
        }
    }

    /** Holds the group against the restorations that lack what it has in common, rather than against its quotes. */
    RestorationSums against(RestorationSums rest) {
        others = rest;
        return this;
    }

    int size() {
        return each.size();
    }

    private boolean enough() {
        return size() >= FindVerdicts.ENOUGH_TICKETS && taken > 0;
    }

    /** Returns ln of what the group took over what its repairs usually take. */
    private double beyondUsual() {
        return StrictMath.log(taken / usually);
    }

    /** Error of ln of what was taken over the first or second of each restoration's figures. */
    private double error(int lowerPart) {
        return RatioOfSums.logError(
                each.stream().mapToDouble(figures -> figures[2]).toArray(),
                each.stream().mapToDouble(figures -> figures[lowerPart]).toArray());
    }

    /** Returns how far the group stands from its quotes, or from the others, as ln. */
    private double off() {
        return others == null ? StrictMath.log(taken / quoted) : beyondUsual() - others.beyondUsual();
    }

    /** Returns the two-sided p of the group standing where its quotes, or the others, do; NaN where there are too few. */
    double chance() {
        if (!enough()) {
            return Double.NaN;
        }
        double error = others == null ? error(0) : StrictMath.hypot(error(1), others.error(1));
        int fewest = others == null ? size() : StrictMath.min(size(), others.size());
        double score = StrictMath.abs(off()) / StrictMath.max(error, LEAST_ERROR);
        return 2 * StudentT.upperTail(score, fewest - 1.0);
    }

    /** Returns what is found of the group; a range reaches as far as hours that were not read or coarsely written may move it. */
    Restorations judged(double adjustedP, Settings settings) {
        double reach = enough() ? -StudentT.quantile(TAIL, size() - 1.0) * error(0) : Double.NaN;
        double load = taken / quoted;
        double lower = load * StrictMath.exp(-reach) * least / taken;
        double upper = load * StrictMath.exp(reach) * most / taken;
        Verdict standing = standing(adjustedP <= settings.falseDiscovery(), lower, upper, settings);
        return new Restorations(by, words, size(), quoted, found, taken, load, lower, upper, adjustedP, standing);
    }

    private Verdict standing(boolean beyondChance, double lower, double upper, Settings settings) {
        if (!enough()) {
            return Verdict.TOO_FEW_JOBS;
        }
        if (StrictMath.max(missing, foreign) > settings.mostUnreadShare() * taken || held > MOST_HELD * taken) {
            return Verdict.NOT_JUDGED;
        }
        if (StrictMath.abs(off()) <= StrictMath.log1p(settings.tolerance())) {
            return Verdict.ON_THE_MARK;
        }
        // What was not read bears on all groups alike, so that it may move a group against its quotes but hardly
        // against others.
        if (off() > 0) {
            return beyondChance && (others != null || lower > 1) ? Verdict.UNDER_QUOTED : Verdict.LEANING_UNDER;
        }
        return beyondChance && (others != null || upper < 1) ? Verdict.OVER_QUOTED : Verdict.LEANING_OVER;
    }
}
