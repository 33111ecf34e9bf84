package benchtrue.revision;

import benchtrue.findings.QuoteSizes;
import benchtrue.findings.ShopPace;
import benchtrue.hours.JobLines;
import benchtrue.shop.Hours;
import benchtrue.shop.RepairType;
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
 * The {@link FitCurve} of every repair (methods, section 13): empirical quantiles of ln(hours / quoted hours) of jobs with hours
 * surely their own and not copied.
 *
 * <p>Their shape, in units of the repair's own scatter, leans on the family as if it had lent {@value #LENT_SHAPES} jobs, the
 * family's on the shop; quantiles lean by averaging at equal shares (Ratcliff 1979, Psychological Bulletin 86, 446-461), each with
 * the share of a further job below it (type 6 of Hyndman, Fan 1996). The scatter leans by {@value #LENT_SCATTERS} jobs. The middle
 * is what jobs of the repair took together less what the shape says between mean and middle; jobs with hours of their own
 * correct it where the two stand apart over all repairs by more than chance, as where large quotes take less: by their number
 * over that number and scatter by distance squared (DerSimonian, Laird 1986, Controlled Clinical Trials 7, 177-188).
 */
final class FitCurves {
    private static final int LENT_SHAPES = 100;
    private static final int LENT_SCATTERS = 8;
    /** So many distances, evenly picked by size, tell a shape. */
    private static final int ENOUGH = 4_000;

    private final double[] together;
    private final String[] family;
    private final double[][] distances;
    private final double[] middle;
    private final double[] scatter;
    private final Map<String, double[]> kin = new HashMap<>();
    private final double[] shop;
    private double lentMiddles = Double.POSITIVE_INFINITY;

    private FitCurves(JobLines jobs, int[] rows, ShopPace pace, double[] together, Map<Integer, QuoteSizes> sizes) {
        this.together = together;
        family = new String[together.length];
        Arrays.setAll(family, type -> family(jobs, type));
        distances = logRatios(jobs, rows, pace, sizes, together.length);
        middle = new double[together.length];
        scatter = new double[together.length];
        for (int type = 0; type < middle.length; type++) {
            double mean = Arrays.stream(distances[type]).average().orElse(Double.NaN);
            double[] own = distances[type];
            middle[type] = mean;
            Arrays.setAll(own, job -> own[job] - mean);
        }
        scale();
        for (String name : new TreeSet<>(Arrays.asList(family))) {
            kin.put(name, shape(type -> family[type].equals(name)));
        }
        shop = shape(type -> true);
        lendMiddles();
    }

    /**
     * Returns the curve of each repair type by code.
     *
     * @param rows jobs with hours of their own, copied ones left out
     * @param pace brings their hours to today
     * @param together by code, hours per quoted hour of all its jobs, without putting right; NaN where nothing is known
     * @param sizes by code, what is taken off for the size of a quote
     */
    static List<FitCurve> of(
            JobLines jobs, int[] rows, ShopPace pace, double[] together, Map<Integer, QuoteSizes> sizes) {
        FitCurves curves = new FitCurves(jobs, rows, pace, together, sizes);
        return IntStream.range(0, together.length).mapToObj(curves::curve).toList();
    }

    private static String family(JobLines jobs, int type) {
        return jobs.ledger()
                .books()
                .type(jobs.ledger().repairTypes().name(type), jobs.ledger().asOf())
                .map(RepairType::family)
                .orElse("");
    }

    private static double[][] logRatios(
            JobLines jobs, int[] rows, ShopPace pace, Map<Integer, QuoteSizes> sizes, int types) {
        double[][] ratios = new double[types][];
        int[] count = new int[types];
        for (int line : rows) {
            count[jobs.ledger().lines().repairType(line)]++;
        }
        Arrays.setAll(ratios, type -> new double[count[type]]);
        for (int line : rows) {
            int type = jobs.ledger().lines().repairType(line);
            int opened = jobs.ledger().tickets().opened(jobs.ledger().lines().ticket(line));
            double hours = Hours.of(jobs.actualSeconds(line)) * (pace.sure() ? pace.toToday(opened) : 1);
            double quoted = jobs.todayQuotedHours(line);
            double size = sizes.containsKey(type) ? sizes.get(type).inTwoLines(quoted) : 1;
            ratios[type][--count[type]] = StrictMath.log(hours / quoted / size);
        }
        return ratios;
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

    /** Finds how far the middles of jobs with hours of their own stand from those of all, beyond chance. */
    private void lendMiddles() {
        double beyond = 0;
        double chance = 0;
        int jobs = 0;
        for (int type = 0; type < middle.length; type++) {
            if (distances[type].length > 0 && together[type] > 0) {
                double apart = middle[type] - ofAll(type);
                beyond += distances[type].length * apart * apart - scatter[type] * scatter[type];
                chance += scatter[type] * scatter[type] * distances[type].length;
                jobs += distances[type].length;
            }
        }
        if (beyond > 0) {
            lentMiddles = chance / jobs / (beyond / jobs);
        }
    }

    /** Returns the middle that the hours of all jobs together tell, as a logarithm. */
    private double ofAll(int type) {
        return StrictMath.log(together[type]) - StrictMath.log(meanOverMiddle(type));
    }

    private double meanOverMiddle(int type) {
        double[] alike = kin.get(family[type]);
        double lent = shop.length == 0 ? 1 : exponentials(type, shop) / shop.length;
        return (exponentials(type, alike) + LENT_SHAPES * lent) / (alike.length + LENT_SHAPES);
    }

    private double exponentials(int type, double[] shape) {
        return Arrays.stream(shape)
                .map(distance -> StrictMath.exp(scatter[type] * distance))
                .sum();
    }

    private FitCurve curve(int type) {
        if (!(together[type] > 0) || shop.length == 0) {
            return FitCurve.UNKNOWN;
        }
        double[] shape = lean(distances[type], lean(kin.get(family[type]), quantiles(shop)));
        int own = distances[type].length;
        double part = own == 0 ? 0 : own / (own + lentMiddles);
        double centre = part == 0 ? ofAll(type) : part * middle[type] + (1 - part) * ofAll(type);
        return new FitCurve(Arrays.stream(shape)
                .mapToObj(distance -> StrictMath.exp(centre + scatter[type] * distance))
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
