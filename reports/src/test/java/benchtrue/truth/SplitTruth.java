package benchtrue.truth;

import benchtrue.hours.InseparablePair;
import benchtrue.hours.JobLines;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.TypeTruth;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.LongFunction;

/**
 * Errors of ways to split hours, each the sum over shops and repair types of |split load factor - realised load factor|: with
 * the repair types that the split itself says can't be told apart, and without them.
 */
final class SplitTruth {
    private static final double USUAL_SPREAD = 0.3;

    /** The ways, and the same without inseparable types; how many of those there are. */
    private enum Figure {
        PRO_RATA,
        TO_THE_REST,
        PLAIN_EM,
        THIS_SPLIT,
        ALL_KNOWN,
        SEPARABLE_PRO_RATA,
        SEPARABLE_TO_THE_REST,
        SEPARABLE_PLAIN_EM,
        SEPARABLE_THIS_SPLIT,
        SEPARABLE_ALL_KNOWN,
        INSEPARABLE_TYPES
    }

    private static final int WAYS = 5;

    private final double[] sums;
    private final String seeds;

    private SplitTruth(double[] sums, String seeds) {
        this.sums = sums;
        this.seeds = seeds;
    }

    /** Splits one shop a seed. */
    static SplitTruth of(SeedTable table, LongFunction<SampleOptions> shop) {
        return new SplitTruth(table.sums(seed -> errors(TruthShop.of(shop.apply(seed)))), table.range());
    }

    private static double[] errors(TruthShop shop) {
        JobLines jobs = shop.jobs();
        TreeSet<String> pairs = new TreeSet<>();
        for (InseparablePair pair : jobs.inseparable()) {
            pairs.add(jobs.ledger().repairTypes().name(pair.first()));
            pairs.add(jobs.ledger().repairTypes().name(pair.second()));
        }
        RivalSplits rivals = new RivalSplits(jobs);
        double[] own = new double[jobs.size()];
        double[] spread = new double[jobs.size()];
        for (int line = 0; line < own.length; line++) {
            own[line] = jobs.actualSeconds(line) / 3_600.0;
            double sd = sd(shop, line);
            spread[line] = Math.sqrt(Math.expm1(sd * sd));
        }
        double[][] ways = {
            rivals.proRata(), rivals.proRataToTheRest(), rivals.plainEm(), own, rivals.oracle(shop.lines(), spread)
        };
        double[] errors = new double[Figure.values().length];
        for (int way = 0; way < WAYS; way++) {
            errors[way] = error(shop, ways[way], new TreeSet<>());
            errors[WAYS + way] = error(shop, ways[way], pairs);
        }
        errors[Figure.INSEPARABLE_TYPES.ordinal()] = pairs.size();
        return errors;
    }

    private static double sd(TruthShop shop, int line) {
        if (shop.lines()[line] == null) {
            return USUAL_SPREAD;
        }
        String type = shop.lines()[line].repairType();
        return shop.truth().types().stream()
                .filter(t -> t.repairType().equals(type))
                .mapToDouble(TypeTruth::sd)
                .findFirst()
                .orElse(USUAL_SPREAD);
    }

    private static double error(TruthShop shop, double[] hours, TreeSet<String> leftOut) {
        Map<String, double[]> sums = new HashMap<>();
        for (int line = 0; line < hours.length; line++) {
            var truth = shop.lines()[line];
            if (truth != null && truth.judged() && !leftOut.contains(truth.repairType())) {
                double[] sum = sums.computeIfAbsent(truth.repairType(), t -> new double[3]);
                sum[0] += hours[line];
                sum[1] += truth.loggedSeconds() / 3_600.0;
                sum[2] += truth.rebasedSeconds() / 3_600.0;
            }
        }
        return sums.values().stream()
                .mapToDouble(sum -> Math.abs(sum[0] - sum[1]) / sum[2])
                .sum();
    }

    /** Returns this split's error over that of a split pro rata to the quotes, inseparable types left out. */
    double ratio() {
        return share(Figure.SEPARABLE_THIS_SPLIT, Figure.SEPARABLE_PRO_RATA);
    }

    /** Returns the same of all types. */
    double ratioOfAll() {
        return share(Figure.THIS_SPLIT, Figure.PRO_RATA);
    }

    private double share(Figure part, Figure whole) {
        return sums[part.ordinal()] / sums[whole.ordinal()];
    }

    /** Prints the table. */
    SplitTruth print(String name) {
        System.out.printf(
                Locale.ROOT,
                "%s, %s: error over pro rata's (whose sum is %.2f)%n"
                        + "  all types:                   to the rest %.3f | plain EM %.3f | this split %.4f | all known %.4f%n"
                        + "  without %3.0f inseparable ones: to the rest %.3f | plain EM %.3f | this split %.4f | all known %.4f%n",
                name,
                seeds,
                sums[Figure.PRO_RATA.ordinal()],
                share(Figure.TO_THE_REST, Figure.PRO_RATA),
                share(Figure.PLAIN_EM, Figure.PRO_RATA),
                ratioOfAll(),
                share(Figure.ALL_KNOWN, Figure.PRO_RATA),
                sums[Figure.INSEPARABLE_TYPES.ordinal()],
                share(Figure.SEPARABLE_TO_THE_REST, Figure.SEPARABLE_PRO_RATA),
                share(Figure.SEPARABLE_PLAIN_EM, Figure.SEPARABLE_PRO_RATA),
                ratio(),
                share(Figure.SEPARABLE_ALL_KNOWN, Figure.SEPARABLE_PRO_RATA));
        return this;
    }
}
