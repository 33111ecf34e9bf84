package benchtrue.findings;

import benchtrue.shop.Absent;
import java.util.List;
import java.util.Set;
import java.util.function.ToLongFunction;

/**
 * What the review found.
 *
 * @param repairs one finding a repair type of today's or an earlier book, by code
 * @param foundWork repair types found on the bench while doing others, the most money first
 * @param unquotedWork work that tickets never quoted, the most money first
 * @param copiedQuotes repair types with totals that equal the quote, by code
 * @param usualJobs what one job of each repair type usually takes, by code
 * @param benchCurves how many jobs are still on the bench after so many hours, of repair types with open jobs that count,
 *     those that these change most first
 * @param drift which repairs get slower
 * @param drivers traits and what they add to a job, the most hours first; only where told apart
 * @param shortfalls where the money of each repair type with lines is lost, by code
 * @param people figures about people; empty unless the settings ask for them
 * @param downWeighted jobs so far from what was expected that they count less in the usual jobs
 * @param sizes repairs whose hours surely run with the size of the quote, by code
 * @param pace whether the whole shop gets slower or faster
 * @param copiedLines rows of lines whose hours are more likely copied from the quote than measured
 * @param surelyOwn the finished jobs that tell how long the work took
 * @param causes what sets jobs of a repair apart from its others, or that nothing does where it runs over or under, by code
 * @param writers what each writer's quotes came to, by family; empty unless the settings ask for it
 * @param leftOut what proposals leave out for causes, by code
 * @param reach how far loads may lie from what is logged, by repair-type code
 * @param logged how the shop's bench time is written down
 * @param restorations large visits judged as wholes: all, then by kind, stage and first sign
 */
public record Findings(
        List<RepairFinding> repairs,
        List<FoundWork> foundWork,
        List<UnquotedTotal> unquotedWork,
        List<CopiedQuotes> copiedQuotes,
        List<UsualJob> usualJobs,
        List<BenchCurve> benchCurves,
        Drift drift,
        List<Driver> drivers,
        List<ShortfallParts> shortfalls,
        List<PersonFactor> people,
        int downWeighted,
        List<QuoteSizes> sizes,
        ShopPace pace,
        Set<Integer> copiedLines,
        SurelyOwnJobs surelyOwn,
        List<Cause> causes,
        List<WriterQuotes> writers,
        List<LeftOut> leftOut,
        LoadReach reach,
        RoundingForm.Logged logged,
        List<Restorations> restorations) {
    public Findings {
        repairs = List.copyOf(repairs);
        foundWork = List.copyOf(foundWork);
        unquotedWork = List.copyOf(unquotedWork);
        copiedQuotes = List.copyOf(copiedQuotes);
        usualJobs = List.copyOf(usualJobs);
        benchCurves = List.copyOf(benchCurves);
        drivers = List.copyOf(drivers);
        shortfalls = List.copyOf(shortfalls);
        people = List.copyOf(people);
        sizes = List.copyOf(sizes);
        copiedLines = Set.copyOf(copiedLines);
        causes = List.copyOf(causes);
        writers = List.copyOf(writers);
        leftOut = List.copyOf(leftOut);
        restorations = List.copyOf(restorations);
    }

    /** Returns the money a year that the under-quoted repairs lose together at least: the sum of their lower ends. */
    public long lostAtLeast() {
        return lost(RepairFinding::annualShortfallLower);
    }

    /** Returns the money a year that they lose together at most. */
    public long lostAtMost() {
        return lost(RepairFinding::annualShortfallUpper);
    }

    /** Returns the load factor of a repair that can be relied on: without jobs that repeat their quotes, where those are many. */
    public double measuredLoad(RepairFinding finding) {
        return copiedQuotes.stream()
                .filter(copies -> copies.repairType() == finding.repairType() && !Double.isNaN(copies.loadWithout()))
                .mapToDouble(copies -> copies.load(finding.loadFactor()))
                .findAny()
                .orElse(finding.loadFactor());
    }

    private long lost(ToLongFunction<RepairFinding> end) {
        return repairs.stream()
                .filter(finding -> finding.verdict() == Verdict.UNDER_QUOTED)
                .mapToLong(end)
                .filter(Absent::has)
                .reduce(0, Math::addExact);
    }
}
