package benchtrue.findings;

import benchtrue.findings.Causes.Named;
import benchtrue.hours.JobLines;
import benchtrue.settings.Settings;
import benchtrue.statistics.BenjaminiHochberg;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds what some jobs of a repair have that makes them take longer, or less long, than its others (methods, section 14). All
 * circumstances of a repair are judged together (Simes 1986), and all repairs under one control of false discoveries (Benjamini,
 * Hochberg 1995); so periods and levels that overlap are no further discoveries. Of a repair that passes the surest is named, and
 * a further one of another kind only where its jobs still differ in it once that is taken off.
 */
final class FindCauses {
    /** Errors by which jobs with hours of their own must differ by themselves: a ticket's other lines may be to blame else. */
    private static final double OWN_SCORE = 1.65;

    private static final int FEWEST_WITH = 4;
    private static final int FEWEST_WITHOUT = 8;
    private static final double MOST_SHARE = 0.6;
    /** Variance of ln that a cause is expected to make, once it is told from chance: most double the hours at most, or halve them. */
    private static final double USUAL = 1;

    /** Score that half of all stand within where chance alone is at work. */
    private static final double MIDDLE = 0.6745;

    private static final double MOST_WIDENED = 1.5;
    private static final double LEAST_WIDENED = 0.75;
    private static final int LENT_SCORES = 200;
    private static final int LENT_JOBS = 8;
    private final Settings settings;
    private final List<Circumstance> all;
    private final JobLines jobs;
    private final JobModel model;
    private final ShopPace pace;
    private final double[] load;

    /** One circumstance of one repair. */
    private record Tested(int circumstance, int type, Contrasts contrasts, double score, double chance) {}

    /**
     * Takes a shop's jobs.
     *
     * @param load by repair type, hours per quoted hour
     */
    FindCauses(JobLines jobs, JobModel model, ShopPace pace, Settings settings, double[] load) {
        this.settings = settings;
        this.load = load;
        all = Circumstances.of(jobs, model, settings.figures());
        this.jobs = jobs;
        this.model = model;
        this.pace = pace;
    }

    /** Returns the causes, by repair type. */
    Causes find() {
        CauseRows plain = rows(List.of());
        List<Named> named = new ArrayList<>(surest(plain, List.of()));
        if (!named.isEmpty()) {
            List<Named> first = again(named);
            named = new ArrayList<>(first);
            named.addAll(surest(rows(first), first));
            named.sort(Comparator.comparingInt(Named::repairType));
        }
        return Causes.of(named, all, ownJobs(plain), jobs);
    }

    private CauseRows rows(List<Named> before) {
        return CauseRows.of(jobs, model, pace, Causes.of(before, List.of(), new int[load.length], jobs));
    }

    /** What a ticket as a whole tells of a line is told to first order; so sizes are told again from where they lead. */
    private List<Named> again(List<Named> first) {
        CauseRows left = rows(first);
        double[] spread = spread(left);
        return first.stream()
                .map(cause -> {
                    Contrasts contrasts = contrasts(cause.circumstance(), left, spread);
                    int type = cause.repairType();
                    return cause.longer(contrasts.beyond(type, USUAL), contrasts.error(type));
                })
                .toList();
    }

    /** Returns by repair type how many jobs have hours of their own. */
    private int[] ownJobs(CauseRows rows) {
        int[] own = new int[load.length];
        IntStream.range(0, rows.own()).forEach(i -> own[rows.type()[i]]++);
        return own;
    }

    private List<Named> surest(CauseRows rows, List<Named> before) {
        List<List<Tested>> byType = new ArrayList<>();
        IntStream.range(0, load.length).forEach(type -> byType.add(new ArrayList<>()));
        test(rows).forEach(test -> byType.get(test.type).add(test));
        double[] adjusted = BenjaminiHochberg.adjust(
                byType.stream().mapToDouble(tests -> together(tests, before)).toArray());
        List<Named> named = new ArrayList<>();
        for (int k = 0; k < adjusted.length; k++) {
            double p = adjusted[k];
            byType.get(k).stream()
                    .filter(test -> p <= settings.falseDiscovery() && counts(test, before))
                    .max(Comparator.comparingDouble(test -> StrictMath.abs(test.score)))
                    .ifPresent(test -> named.add(named(test, p)));
        }
        return named;
    }

    /** Returns the chance that no circumstance of a repair counts (Simes 1986); NaN without any. */
    private double together(List<Tested> tests, List<Named> before) {
        double[] p = BenjaminiHochberg.adjust(tests.stream()
                .mapToDouble(test -> counts(test, before) ? test.chance : 1)
                .toArray());
        return Arrays.stream(p).min().orElse(Double.NaN);
    }

    /** Jobs that take less long are no cause unless the repair is over-quoted; a second cause is of a second kind. */
    private boolean counts(Tested test, List<Named> before) {
        Circumstance circumstance = all.get(test.circumstance);
        double size = test.contrasts.size(test.type);
        boolean asked = size > 0 || circumstance.eitherSide() || load[test.type] < 1 - settings.tolerance();
        boolean second = before.isEmpty()
                || before.stream().anyMatch(cause -> cause.repairType() == test.type)
                        && before.stream()
                                .noneMatch(cause -> cause.repairType() == test.type
                                        && cause.circumstance().kind() == circumstance.kind());
        return asked
                && second
                && test.contrasts.ownScore(test.type) * StrictMath.signum(size) > OWN_SCORE
                && StrictMath.abs(size) > StrictMath.log1p(settings.tolerance());
    }

    private Named named(Tested test, double adjusted) {
        Circumstance circumstance = all.get(test.circumstance);
        double size = test.contrasts.beyond(test.type, USUAL);
        boolean turn = size < 0 && circumstance.eitherSide();
        return new Named(
                test.type,
                turn ? circumstance.turned() : circumstance,
                turn ? -size : size,
                test.contrasts.error(test.type),
                test.contrasts.freedom(test.type),
                adjusted);
    }

    private List<Tested> test(CauseRows rows) {
        double[] spread = spread(rows);
        List<Contrasts> contrasts = all.parallelStream()
                .map(circumstance -> contrasts(circumstance, rows, spread))
                .toList();
        List<Tested> tested = new ArrayList<>();
        for (int c = 0; c < all.size(); c++) {
            Contrasts found = contrasts.get(c);
            for (int k = 0; k < load.length; k++) {
                if (enough(found.with(k), found.without(k), all.get(c))) {
                    tested.add(new Tested(c, k, found, found.score(k), 1));
                }
            }
        }
        return widened(tested);
    }

    private static Contrasts contrasts(Circumstance circumstance, CauseRows rows, double[] spread) {
        double[] value = rows.value();
        if (circumstance.isModelled()) {
            value = value.clone();
            for (int i = 0; i < value.length; i++) {
                value[i] += circumstance.modelled().applyAsDouble(rows.line()[i]);
            }
        }
        return new Contrasts(rows, value, circumstance.holds(), spread);
    }

    private static boolean enough(int with, int without, Circumstance circumstance) {
        boolean eitherSide = circumstance.eitherSide();
        return with >= FEWEST_WITH
                && without >= (eitherSide ? FEWEST_WITH : FEWEST_WITHOUT)
                && (eitherSide || with <= MOST_SHARE * (with + without));
    }

    /** Scores are held against how far they commonly stand in this shop (the empirical null of Efron 2010). */
    private static List<Tested> widened(List<Tested> tested) {
        double[] scores = tested.stream()
                .mapToDouble(test -> StrictMath.abs(test.score))
                .sorted()
                .toArray();
        double middle = scores.length == 0 ? MIDDLE : scores[scores.length / 2];
        double common = (scores.length * middle / MIDDLE + LENT_SCORES) / (scores.length + LENT_SCORES);
        double wide = StrictMath.max(LEAST_WIDENED, StrictMath.min(MOST_WIDENED, common));
        return tested.stream()
                .map(test -> new Tested(
                        test.circumstance,
                        test.type,
                        test.contrasts,
                        test.score / wide,
                        test.contrasts.chance(test.type, test.score / wide)))
                .toList();
    }

    /** Returns by repair type the variance of its jobs with hours of their own, leaning on the shop's. */
    private double[] spread(CauseRows rows) {
        double[] mean = new double[load.length];
        double[] squares = new double[load.length];
        int[] count = ownJobs(rows);
        double[] values = rows.value();
        for (int i = 0; i < rows.own(); i++) {
            mean[rows.type()[i]] += values[i] / count[rows.type()[i]];
        }
        double shop = 0;
        for (int i = 0; i < rows.own(); i++) {
            double off = values[i] - mean[rows.type()[i]];
            squares[rows.type()[i]] += off * off;
            shop += off * off / rows.own();
        }
        double[] spread = new double[load.length];
        for (int k = 0; k < spread.length; k++) {
            spread[k] = (squares[k] + LENT_JOBS * shop) / (count[k] + LENT_JOBS);
        }
        return spread;
    }
}
