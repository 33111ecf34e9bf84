package benchtrue.revision;

import benchtrue.statistics.Interval;
import benchtrue.statistics.Jackknife;
import java.util.Arrays;

/**
 * Hours that jobs took per hour that the book in force on the day of their quote gave them. Jobs whose hours are surely
 * their own; 90 % interval by Student t on the logarithm with each job left out in turn (Tukey 1958).
 *
 * @param jobs finished jobs
 * @param ratio their hours over the book's; NaN without jobs
 * @param lower lower end of the interval; NaN with fewer than two jobs
 * @param upper upper end
 */
public record BookedHours(int jobs, double ratio, double lower, double upper) {
    private static final double LEVEL = 0.90;

    /** Returns the ratio of sums of jobs. */
    static BookedHours of(double[] taken, double[] booked) {
        double allTaken = Arrays.stream(taken).sum();
        double allBooked = Arrays.stream(booked).sum();
        double ratio = taken.length == 0 ? Double.NaN : allTaken / allBooked;
        if (taken.length < 2 || !(ratio > 0)) {
            return new BookedHours(taken.length, ratio, Double.NaN, Double.NaN);
        }
        double[] without = new double[taken.length];
        Arrays.setAll(without, job -> (allTaken - taken[job]) / (allBooked - booked[job]));
        Interval onLog = Jackknife.ofLog(ratio, without).interval(LEVEL);
        return new BookedHours(taken.length, ratio, StrictMath.exp(onLog.low()), StrictMath.exp(onLog.high()));
    }

    /** Returns how far the book lies from the work, on the logarithm: 0 where it is true. */
    double distance() {
        return StrictMath.abs(StrictMath.log(ratio));
    }

    /** Returns whether the intervals of two spans have nothing in common. */
    boolean apartFrom(BookedHours other) {
        return upper < other.lower || other.upper < lower;
    }
}
