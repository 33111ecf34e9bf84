package benchtrue.truth;

import benchtrue.findings.FindVerdicts;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.sample.Loads;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Slowing;
import benchtrue.sample.Tidiness;
import benchtrue.settings.Settings;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * What verdicts on invented shops are worth: how often ranges hold the true load, how many flags are false, and how many of
 * the truly under-quoted repair types are found. No repair type of these shops gets slower.
 */
final class VerdictTruth {
    private static final int ENOUGH_LINES = 20;
    private static final int LEAST_ABOUT_THIRTY = 25;
    private static final int MOST_ABOUT_THIRTY = 35;
    private static final double SAME = 1e-9;

    /** What is counted in a shop. */
    private enum Count {
        RANGES,
        LOAD_BELOW,
        LOAD_ABOVE,
        FLAGS_UNDER,
        FLAGS_OVER,
        FALSE_UNDER,
        FALSE_OVER,
        /** Shares of the shop's flags. */
        PROPORTION_UNDER,
        PROPORTION_OVER,
        TRULY_UNDER,
        FOUND_UNDER,
        TRULY_UNDER_ABOUT_THIRTY,
        FOUND_UNDER_ABOUT_THIRTY,
        SHOPS
    }

    private final double[] sums;
    private final String seeds;

    private VerdictTruth(double[] sums, String seeds) {
        this.sums = sums;
        this.seeds = seeds;
    }

    /** Judges one shop a seed. */
    static VerdictTruth of(SeedTable table, Settings settings, UnaryOperator<SampleOptions> shop) {
        return new VerdictTruth(table.sums(seed -> judge(KnownShop.of(seed, shop), settings)), table.range());
    }

    static UnaryOperator<SampleOptions> shop(double wholeTickets, Loads loads) {
        return options ->
                options.with(Tidiness.TIDY).with(loads).with(Slowing.NONE).withWholeTicketShare(wholeTickets);
    }

    private static double[] judge(KnownShop shop, Settings settings) {
        double[] counts = new double[Count.values().length];
        for (RepairFinding repair :
                new FindVerdicts().find(shop.costs(), settings).repairs()) {
            double load = shop.truth()
                    .type(shop.ledger().repairTypes().name(repair.repairType()))
                    .trueLoad();
            boolean under = repair.verdict() == Verdict.UNDER_QUOTED;
            boolean over = repair.verdict() == Verdict.OVER_QUOTED;
            add(counts, Count.FLAGS_UNDER, under);
            add(counts, Count.FLAGS_OVER, over);
            add(counts, Count.FALSE_UNDER, under && load <= 1 + settings.tolerance() + SAME);
            add(counts, Count.FALSE_OVER, over && load >= 1 - settings.tolerance() - SAME);
            if (repair.lines() >= ENOUGH_LINES && !Double.isNaN(repair.lower())) {
                addRange(counts, repair, load, load > 1 + settings.tolerance() + SAME);
            }
        }
        double flags = StrictMath.max(1, of(counts, Count.FLAGS_UNDER) + of(counts, Count.FLAGS_OVER));
        counts[Count.PROPORTION_UNDER.ordinal()] = of(counts, Count.FALSE_UNDER) / flags;
        counts[Count.PROPORTION_OVER.ordinal()] = of(counts, Count.FALSE_OVER) / flags;
        add(counts, Count.SHOPS, true);
        return counts;
    }

    private static void addRange(double[] counts, RepairFinding repair, double load, boolean truly) {
        boolean found = truly && repair.verdict() == Verdict.UNDER_QUOTED;
        boolean thirty = repair.lines() >= LEAST_ABOUT_THIRTY && repair.lines() <= MOST_ABOUT_THIRTY;
        add(counts, Count.RANGES, true);
        add(counts, Count.LOAD_BELOW, load < repair.lower());
        add(counts, Count.LOAD_ABOVE, load > repair.upper());
        add(counts, Count.TRULY_UNDER, truly);
        add(counts, Count.FOUND_UNDER, found);
        add(counts, Count.TRULY_UNDER_ABOUT_THIRTY, thirty && truly);
        add(counts, Count.FOUND_UNDER_ABOUT_THIRTY, thirty && found);
    }

    private static void add(double[] counts, Count count, boolean holds) {
        counts[count.ordinal()] += holds ? 1 : 0;
    }

    private static double of(double[] counts, Count count) {
        return counts[count.ordinal()];
    }

    private double share(Count part, Count whole) {
        return of(sums, part) / of(sums, whole);
    }

    /** Returns how many of the ranges hold the true load. */
    double coverage() {
        return 1 - share(Count.LOAD_BELOW, Count.RANGES) - share(Count.LOAD_ABOVE, Count.RANGES);
    }

    /** Returns the mean over shops of false flags over flags. */
    double falseDiscoveries() {
        return share(Count.PROPORTION_UNDER, Count.SHOPS) + share(Count.PROPORTION_OVER, Count.SHOPS);
    }

    /** Returns how many of the truly under-quoted repair types were called so. */
    double power() {
        return share(Count.FOUND_UNDER, Count.TRULY_UNDER);
    }

    /** Returns the same of repair types with about thirty lines. */
    double powerAtThirtyLines() {
        return share(Count.FOUND_UNDER_ABOUT_THIRTY, Count.TRULY_UNDER_ABOUT_THIRTY);
    }

    /** Prints the table. */
    VerdictTruth print(String name) {
        System.out.printf(
                Locale.ROOT,
                "%s: %.0f shops, %s%n"
                        + "  90 %% ranges, 20 lines or more: hold the true load %.4f (load below %.4f, above %.4f) of %.0f%n"
                        + "  false flags over flags, mean of shops: %.4f (under %.4f, over %.4f); flags false: under %.0f"
                        + " of %.0f, over %.0f of %.0f%n"
                        + "  under-quoted types found, 20 lines or more: %.4f of %.0f; 25 to 35 lines: %.4f of %.0f%n",
                name,
                of(sums, Count.SHOPS),
                seeds,
                coverage(),
                share(Count.LOAD_BELOW, Count.RANGES),
                share(Count.LOAD_ABOVE, Count.RANGES),
                of(sums, Count.RANGES),
                falseDiscoveries(),
                share(Count.PROPORTION_UNDER, Count.SHOPS),
                share(Count.PROPORTION_OVER, Count.SHOPS),
                of(sums, Count.FALSE_UNDER),
                of(sums, Count.FLAGS_UNDER),
                of(sums, Count.FALSE_OVER),
                of(sums, Count.FLAGS_OVER),
                power(),
                of(sums, Count.TRULY_UNDER),
                powerAtThirtyLines(),
                of(sums, Count.TRULY_UNDER_ABOUT_THIRTY));
        return this;
    }
}
