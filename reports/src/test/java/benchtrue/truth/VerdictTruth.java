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

/** What verdicts on invented shops are worth: how often ranges hold the true load, and how many flags are false. */
final class VerdictTruth {
    private static final int ENOUGH_LINES = 20;
    private static final double SAME = 1e-9;

    private final Settings settings;
    private int shops;
    private int ranges;
    private int below;
    private int above;
    private double falseUnder;
    private double falseOver;
    private int trulyUnder;
    private int foundUnder;

    private VerdictTruth(Settings settings) {
        this.settings = settings;
    }

    /** Judges one shop a seed, every repair type of which has a load of its own and none gets slower. */
    static VerdictTruth of(long from, int shops, double wholeTickets, Loads loads, Settings settings) {
        VerdictTruth truth = new VerdictTruth(settings);
        for (long seed = from; seed < from + shops; seed++) {
            truth.add(KnownShop.of(seed, options -> plain(options, wholeTickets, loads)));
        }
        return truth;
    }

    private static SampleOptions plain(SampleOptions options, double wholeTickets, Loads loads) {
        return options.with(Tidiness.TIDY).with(loads).with(Slowing.NONE).withWholeTicketShare(wholeTickets);
    }

    private void add(KnownShop shop) {
        int under = 0;
        int over = 0;
        int flags = 0;
        for (RepairFinding repair :
                new FindVerdicts().find(shop.costs(), settings).repairs()) {
            double load = shop.truth()
                    .type(shop.ledger().repairTypes().name(repair.repairType()))
                    .trueLoad();
            boolean flaggedUnder = repair.verdict() == Verdict.UNDER_QUOTED;
            boolean flaggedOver = repair.verdict() == Verdict.OVER_QUOTED;
            flags += flaggedUnder || flaggedOver ? 1 : 0;
            under += flaggedUnder && load <= 1 + settings.tolerance() + SAME ? 1 : 0;
            over += flaggedOver && load >= 1 - settings.tolerance() - SAME ? 1 : 0;
            if (repair.lines() >= ENOUGH_LINES && !Double.isNaN(repair.lower())) {
                addRange(repair, load, flaggedUnder);
            }
        }
        shops++;
        falseUnder += under / StrictMath.max(1.0, flags);
        falseOver += over / StrictMath.max(1.0, flags);
    }

    private void addRange(RepairFinding repair, double load, boolean flaggedUnder) {
        ranges++;
        below += load < repair.lower() ? 1 : 0;
        above += load > repair.upper() ? 1 : 0;
        boolean truly = load > 1 + settings.tolerance() + SAME;
        trulyUnder += truly ? 1 : 0;
        foundUnder += truly && flaggedUnder ? 1 : 0;
    }

    /** Returns how many of the ranges hold the true load. */
    double coverage() {
        return 1 - (below + above) / (double) ranges;
    }

    /** Returns the mean over shops of false flags over flags. */
    double falseDiscoveries() {
        return (falseUnder + falseOver) / shops;
    }

    /** Returns how many of the truly under-quoted repair types were called so. */
    double power() {
        return foundUnder / (double) trulyUnder;
    }

    /** Prints a row of the table. */
    VerdictTruth print(String name) {
        System.out.printf(
                Locale.ROOT,
                "%-42s %5d shops  %6d ranges  coverage %.3f (true load below %.3f, above %.3f)  false flags %.3f"
                        + " (under %.3f, over %.3f)  power %.3f (%d)%n",
                name,
                shops,
                ranges,
                coverage(),
                below / (double) ranges,
                above / (double) ranges,
                falseDiscoveries(),
                falseUnder / shops,
                falseOver / shops,
                power(),
                trulyUnder);
        return this;
    }
}
