package benchtrue.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The product-limit curve (Kaplan, Meier 1958): the share of jobs still on the bench after so many hours, open jobs counted as
 * far as they have gone.
 *
 * <p>A step is a time at which a job was finished. An open job is at risk at its own time; at a tie the finished job comes
 * first. No finished job: a flat curve at 1. No job at all: {@code NaN} quantiles. O(n log n).
 */
public final class KaplanMeier {
    private static final double TIE = 1e-9;

    private final double[] times;
    private final double[] survival;
    private final double end;

    private KaplanMeier(double[] all, double[] finished) {
        times = Arrays.stream(finished).distinct().toArray();
        int steps = times.length;
        survival = new double[steps];
        end = all.length == 0 ? Double.NaN : all[all.length - 1];
        double share = 1;
        int gone = 0;
        int done = 0;
        for (int i = 0; i < steps; i++) {
            while (all[gone] < times[i]) {
                gone++;
            }
            int before = done;
            while (done < finished.length && finished[done] == times[i]) {
                done++;
            }
            int atRisk = all.length - gone;
            share *= (atRisk - (done - before)) / (double) atRisk;
            survival[i] = share;
        }
    }

    /**
     * Returns the curve.
     *
     * @param times hours of each job, in all or so far, in any order
     * @param finished whether the job is done; an open job is censored
     * @throws IllegalArgumentException if a time is negative or {@code NaN}
     */
    public static KaplanMeier of(double[] times, boolean[] finished) {
        double[] all = Quantile.sorted(times);
        if (all.length > 0 && !(all[0] >= 0 && all[all.length - 1] >= 0)) {
            throw new IllegalArgumentException("a job's hours must be 0 or more");
        }
        double[] done = IntStream.range(0, times.length)
                .filter(i -> finished[i])
                .mapToDouble(i -> times[i])
                .sorted()
                .toArray();
        return new KaplanMeier(all, done);
    }

    /** Returns the number of steps. */
    public int steps() {
        return times.length;
    }

    public double time(int step) {
        return times[step];
    }

    /** Returns the share of jobs that last longer than the step. */
    public double survival(int step) {
        return survival[step];
    }

    /** Returns the share of jobs that last longer than {@code time}. */
    public double survivalAt(double time) {
        double share = 1;
        for (int i = 0; i < times.length && times[i] <= time; i++) {
            share = survival[i];
        }
        return share;
    }

    /**
     * Returns the time by which a share of jobs is finished. Where the curve runs flat exactly at the share still open, the middle of
     * the flat part, which ends at the longest job. {@code NaN}: not reached.
     *
     * @param share above 0, at most 1
     */
    public double quantile(double share) {
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("a share of jobs must lie above 0 and at most at 1, found " + share);
        }
        double open = 1 - share;
        for (int i = 0; i < times.length; i++) {
            if (survival[i] <= open + TIE) {
                double next = i + 1 < times.length ? times[i + 1] : end;
                return survival[i] >= open - TIE ? (times[i] + next) / 2 : times[i];
            }
        }
        return Double.NaN;
    }
}
