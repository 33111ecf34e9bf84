package benchtrue.revision;

import benchtrue.findings.QuoteSizes;
import benchtrue.hours.JobLines;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What repairs are asked for where small and large quotes have a line each: the shop's rule at the repair's middle size, times
 * what the size of a quote adds or takes.
 *
 * @param sizes by code, of repairs whose hours surely run with the size of the quote
 * @param together by code, hours per quoted hour of all jobs at the middle size, without putting right
 * @param fits by code, at the middle size
 */
record SizedShares(Map<Integer, QuoteSizes> sizes, double[] together, List<FitCurve> fits) {
    /**
     * Takes a shop's jobs.
     *
     * @param once by code, hours per quoted hour of all jobs of a repair together
     */
    static SizedShares of(FitCurves.Measured measured, double[] once, List<QuoteSizes> found) {
        JobLines jobs = measured.lines();
        Map<Integer, QuoteSizes> sizes =
                found.stream().collect(Collectors.toMap(QuoteSizes::repairType, Function.identity()));
        double[] quoted = new double[once.length];
        double[] sized = new double[once.length];
        for (int line = 0; line < jobs.size(); line++) {
            int type = jobs.ledger().lines().repairType(line);
            if (jobs.judged(line) && sizes.containsKey(type)) {
                quoted[type] += jobs.todayQuotedHours(line);
                sized[type] += jobs.todayQuotedHours(line) * sizes.get(type).inTwoLines(jobs.todayQuotedHours(line));
            }
        }
        double[] together = once.clone();
        Arrays.setAll(together, type -> sizes.containsKey(type) ? once[type] * quoted[type] / sized[type] : once[type]);
        return new SizedShares(sizes, together, FitCurves.of(measured, sizes));
    }

    Optional<QuoteSizes> of(int type) {
        return Optional.ofNullable(sizes.get(type));
    }
}
