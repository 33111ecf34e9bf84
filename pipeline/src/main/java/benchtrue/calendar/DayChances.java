package benchtrue.calendar;

import benchtrue.statistics.KaplanMeier;
import java.util.Arrays;
import java.util.stream.IntStream;

/** Chances that something takes 0, 1, 2, ... days; what takes longer than {@value #MOST} days counts as that many. */
final class DayChances {
    static final int MOST = 730;

    /** Nothing takes time. */
    static final DayChances NONE = new DayChances(new double[] {1});

    /** It never ends, as far as is known. */
    static final DayChances NEVER = of(MOST);

    private final double[] chance;

    private DayChances(double[] chance) {
        this.chance = chance;
    }

    /** Returns equal chances of each of some numbers of days; at least one must be given. */
    static DayChances of(int... days) {
        int longest = Math.min(MOST, Arrays.stream(days).max().orElseThrow());
        double[] chance = new double[Math.max(0, longest) + 1];
        for (int length : days) {
            chance[Math.max(0, Math.min(MOST, length))] += 1.0 / days.length;
        }
        return new DayChances(chance);
    }

    /** Returns the chances that a curve tells; what outlasts it counts as its longest (Efron 1967), without any as never. */
    static DayChances of(KaplanMeier curve) {
        double[] chance = new double[MOST + 1];
        double left = 1;
        int days = MOST;
        for (int step = 0; step < curve.steps(); step++) {
            days = (int) Math.min(MOST, curve.time(step));
            chance[days] += left - curve.survival(step);
            left = curve.survival(step);
        }
        chance[days] += left;
        return new DayChances(chance);
    }

    /** Returns the chances of the sum, each independent of the other. */
    DayChances plus(DayChances other) {
        double[] sum = new double[Math.min(MOST, chance.length + other.chance.length - 2) + 1];
        for (int i = 0; i < chance.length; i++) {
            for (int j = 0; chance[i] > 0 && j < other.chance.length; j++) {
                sum[Math.min(MOST, i + j)] += chance[i] * other.chance[j];
            }
        }
        return new DayChances(sum);
    }

    /** Returns the chance of at most so many days. */
    double within(int days) {
        return IntStream.rangeClosed(0, Math.min(days, chance.length - 1))
                .mapToDouble(i -> chance[i])
                .sum();
    }

    /** Returns the fewest days whose chance of being enough lies above a level below 1. */
    int enough(double level) {
        double sum = 0;
        for (int days = 0; days < chance.length; days++) {
            sum += chance[days];
            if (sum > level) {
                return days;
            }
        }
        return chance.length - 1;
    }
}
