package benchtrue.findings;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Months;
import benchtrue.shop.PaidHours;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeKind;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

/** How entries come onto their grid. */
public enum RoundingForm {
    /** Always up: half a step is added to an entry on average, or half of that where many entries were on a step anyway. */
    UP(0, 0.25),
    /** To the nearest step: nothing is added on average. */
    NEAREST(0.5, 0.5),
    /** Nothing tells which. */
    UNKNOWN(0, 0.5);

    private final double leastAbove;
    private final double mostAbove;

    RoundingForm(double leastAbove, double mostAbove) {
        this.leastAbove = leastAbove;
        this.mostAbove = mostAbove;
    }

    /** Returns the least part of a step that the time worked may lie above an entry. */
    double leastAbove() {
        return leastAbove;
    }

    /** Returns the most. */
    double mostAbove() {
        return mostAbove;
    }

    /**
     * Tells the forms from the hours paid. Hours worked are a steady share of hours paid; where entries are rounded up, months
     * with many short entries show more logged than worked. So (paid / logged) = 1 / share x (1 - r x steps / logged), by
     * technician and month, r being the part of a step that rounding adds: a half where up, none where to the nearest.
     */
    static final class TellByPaidHours {
        private static final double SURE = 2;
        /** One of several technicians looks unlike the others by chance more often. */
        private static final double SURE_OF_ONE = 3;

        private static final double HALF_WAY = 0.25;
        private static final int FEWEST_MONTHS = 12;
        private static final double FEWEST_HOURS = 20;

        private final int technicians;
        private final double[][] steps;
        private final double[][] logged;
        private final double[][] paid;

        private TellByPaidHours(Ledger ledger, EntryGrid grid) {
            TimeEntries time = ledger.time();
            technicians = ledger.technicians().size();
            Map<Integer, Integer> places = new HashMap<>();
            for (PaidHours row : ledger.paidHours()) {
                places.putIfAbsent(row.month(), places.size());
            }
            steps = new double[technicians][places.size()];
            logged = new double[technicians][places.size()];
            paid = new double[technicians][places.size()];
            ledger.paidHours().forEach(row -> paid[row.technician()][places.get(row.month())] += row.seconds());
            for (int entry = 0; entry < time.size(); entry++) {
                Integer place = places.get(Months.of(time.workDay(entry)));
                if (place != null) {
                    logged[time.technician(entry)][place] += time.seconds(entry);
                    steps[time.technician(entry)][place] += grid.step(entry);
                }
            }
        }

        /** Returns the form of each technician by code; what one alone does not tell, all together may. */
        static RoundingForm[] of(Ledger ledger, EntryGrid grid) {
            TellByPaidHours tell = new TellByPaidHours(ledger, grid);
            int[] all = new int[tell.technicians];
            Arrays.setAll(all, technician -> technician);
            RoundingForm together = tell.form(SURE, all);
            RoundingForm[] forms = new RoundingForm[tell.technicians];
            Arrays.setAll(forms, technician -> {
                RoundingForm own = tell.form(SURE_OF_ONE, technician);
                return own == UNKNOWN ? together : own;
            });
            return forms;
        }

        private RoundingForm form(double errors, int... who) {
            double xx = 0;
            double xy = 0;
            double yy = 0;
            double level = 0;
            int months = 0;
            for (int technician : who) {
                Sums sums = new Sums(technician);
                xx += sums.xx();
                xy += sums.xy();
                yy += sums.yy();
                months += sums.months == 0 ? 0 : sums.months - 1;
                level += sums.xx() * sums.meanPaid();
            }
            if (months < FEWEST_MONTHS || !(xx > 0)) {
                return UNKNOWN;
            }
            double slope = xy / xx;
            double error = StrictMath.sqrt(Math.max(0, yy - slope * xy) / (months - 1) / xx);
            double perShare = level / xx;
            double part = -slope / perShare;
            double reach = errors * error / perShare;
            return part - reach > HALF_WAY ? UP : part + reach < HALF_WAY ? NEAREST : UNKNOWN;
        }

        /** Sums of one technician's months, weighted by the hours logged; x = steps / logged, y = paid / logged. */
        private final class Sums {
            private int months;
            private double weight;
            private double x;
            private double y;
            private double x2;
            private double xTimesY;
            private double y2;

            Sums(int technician) {
                for (int month = 0; month < paid[technician].length; month++) {
                    double hours = logged[technician][month] / 3_600;
                    if (hours >= FEWEST_HOURS && paid[technician][month] > 0) {
                        add(
                                hours,
                                steps[technician][month] / logged[technician][month],
                                paid[technician][month] / logged[technician][month]);
                    }
                }
            }

            private void add(double hours, double perLogged, double paidPerLogged) {
                months++;
                weight += hours;
                x += hours * perLogged;
                y += hours * paidPerLogged;
                x2 += hours * perLogged * perLogged;
                xTimesY += hours * perLogged * paidPerLogged;
                y2 += hours * paidPerLogged * paidPerLogged;
            }

            double xx() {
                return months == 0 ? 0 : x2 - x * x / weight;
            }

            double xy() {
                return months == 0 ? 0 : xTimesY - x * y / weight;
            }

            double yy() {
                return months == 0 ? 0 : y2 - y * y / weight;
            }

            /** Paid per logged hour where no step is added. */
            double meanPaid() {
                return months == 0 ? 0 : y / weight;
            }
        }
    }

    /**
     * How a shop's bench time is written down.
     *
     * @param form how entries come onto coarse steps, {@link #UNKNOWN} where technicians differ
     * @param step commonest coarse step in seconds, 0 where time is written down finely
     * @param share of the bench entries that stand on a coarse step
     * @param leastShare of the bench entries that are the least that is ever written
     */
    public record Logged(RoundingForm form, int step, double share, double leastShare) {
        private static final double MUCH = 0.1;

        /** Time that is written down finely. */
        static final Logged FINELY = new Logged(UNKNOWN, 0, 0, 0);

        static Logged of(TimeEntries time, EntryGrid grid, RoundingForm[] forms) {
            TreeMap<Integer, Integer> steps = new TreeMap<>();
            EnumSet<RoundingForm> found = EnumSet.noneOf(RoundingForm.class);
            int onBench = 0;
            int least = 0;
            for (int entry = 0; entry < time.size(); entry++) {
                onBench += time.kind(entry) == TimeKind.BENCH && time.ticket(entry) >= 0 ? 1 : 0;
                least += grid.isLeast(entry) ? 1 : 0;
                if (grid.step(entry) > 0) {
                    steps.merge(grid.step(entry), 1, Integer::sum);
                    found.add(forms[time.technician(entry)]);
                }
            }
            int coarse = steps.values().stream().mapToInt(times -> times).sum();
            if (coarse < MUCH * onBench || onBench == 0) {
                return FINELY;
            }
            int commonest = Collections.max(steps.entrySet(), Map.Entry.comparingByValue())
                    .getKey();
            return new Logged(
                    found.size() == 1 ? found.iterator().next() : UNKNOWN,
                    commonest,
                    coarse / (double) onBench,
                    least / (double) onBench);
        }

        /** Returns whether much of the time is written in steps so coarse that they matter. */
        public boolean coarsely() {
            return step > 0;
        }
    }
}
