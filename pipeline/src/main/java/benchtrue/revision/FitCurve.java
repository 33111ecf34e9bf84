package benchtrue.revision;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How many hours per hour of today's book a share of a repair's jobs stays within. Kept at shares {@value #STEP} apart and
 * straight between them, so that a spreadsheet can work out any share again.
 *
 * @param ratios hours per book hour at {@value #LEAST}, then every {@value #STEP}; NaN where nothing is known
 */
public record FitCurve(List<Double> ratios) {
    /** The least share kept. */
    public static final double LEAST = 0.30;

    /** From one share to the next. */
    public static final double STEP = 0.05;

    /** How many shares are kept: up to 0.95. */
    public static final int SHARES = 14;

    private static final double MILLION = 1e6;

    /** Nothing is known. */
    static final FitCurve UNKNOWN = new FitCurve(Collections.nCopies(SHARES, Double.NaN));

    public FitCurve {
        ratios = List.copyOf(ratios);
    }

    /** Returns a kept share, from 0 on. */
    public static double share(int place) {
        return LEAST + place * STEP;
    }

    /** Returns hours per book hour that a share of jobs, {@value #LEAST} to 0.95, stays within. */
    public double at(double share) {
        double steps = StrictMath.rint((share - LEAST) / STEP * MILLION) / MILLION;
        int place = (int) StrictMath.min(SHARES - 2, StrictMath.floor(steps));
        double low = ratios.get(place);
        return low + (steps - place) * (ratios.get(place + 1) - low);
    }

    /** Returns the same with every ratio multiplied. */
    FitCurve times(double factor) {
        return factor == 1
                ? this
                : new FitCurve(ratios.stream().map(ratio -> ratio * factor).toList());
    }

    /** Returns whether anything is known. */
    public boolean known() {
        return IntStream.range(0, SHARES).allMatch(place -> Double.isFinite(ratios.get(place)));
    }
}
