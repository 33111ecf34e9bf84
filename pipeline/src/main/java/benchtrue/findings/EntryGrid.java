package benchtrue.findings;

import benchtrue.shop.Absent;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeKind;
import java.util.Arrays;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * How finely each technician writes time down (heaping: Heitjan, Rubin 1991): the coarsest step that nine of ten entries are a
 * multiple of, over all years and, of bench time on tickets, half-year by half-year; and the least that is ever written.
 */
final class EntryGrid {
    /** Seconds of a step from which on rounding is reckoned with: a tenth of an hour. */
    static final int COARSE = 360;

    private static final int QUARTER_HOUR = 900;
    private static final int HALF_YEAR = 183;
    private static final int MINUTE = 60;

    private final TimeEntries time;
    private final int firstHalf;
    private final Habit[] always;
    private final Habit[] onBench;
    private final Habit[][] byHalfYear;

    private EntryGrid(TimeEntries time, int technicians) {
        this.time = time;
        int first = Integer.MAX_VALUE;
        int last = 0;
        for (int entry = 0; entry < time.size(); entry++) {
            first = Math.min(first, time.workDay(entry) / HALF_YEAR);
            last = Math.max(last, time.workDay(entry) / HALF_YEAR);
        }
        firstHalf = first;
        always = new Habit[technicians];
        onBench = new Habit[technicians];
        byHalfYear = new Habit[technicians][Math.max(0, last - first + 1)];
        for (int technician = 0; technician < technicians; technician++) {
            always[technician] = new Habit();
            onBench[technician] = new Habit();
            for (int half = 0; half < byHalfYear[technician].length; half++) {
                byHalfYear[technician][half] = new Habit();
            }
        }
        count();
    }

    private void count() {
        for (int entry = 0; entry < time.size(); entry++) {
            Habit habit = isOnBench(entry) ? habit(entry) : always[time.technician(entry)];
            habit.sizes.merge(time.seconds(entry), 1, Integer::sum);
        }
        Habit shop = new Habit();
        for (int technician = 0; technician < onBench.length; technician++) {
            for (Habit half : byHalfYear[technician]) {
                onBench[technician].addAll(half);
            }
            always[technician].addAll(onBench[technician]);
            shop.addAll(onBench[technician]);
        }
        for (int technician = 0; technician < onBench.length; technician++) {
            onBench[technician] = onBench[technician].tells() ? onBench[technician] : shop;
            for (int half = 0; half < byHalfYear[technician].length; half++) {
                Habit own = byHalfYear[technician][half];
                byHalfYear[technician][half] = own.tells() ? own.settled() : onBench[technician].settled();
            }
        }
    }

    /** Returns the grids of a shop's technicians. */
    static EntryGrid of(TimeEntries time, int technicians) {
        return new EntryGrid(time, technicians);
    }

    private boolean isOnBench(int entry) {
        return time.kind(entry) == TimeKind.BENCH && time.ticket(entry) >= 0 && time.seconds(entry) > 0;
    }

    private Habit habit(int entry) {
        return byHalfYear[time.technician(entry)][time.workDay(entry) / HALF_YEAR - firstHalf];
    }

    /** Returns the step in seconds that a bench entry was rounded to, 0 where it is too fine to matter. */
    int step(int entry) {
        return isOnBench(entry) ? habit(entry).coarseStep : 0;
    }

    /** Returns whether a bench entry is the least that is ever written, so that less time may stand behind it. */
    boolean isLeast(int entry) {
        return isOnBench(entry) && time.seconds(entry) <= habit(entry).least;
    }

    /** Returns whether one step of a technician is as wide as jobs scatter, so that a total that matches its quote says nothing. */
    boolean hides(int technician, long quotedSeconds, double spread) {
        int step = technician == Absent.INDEX ? 0 : onBench[technician].settled().coarseStep;
        return step >= QUARTER_HOUR && step > spread * quotedSeconds;
    }

    /**
     * Returns how wide a stretch of true time is logged to the same minute as a quote; 0 where the technician's steps never
     * land on it.
     */
    double window(int technician, long quotedSeconds) {
        int grid = technician == Absent.INDEX ? 1 : always[technician].settled().step;
        long upTo = Math.floorDiv(quotedSeconds + MINUTE - 1, (long) grid);
        long below = Math.floorDiv(quotedSeconds - MINUTE, (long) grid);
        return (double) (upTo - below) * grid;
    }

    /** The sizes of some entries in seconds, with how often each stands. */
    private static final class Habit {
        private static final int[] STEPS = {3_600, 1_800, 900, 720, 600, 360, 300, 180, 60, 36, 1};
        private static final double NEARLY_ALL = 0.9;
        private static final double OFTEN = 0.1;
        private static final int ENOUGH = 30;

        private final TreeMap<Long, Integer> sizes = new TreeMap<>();
        private int step;
        private int coarseStep;
        private long least;

        void addAll(Habit other) {
            other.sizes.forEach((size, times) -> sizes.merge(size, times, Integer::sum));
        }

        private int entries() {
            return sizes.values().stream().mapToInt(times -> times).sum();
        }

        private Map.Entry<Long, Integer> commonest() {
            return sizes.isEmpty() ? Map.entry(0L, 0) : Collections.max(sizes.entrySet(), Map.Entry.comparingByValue());
        }

        /** Entries that are nearly all alike show how long the work takes, or what was quoted, and no grid. */
        boolean tells() {
            return entries() - commonest().getValue() >= ENOUGH;
        }

        /** Returns this with its steps reckoned, once. */
        Habit settled() {
            if (step == 0) {
                step = step(sizes);
                // The commonest size has no vote: it may be what is quoted most.
                TreeMap<Long, Integer> voting = new TreeMap<>(sizes);
                voting.remove(commonest().getKey());
                int others = tells() ? step(voting) : 0;
                coarseStep = others >= COARSE ? others : 0;
                boolean bound = tells()
                        && sizes.firstKey() >= COARSE
                        && sizes.firstEntry().getValue() >= OFTEN * entries();
                least = bound ? sizes.firstKey() : 0;
            }
            return this;
        }

        private static int step(TreeMap<Long, Integer> sizes) {
            int of = sizes.values().stream().mapToInt(times -> times).sum();
            return Arrays.stream(STEPS)
                    .filter(step -> sizes.entrySet().stream()
                                    .filter(size -> size.getKey() % step == 0)
                                    .mapToInt(Map.Entry::getValue)
                                    .sum()
                            >= NEARLY_ALL * of)
                    .findFirst()
                    .orElse(1);
        }
    }
}
