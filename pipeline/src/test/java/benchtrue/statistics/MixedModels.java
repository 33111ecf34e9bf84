package benchtrue.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/** What R says about mixed models: written by src/test/r/recompute.R, by lme4 and from first principles. */
final class MixedModels {
    private static final ReferenceData ALL = ReferenceData.read("mixed-models.csv");
    private static final String[] FITS = ALL.text("fit");
    private static final String[] WHATS = ALL.text("what");
    private static final double[] FACTORS = ALL.numbers("factor");
    private static final double[] VALUES = ALL.numbers("value");

    private MixedModels() {}

    static double[] of(String fit, String what, int factor) {
        return IntStream.range(0, VALUES.length)
                .filter(i -> FITS[i].equals(fit) && WHATS[i].equals(what) && FACTORS[i] == factor)
                .mapToDouble(i -> VALUES[i])
                .toArray();
    }

    /** Returns the fit with every row counting alike. */
    static CrossedEffects fit(double[] y, double[][] columns, Factor... factors) {
        double[] ones = new double[y.length];
        Arrays.fill(ones, 1);
        return CrossedEffects.fit(y, columns, ones, factors);
    }

    /** Returns the standard error of a level's effect as a prediction of the true one. */
    static double effectError(CrossedEffects fit, int factor, int level) {
        int[] levels = new int[factor + 1];
        Arrays.fill(levels, -1);
        levels[factor] = level;
        return fit.contrastError(new double[0], levels);
    }

    static double of(String fit, String what) {
        return of(fit, what, 0)[0];
    }
}
