package benchtrue.findings;

import benchtrue.findings.QuoteSizes.SizeClass;
import benchtrue.hours.JobLines;
import benchtrue.statistics.Isotonic;
import benchtrue.statistics.Normal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Finds repairs whose hours per quoted hour run with the size of the quote (methods, section 13): a monotone curve of
 * ln(hours / quoted hours) over classes of quoted hours. Only repairs of which quotes differ widely are looked at. All of them
 * together give the shop's curve, where its slope lies beyond {@value #SURE} errors, which hold whatever the scatter of small and
 * large jobs (White 1980, Econometrica 48, 817-838); each repair's own classes lean on it as if it had lent {@value #LENT_JOBS}
 * jobs. Where the shop has no such slope, a repair that has one by itself leans on being level.
 */
public final class FindQuoteSizes {
    private static final int LENT_JOBS = 30;
    private static final int FEWEST = 20;
    private static final int FEWEST_ALONE = 60;
    private static final double SURE = 3.5;
    /** Nine tenths of the quotes are at least this many times as long as one tenth. */
    private static final double WIDELY = 2;
    /** Small and large quotes that differ by less are not worth two lines. */
    private static final double WORTH_TWO_LINES = 0.15;

    private static final double REACH = Normal.quantile(0.95);
    private static final DoubleUnaryOperator LEVEL = quote -> 0;

    private final JobLines jobs;
    private final ShopPace pace;

    private FindQuoteSizes(JobLines jobs, ShopPace pace) {
        this.jobs = jobs;
        this.pace = pace;
    }

    /** One job: the logarithms of its quote and of its hours per quoted hour, each less its repair's mean. */
    private record Job(double quote, double fromMean, double load) {}

    /** The jobs of one repair by rising quotes, and the mean logarithm of their load. */
    private record Repair(int type, List<Job> jobs, double load) {
        private boolean wide() {
            int tenth = jobs.size() / 10;
            return jobs.size() >= FEWEST
                    && jobs.get(jobs.size() - 1 - tenth).quote - jobs.get(tenth).quote >= StrictMath.log(WIDELY);
        }
    }

    /**
     * Returns what was found, by code of the repair type.
     *
     * @param rows jobs with hours of their own, copied ones left out
     * @param pace brings their hours to today
     */
    public static List<QuoteSizes> of(JobLines jobs, int[] rows, ShopPace pace) {
        FindQuoteSizes find = new FindQuoteSizes(jobs, pace);
        List<Repair> wide = IntStream.range(0, jobs.ledger().repairTypes().size())
                .mapToObj(type -> find.repair(type, rows))
                .filter(Repair::wide)
                .toList();
        List<Job> all = wide.stream()
                .flatMap(repair -> repair.jobs.stream())
                .sorted(Comparator.comparingDouble(Job::quote).thenComparingDouble(Job::load))
                .toList();
        double shop = slope(all);
        DoubleUnaryOperator curve = shop == 0 ? LEVEL : curve(all, shop);
        return wide.stream()
                .map(repair -> told(repair, curve, shop == 0 ? alone(repair) : shop))
                .flatMap(Optional::stream)
                .toList();
    }

    private Repair repair(int type, int[] rows) {
        int[] lines = Arrays.stream(rows)
                .filter(line -> jobs.ledger().lines().repairType(line) == type)
                .toArray();
        double quote = Arrays.stream(lines).mapToDouble(this::quote).average().orElse(0);
        double load = Arrays.stream(lines).mapToDouble(this::load).average().orElse(0);
        return new Repair(
                type,
                Arrays.stream(lines)
                        .mapToObj(line -> new Job(quote(line), quote(line) - quote, load(line) - load))
                        .sorted(Comparator.comparingDouble(Job::quote).thenComparingDouble(Job::load))
                        .toList(),
                load);
    }

    private double quote(int line) {
        return StrictMath.log(jobs.todayQuotedHours(line));
    }

    private double load(int line) {
        return JobRows.logRatio(jobs, line)
                + (pace.sure() ? StrictMath.log(pace.toToday(jobs.ledger().opened(line))) : 0);
    }

    private static double alone(Repair repair) {
        return repair.jobs.size() < FEWEST_ALONE ? 0 : slope(repair.jobs);
    }

    /** Returns the slope of load on quote within repairs, 0 where it is not sure. */
    private static double slope(List<Job> some) {
        double xx = 0;
        double xy = 0;
        for (Job job : some) {
            xx += job.fromMean * job.fromMean;
            xy += job.fromMean * job.load;
        }
        double slope = xx > 0 ? xy / xx : 0;
        double meat = 0;
        for (Job job : some) {
            double score = job.fromMean * (job.load - slope * job.fromMean);
            meat += score * score;
        }
        return StrictMath.abs(slope) > SURE * StrictMath.sqrt(meat) / xx ? slope : 0;
    }

    /** Returns the shop's curve over the logarithm of the quote, straight between its classes and level beyond them. */
    private static DoubleUnaryOperator curve(List<Job> all, double slope) {
        List<SizeParts.Part> parts =
                SizeParts.of(all.stream().mapToDouble(Job::quote).toArray());
        double[] at = parts.stream()
                .mapToDouble(part -> mean(all.subList(part.from(), part.to()), Job::quote))
                .toArray();
        double[] value = Isotonic.fit(
                parts.stream()
                        .mapToDouble(part -> mean(all.subList(part.from(), part.to()), Job::load))
                        .toArray(),
                parts.stream().mapToDouble(SizeParts.Part::jobs).toArray(),
                way(slope));
        return quote -> {
            int next = 0;
            while (next < at.length && at[next] < quote) {
                next++;
            }
            return next == 0 || next == at.length
                    ? value[Math.min(next, at.length - 1)]
                    : value[next - 1]
                            + (quote - at[next - 1]) / (at[next] - at[next - 1]) * (value[next] - value[next - 1]);
        };
    }

    private static Isotonic.Way way(double slope) {
        return slope > 0 ? Isotonic.Way.RISING : Isotonic.Way.FALLING;
    }

    private static double mean(List<Job> some, ToDoubleFunction<Job> of) {
        return some.stream().mapToDouble(of).average().orElse(0);
    }

    private static Optional<QuoteSizes> told(Repair repair, DoubleUnaryOperator shop, double slope) {
        List<SizeParts.Part> parts =
                SizeParts.of(repair.jobs.stream().mapToDouble(Job::quote).toArray());
        if (slope == 0 || parts.size() < 2) {
            return Optional.empty();
        }
        double centre = mean(repair.jobs, job -> shop.applyAsDouble(job.quote));
        DoubleUnaryOperator lent = quote -> shop.applyAsDouble(quote) - centre;
        double[] loads = parts.stream()
                .mapToDouble(part -> leaning(repair.jobs.subList(part.from(), part.to()), lent))
                .toArray();
        double[] curve = Isotonic.fit(
                loads, parts.stream().mapToDouble(SizeParts.Part::jobs).toArray(), way(slope));
        List<SizeClass> classes = new ArrayList<>();
        for (int place = 0; place < curve.length; place++) {
            List<Job> part = repair.jobs.subList(
                    parts.get(place).from(), parts.get(place).to());
            classes.add(sizeClass(part, repair.load, curve[place]));
        }
        List<Job> below = repair.jobs.subList(0, SizeParts.cut(parts, loads));
        List<Job> above = repair.jobs.subList(below.size(), repair.jobs.size());
        SizeClass small = sizeClass(below, repair.load, leaning(below, lent));
        SizeClass large = sizeClass(above, repair.load, leaning(above, lent));
        double apart = StrictMath.log(large.perUsual() / small.perUsual());
        return StrictMath.abs(apart) < WORTH_TWO_LINES || apart * slope < 0
                ? Optional.empty()
                : Optional.of(new QuoteSizes(repair.type, classes, small, large, large.leastQuoted()));
    }

    private static double leaning(List<Job> part, DoubleUnaryOperator lent) {
        double onto = mean(part, job -> lent.applyAsDouble(job.quote));
        return (part.size() * mean(part, Job::load) + LENT_JOBS * onto) / (part.size() + LENT_JOBS);
    }

    private static SizeClass sizeClass(List<Job> part, double usual, double distance) {
        double mean = mean(part, Job::load);
        double squares = part.stream()
                .mapToDouble(job -> (job.load - mean) * (job.load - mean))
                .sum();
        double reach = REACH * StrictMath.sqrt(squares / (part.size() - 1) / part.size());
        return new SizeClass(
                part.size(),
                StrictMath.exp(part.get(0).quote),
                StrictMath.exp(part.get(part.size() / 2).quote),
                StrictMath.exp(part.get(part.size() - 1).quote),
                StrictMath.exp(usual + distance),
                StrictMath.exp(usual + distance - reach),
                StrictMath.exp(usual + distance + reach),
                StrictMath.exp(distance));
    }
}
