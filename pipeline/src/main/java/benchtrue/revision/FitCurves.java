package benchtrue.revision;

import benchtrue.findings.QuoteSizes;
import benchtrue.findings.ShopPace;
import benchtrue.hours.JobLines;
import benchtrue.shop.Hours;
import benchtrue.shop.RepairType;
import benchtrue.statistics.Moments;
import benchtrue.statistics.Quantile;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The {@link FitCurve} of every repair (methods, section 13): empirical quantiles of ln(hours / quoted hours).
 *
 * <p>The middle is the mean over all jobs that are not copied, each with one vote, leaning on the model of hours as if it had lent
 * {@value #LENT_MIDDLES} jobs. Dealing keeps the mean of hours and not of their logarithms, so dealt jobs are lowered by half of the
 * variance that they lack.
 *
 * <p>The shape about it is that of jobs with hours surely their own, since dealt hours scatter too little. In units of the repair's
 * own scatter it leans on the family as if it had lent {@value #LENT_SHAPES} jobs, the family's on the shop; quantiles lean by
 * averaging at equal shares (Ratcliff 1979, Psychological Bulletin 86, 446-461), each with the share of a further job below it (type
 * 6 of Hyndman, Fan 1996). The scatter leans by {@value #LENT_SCATTERS} jobs.
 */
final class FitCurves {
    private static final int LENT_MIDDLES = 5;
    private static final int LENT_SHAPES = 400;
    private static final int LENT_SCATTERS = 8;
    /** So many distances, evenly picked by size, tell a shape. */
    private static final int ENOUGH = 4_000;

    private final String[] family;
    private final double[][] distances;
    private final double[] middle;
    private final double[] scatter;
    private final Map<String, double[]> kin = new HashMap<>();
    private final double[] shop;

    /**
     * The jobs that tell it.
     *
     * @param lines all jobs
     * @param own rows of those with hours of their own, copied ones left out
     * @param dealt rows of those that were dealt hours of a whole ticket
     * @param pace brings their hours to today
     * @param typical by repair-type code, hours per quoted hour of the usual job, at today's pace; NaN where nothing is known
     */
    record Measured(JobLines lines, int[] own, int[] dealt, ShopPace pace, double[] typical) {
        private double[][] logRatios(int[] rows, Map<Integer, QuoteSizes> sizes) {
            double[][] ratios = new double[typical.length][];
            int[] count = new int[typical.length];
            for (int line : rows) {
                count[lines.ledger().lines().repairType(line)]++;
            }
            Arrays.setAll(ratios, type -> new double[count[type]]);
            for (int line : rows) {
                int type = lines.ledger().lines().repairType(line);
                int opened =
                        lines.ledger().tickets().opened(lines.ledger().lines().ticket(line));
                double hours = Hours.of(lines.actualSeconds(line)) * (pace.sure() ? pace.toToday(opened) : 1);
                double quoted = lines.todayQuotedHours(line);
                double size = sizes.containsKey(type) ? sizes.get(type).inTwoLines(quoted) : 1;
                ratios[type][--count[type]] = StrictMath.log(hours / quoted / size);
            }
            return ratios;
        }

        /** Returns the logarithm of the usual job of each repair at its middle size. */
        private double[] lent(Map<Integer, QuoteSizes> sizes) {
            double[] lent = new double[typical.length];
            double[] jobs = new double[typical.length];
            IntStream.concat(IntStream.of(own), IntStream.of(dealt)).forEach(line -> {
                int type = lines.ledger().lines().repairType(line);
                jobs[type]++;
                lent[type] -= sizes.containsKey(type)
                        ? StrictMath.log(sizes.get(type).inTwoLines(lines.todayQuotedHours(line)))
                        : 0;
            });
            Arrays.setAll(lent, type -> StrictMath.log(typical[type]) + lent[type] / StrictMath.max(1, jobs[type]));
            return lent;
        }
    }

    private FitCurves(Measured jobs, Map<Integer, QuoteSizes> sizes) {
        family = new String[jobs.typical().length];
        Arrays.setAll(family, type -> family(jobs.lines(), type));
        distances = jobs.logRatios(jobs.own(), sizes);
        double[][] dealt = jobs.logRatios(jobs.dealt(), sizes);
        double[] lent = jobs.lent(sizes);
        middle = new double[family.length];
        scatter = new double[family.length];
        Arrays.setAll(middle, type -> Moments.sum(distances[type]) + Moments.sum(dealt[type]));
        double lacking = lacking(centred(dealt), centred(distances));
        scale();
        Arrays.setAll(middle, type -> {
            double sum = middle[type] - dealt[type].length * lacking * scatter[type] * scatter[type] / 2;
            double own = distances[type].length + dealt[type].length;
            return Double.isFinite(lent[type]) ? (sum + LENT_MIDDLES * lent[type]) / (own + LENT_MIDDLES) : sum / own;
        });
        for (String name : new TreeSet<>(Arrays.asList(family))) {
            kin.put(name, shape(type -> family[type].equals(name)));
        }
        shop = shape(type -> true);
    }

    /**
     * Returns the curve of each repair type by code.
     *
     * @param sizes by code, what is taken off for the size of a quote
     */
    static List<FitCurve> of(Measured jobs, Map<Integer, QuoteSizes> sizes) {
        FitCurves curves = new FitCurves(jobs, sizes);
        return IntStream.range(0, curves.middle.length).mapToObj(curves::curve).toList();
    }

    private static String family(JobLines jobs, int type) {
        return jobs.ledger()
                .books()
                .type(jobs.ledger().repairTypes().name(type), jobs.ledger().asOf())
                .map(RepairType::family)
                .orElse("");
    }

    /** Takes what jobs of each repair take from its mean; returns their squares together. */
    private static Squares centred(double[][] ratios) {
        Squares all = Squares.NONE;
        for (double[] own : ratios) {
            double mean = Arrays.stream(own).average().orElse(Double.NaN);
            Arrays.setAll(own, job -> own[job] - mean);
            all = all.plus(Squares.of(own));
        }
        return all;
    }

    /**
     * Returns what share of a job's variance dealt hours lack. Dealing keeps the mean of hours, so the logarithms of dealt hours
     * have a mean too high by half of the variance that they lack.
     */
    private static double lacking(Squares dealt, Squares own) {
        return dealt.jobs == 0 || !(own.sum > 0)
                ? 0
                : StrictMath.max(0, 1 - dealt.sum / dealt.jobs / (own.sum / own.jobs));
    }

    /** Takes distances in units of each repair's scatter. */
    private void scale() {
        Map<String, Squares> families = new HashMap<>();
        Squares all = Squares.NONE;
        for (int type = 0; type < scatter.length; type++) {
            Squares own = Squares.of(distances[type]);
            families.merge(family[type], own, Squares::plus);
            all = all.plus(own);
        }
        for (int type = 0; type < scatter.length; type++) {
            double lent = families.get(family[type]).leaning(all.sum / all.jobs);
            double[] own = distances[type];
            scatter[type] = StrictMath.sqrt(Squares.of(own).leaning(lent));
            double unit = scatter[type] > 0 ? scatter[type] : 1;
            Arrays.setAll(own, job -> own[job] / unit);
        }
    }

    /** Squared distances added up. */
    private record Squares(double sum, int jobs) {
        private static final Squares NONE = new Squares(0, 0);

        private static Squares of(double[] distances) {
            return new Squares(Arrays.stream(distances).map(x -> x * x).sum(), distances.length);
        }

        private Squares plus(Squares other) {
            return new Squares(sum + other.sum, jobs + other.jobs);
        }

        private double leaning(double lent) {
            return (sum + LENT_SCATTERS * lent) / (jobs + LENT_SCATTERS);
        }
    }

    private FitCurve curve(int type) {
        if (Double.isNaN(middle[type]) || shop.length == 0) {
            return FitCurve.UNKNOWN;
        }
        double[] shape = lean(distances[type], lean(kin.get(family[type]), quantiles(shop)));
        return new FitCurve(Arrays.stream(shape)
                .mapToObj(distance -> StrictMath.exp(middle[type] + scatter[type] * distance))
                .toList());
    }

    /** Returns distances, ascending; one job of a repair alone stands at no distance from itself and tells nothing. */
    private double[] shape(IntPredicate some) {
        double[] all = IntStream.range(0, distances.length)
                .filter(some)
                .filter(type -> distances[type].length > 1)
                .mapToObj(type -> distances[type])
                .flatMapToDouble(DoubleStream::of)
                .sorted()
                .toArray();
        int every = 1 + all.length / ENOUGH;
        return IntStream.range(0, all.length)
                .filter(place -> (place + every / 2) % every == 0)
                .mapToDouble(place -> all[place])
                .toArray();
    }

    private static double[] lean(double[] own, double[] lent) {
        if (own.length < 2) {
            return lent;
        }
        double[] quantiles = quantiles(own);
        Arrays.setAll(
                quantiles,
                place -> (own.length * quantiles[place] + LENT_SHAPES * lent[place]) / (own.length + LENT_SHAPES));
        return quantiles;
    }

    private static double[] quantiles(double[] values) {
        double[] sorted = Quantile.sorted(values);
        double[] quantiles = new double[values.length == 0 ? 0 : FitCurve.SHARES];
        Arrays.setAll(quantiles, place -> Quantile.exclusive(sorted, FitCurve.share(place)));
        return quantiles;
    }
}
