package benchtrue.findings;

import benchtrue.hours.EntryPlaces.Place;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitEvidence;
import benchtrue.shop.TimeEntries;
import benchtrue.statistics.Normal;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * What rounding may have made of each repair's hours. An entry of {@code s} on steps of {@code g} stands for time between s - g
 * and s where entries are rounded up, between s - g/2 and s + g/2 where to the nearest, and for as little as nothing where it is
 * the least that is ever written. Of jobs with hours of their own, ln(hours / quote) is normal about its repair's mean, known
 * within such ends only (Heitjan, Rubin 1991: coarse data). What tickets were split into leans on those jobs, so that repairs which
 * rounding lifts most are dealt too much of every ticket: the middle of a ticket's ends is dealt anew, each repair brought to what
 * its jobs with hours of their own were worked in.
 */
final class RoundedHours {
    private RoundedHours() {}

    /** Returns what rounding may have made of a shop's hours. */
    static LoadReach of(JobLines jobs, EntryGrid grid, RoundingForm[] forms) {
        return LoadReach.between(
                taken(jobs, grid, technician -> forms[technician].leastAbove()),
                taken(jobs, grid, technician -> forms[technician].mostAbove()));
    }

    /**
     * Returns by repair type the hours worked per hour logged.
     *
     * @param above by technician, the part of a step that the time worked may lie above what is logged
     */
    private static double[] taken(JobLines jobs, EntryGrid grid, IntToDoubleFunction above) {
        Ends ends = new Ends(jobs, grid, above);
        double[] worked = ends.middles();
        double[] ofOwn = new double[ends.any.length];
        Arrays.setAll(ofOwn, type -> ends.any[type] ? new Coarse(jobs, ends, type).bring(worked) : 1);
        ends.dealAnew(worked, ofOwn);
        return workedPerLogged(jobs, worked);
    }

    private static double[] workedPerLogged(JobLines jobs, double[] worked) {
        double[] sum = new double[jobs.ledger().repairTypes().size()];
        double[] logged = new double[sum.length];
        for (int line = 0; line < worked.length; line++) {
            if (jobs.judged(line)) {
                sum[jobs.ledger().lines().repairType(line)] += worked[line];
                logged[jobs.ledger().lines().repairType(line)] += jobs.actualSeconds(line);
            }
        }
        Arrays.setAll(sum, type -> logged[type] > 0 ? sum[type] / logged[type] : 1);
        return sum;
    }

    /** By line, how far the time worked may lie from the seconds logged. */
    private static final class Ends {
        private final JobLines jobs;
        private final double[] low;
        private final double[] high;
        private final boolean[] any;

        Ends(JobLines jobs, EntryGrid grid, IntToDoubleFunction above) {
            this.jobs = jobs;
            low = new double[jobs.size()];
            high = new double[jobs.size()];
            any = new boolean[jobs.ledger().repairTypes().size()];
            int[] starts = jobs.ledger().lines().starts(jobs.ledger().tickets().size());
            TimeEntries time = jobs.ledger().time();
            for (int entry = 0; entry < time.size(); entry++) {
                int step = grid.step(entry);
                boolean least = grid.isLeast(entry);
                if (step > 0 || least) {
                    double higher = step * above.applyAsDouble(time.technician(entry));
                    add(entry, starts, least ? time.seconds(entry) : step - higher, higher);
                }
            }
        }

        private void add(int entry, int[] starts, double below, double above) {
            int line = jobs.places().line(entry);
            if (jobs.places().place(entry) == Place.ON_LINE && line >= 0) {
                add(line, below, above);
            } else if (jobs.places().place(entry) == Place.OVER_TICKET) {
                int ticket = jobs.ledger().time().ticket(entry);
                double sum = 0;
                for (int l = starts[ticket]; l < starts[ticket + 1]; l++) {
                    sum += jobs.splitSeconds(l);
                }
                for (int l = starts[ticket]; l < starts[ticket + 1] && sum > 0; l++) {
                    double share = jobs.splitSeconds(l) / sum;
                    add(l, share * below, share * above);
                }
            }
        }

        private void add(int line, double below, double above) {
            low[line] -= below;
            high[line] += above;
            any[jobs.ledger().lines().repairType(line)] |= jobs.judged(line);
        }

        /** Returns the middle between the ends of each line's seconds. */
        private double[] middles() {
            double[] middles = new double[low.length];
            Arrays.setAll(middles, line -> Math.max(0, jobs.actualSeconds(line) + (low[line] + high[line]) / 2));
            return middles;
        }

        /**
         * Deals what was split of each ticket anew.
         *
         * @param worked seconds by line, which are replaced
         * @param part by repair type, what its jobs with hours of their own were worked in per second logged
         */
        private void dealAnew(double[] worked, double[] part) {
            int[] starts = jobs.ledger().lines().starts(jobs.ledger().tickets().size());
            for (int ticket = 0; ticket + 1 < starts.length; ticket++) {
                double whole = 0;
                double weights = 0;
                for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
                    whole += wasSplit(line) ? worked[line] : 0;
                    weights += wasSplit(line) ? weight(line, part) : 0;
                }
                for (int line = starts[ticket]; line < starts[ticket + 1] && weights > 0; line++) {
                    worked[line] = wasSplit(line) ? whole * weight(line, part) / weights : worked[line];
                }
            }
        }

        private boolean wasSplit(int line) {
            return jobs.evidence(line) != SplitEvidence.LOGGED;
        }

        private double weight(int line, double[] part) {
            return jobs.actualSeconds(line) * part[jobs.ledger().lines().repairType(line)];
        }
    }

    /** The jobs of one repair whose hours are known within ends only. */
    private static final class Coarse {
        private static final int ROUNDS = 100;
        /** Jobs of a usual spread that every repair is lent, so that few jobs do not look alike. */
        private static final double LENT = 3;

        private static final double USUAL_VARIANCE = 0.09;

        private final JobLines jobs;
        private final Ends ends;
        private final int type;
        private double mean;
        private double variance = USUAL_VARIANCE;

        Coarse(JobLines jobs, Ends ends, int type) {
            this.jobs = jobs;
            this.ends = ends;
            this.type = type;
        }

        /**
         * Replaces the seconds worked on jobs with hours of their own; returns what they are per second logged, leaning on what
         * was split as if that had lent a few jobs.
         */
        double bring(double[] worked) {
            fit();
            double[] own = new double[3];
            double[] split = new double[3];
            for (int line = 0; line < jobs.size(); line++) {
                if (jobs.judged(line) && jobs.ledger().lines().repairType(line) == type) {
                    if (isOwn(line) && jobs.actualSeconds(line) > 0) {
                        worked[line] = between(line).hours() * 3_600 * jobs.todayQuotedHours(line);
                    }
                    double[] sums = isOwn(line) ? own : split;
                    sums[0] += worked[line];
                    sums[1] += jobs.actualSeconds(line);
                    sums[2]++;
                }
            }
            double lent = split[2] > 0 ? LENT / split[2] : 0;
            double logged = own[1] + lent * split[1];
            return logged > 0 ? (own[0] + lent * split[0]) / logged : 1;
        }

        private boolean isOwn(int line) {
            return jobs.evidence(line) == SplitEvidence.LOGGED && jobs.todayQuotedHours(line) > 0;
        }

        private void fit() {
            for (int round = 0; round < ROUNDS; round++) {
                double n = 0;
                double sum = 0;
                double squares = 0;
                for (int line = 0; line < jobs.size(); line++) {
                    if (jobs.judged(line)
                            && jobs.ledger().lines().repairType(line) == type
                            && isOwn(line)
                            && jobs.actualSeconds(line) > 0) {
                        Between between = between(line);
                        n++;
                        sum += between.mean();
                        squares += between.variance() + between.mean() * between.mean();
                    }
                }
                // One job as quoted is lent to the mean, so that entries of the least size alone do not sink it without
                // end.
                double before = mean;
                mean = sum / (n + 1);
                variance = (squares - 2 * mean * sum + n * mean * mean + LENT * USUAL_VARIANCE) / (n + LENT);
                if (StrictMath.abs(mean - before) < 1e-6) {
                    break;
                }
            }
        }

        private Between between(int line) {
            double quoted = jobs.todayQuotedHours(line) * 3_600;
            double low = (jobs.actualSeconds(line) + ends.low[line]) / quoted;
            double high = (jobs.actualSeconds(line) + ends.high[line]) / quoted;
            return new Between(mean, StrictMath.sqrt(variance), low, high);
        }
    }

    /** A log-normal ratio known to lie between two ends. */
    private record Between(double centre, double spread, double low, double high) {
        private double z(double end) {
            return end > 0 ? (StrictMath.log(end) - centre) / spread : Double.NEGATIVE_INFINITY;
        }

        private static double mass(double from, double to) {
            return from > 0
                    ? Normal.upperTail(from) - Normal.upperTail(to)
                    : Normal.lowerTail(to) - Normal.lowerTail(from);
        }

        private boolean isExact() {
            return high - low < 1e-9 || mass(z(low), z(high)) < 1e-12;
        }

        double mean() {
            if (isExact()) {
                return StrictMath.log((Math.max(low, 0) + high) / 2);
            }
            return centre + spread * (density(z(low)) - density(z(high))) / mass(z(low), z(high));
        }

        double variance() {
            if (isExact()) {
                return 0;
            }
            double a = z(low);
            double b = z(high);
            double mass = mass(a, b);
            double shift = (density(a) - density(b)) / mass;
            double fromLow = Double.isInfinite(a) ? 0 : a * density(a);
            return Math.max(0, spread * spread * (1 + (fromLow - b * density(b)) / mass - shift * shift));
        }

        private static double density(double z) {
            return Double.isInfinite(z) ? 0 : Normal.density(z);
        }

        /** Returns the mean of the ratio itself. */
        double hours() {
            return isExact()
                    ? (Math.max(low, 0) + high) / 2
                    : StrictMath.exp(centre + spread * spread / 2)
                            * mass(z(low) - spread, z(high) - spread)
                            / mass(z(low), z(high));
        }
    }
}
