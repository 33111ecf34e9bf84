package benchtrue.findings;

import benchtrue.findings.Slowing.Standing;
import benchtrue.hours.JobLines;
import benchtrue.shop.Hours;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Splits what each repair type loses a year into the book, quotes below the book, slower work and rework. With Q hours
 * quoted, B hours in today's book, A worked and W spent putting right, A + W - Q = (A - B) + (B - Q) + W; of A - B, what the
 * jobs since a confirmed slowing take more than before is slower work.
 */
final class SplitShortfall {
    private final JobLines jobs;
    private final JobFactors factors;
    private final Map<Integer, Slowing> slowings;
    private final double[] quoted;
    private final double[] book;
    private final double[] actual;
    private final double[] rework;

    SplitShortfall(JobLines jobs, JobFactors factors, List<Slowing> slowings) {
        this.jobs = jobs;
        this.factors = factors;
        this.slowings = slowings.stream()
                .filter(slowing -> slowing.standing() == Standing.CONFIRMED && !Double.isNaN(slowing.loadSince()))
                .collect(Collectors.toMap(Slowing::repairType, slowing -> slowing));
        int types = jobs.ledger().repairTypes().size();
        quoted = new double[types];
        book = new double[types];
        actual = new double[types];
        rework = new double[types];
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line) && current(line)) {
                add(line);
            }
        }
    }

    /** Where a type got slower only the jobs since count, as they do for its verdict. */
    private boolean current(int line) {
        Slowing slowing = slowings.get(factors.type(line));
        return slowing == null || jobs.ledger().opened(line) >= slowing.startDay();
    }

    private void add(int line) {
        int type = factors.type(line);
        quoted[type] += jobs.todayQuotedHours(line);
        book[type] += jobs.todayQuotedHours(line) / StrictMath.exp(factors.adjustment(line));
        actual[type] += Hours.of(jobs.actualSeconds(line));
        rework[type] += Hours.of(jobs.reworkSeconds(line));
    }

    /** Returns the parts of each finding that has lines; they add up to its annual shortfall. */
    List<ShortfallParts> of(List<RepairFinding> findings, TypeTotals totals, long shopRate) {
        List<ShortfallParts> parts = new ArrayList<>();
        for (RepairFinding finding : findings) {
            if (finding.lines() > 0 && quoted[finding.repairType()] > 0) {
                double scale = totals.yearlyHours()[finding.repairType()] / quoted[finding.repairType()] * shopRate;
                parts.add(parts(finding, scale));
            }
        }
        return parts;
    }

    private ShortfallParts parts(RepairFinding finding, double scale) {
        int type = finding.repairType();
        Slowing slowing = slowings.get(type);
        double slowerHours = slowing == null ? 0 : actual[type] * (1 - 1 / slowing.change());
        long quotes = money(book[type] - quoted[type], scale);
        long slower = money(slowerHours, scale);
        long back = money(rework[type], scale);
        return new ShortfallParts(type, finding.annualShortfall() - quotes - slower - back, quotes, slower, back);
    }

    private static long money(double hours, double scale) {
        return (long) StrictMath.rint(hours * scale);
    }
}
