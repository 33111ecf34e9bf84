package benchtrue.sample;

import benchtrue.statistics.Quantile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Hours per hour quoted of other visits to an invented shop, under the same mix: what nobody can know better of its jobs to come.
 *
 * @param byType by repair type, ascending
 * @param meanByType by repair type, hours over quoted hours
 */
public record TrueRatios(Map<String, double[]> byType, Map<String, Double> meanByType) {
    private static final int VISITS = 30_000;
    private static final long OTHER_VISITS = 0x2545F491L;

    /** Draws other visits to a shop. */
    public static TrueRatios of(SampleOptions options) {
        World world = WriteSample.fitted(World.of(options));
        VisitMaker maker = new VisitMaker(world.withOtherVisits(VISITS, OTHER_VISITS));
        Map<String, List<Double>> ratios = new HashMap<>();
        Map<String, double[]> sums = new HashMap<>();
        for (int i = 0; i < VISITS; i++) {
            Visit visit = maker.fresh(i, Fault.NONE);
            for (Line line : visit.lines()) {
                if (line.judged() && !line.copied()) {
                    String type = world.catalogue().get(line.type()).key();
                    Line asQuoted = line.found() ? line.quotedOn(visit.opened(), line.bookSeconds()) : line;
                    double quoted = world.rebased(asQuoted);
                    ratios.computeIfAbsent(type, key -> new ArrayList<>()).add(line.workedSeconds() / quoted);
                    double[] sum = sums.computeIfAbsent(type, key -> new double[2]);
                    sum[0] += line.workedSeconds();
                    sum[1] += quoted;
                }
            }
        }
        Map<String, double[]> sorted = new HashMap<>();
        ratios.forEach((type, values) -> sorted.put(
                type,
                Quantile.sorted(values.stream().mapToDouble(Double::doubleValue).toArray())));
        Map<String, Double> means = new HashMap<>();
        sums.forEach((type, sum) -> means.put(type, sum[0] / sum[1]));
        return new TrueRatios(sorted, means);
    }

    /** Returns the ratio that a share of a type's jobs stays within; 1 for a type that never came. */
    public double quantile(String type, double share) {
        return byType.containsKey(type) ? Quantile.of(byType.get(type), share) : 1;
    }

    /** Returns hours over quoted hours of a type; 1 for one that never came. */
    public double mean(String type) {
        return meanByType.getOrDefault(type, 1.0);
    }
}
