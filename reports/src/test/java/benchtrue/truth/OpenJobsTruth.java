package benchtrue.truth;

import benchtrue.findings.FindVerdicts;
import benchtrue.findings.UsualJob;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.TypeTruth;
import benchtrue.settings.Settings;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** What leaving open jobs out does to the usual job of repair types that have some, and what counting them as censored mends. */
final class OpenJobsTruth {
    /** What is counted in a shop. */
    private enum Count {
        SHOPS,
        TYPES,
        FINISHED,
        OPEN_USED,
        OPEN_LEFT_OUT,
        /** ln(usual job / true usual job) of types with open jobs that count, each type weighted by those. */
        BIAS_WITHOUT,
        BIAS_WITH
    }

    private final double[] sums;
    private final String seeds;

    private OpenJobsTruth(double[] sums, String seeds) {
        this.sums = sums;
        this.seeds = seeds;
    }

    /** Reviews one shop a seed. */
    static OpenJobsTruth of(SeedTable table, Settings settings, UnaryOperator<SampleOptions> change) {
        return new OpenJobsTruth(table.sums(seed -> review(KnownShop.of(seed, change), settings)), table.range());
    }

    private static double[] review(KnownShop shop, Settings settings) {
        double[] counts = new double[Count.values().length];
        add(counts, Count.SHOPS, 1);
        for (UsualJob usual : new FindVerdicts().find(shop.costs(), settings).usualJobs()) {
            add(counts, Count.OPEN_LEFT_OUT, usual.openLeftOut());
            double truth = truth(shop, usual);
            if (usual.openUsed() > 0 && !Double.isNaN(truth)) {
                add(counts, Count.TYPES, 1);
                add(counts, Count.FINISHED, usual.jobs());
                add(counts, Count.OPEN_USED, usual.openUsed());
                add(counts, Count.BIAS_WITHOUT, usual.openUsed() * StrictMath.log(usual.withoutOpen() / truth));
                add(counts, Count.BIAS_WITH, usual.openUsed() * StrictMath.log(usual.typical() / truth));
            }
        }
        return counts;
    }

    private static double truth(KnownShop shop, UsualJob usual) {
        String key = shop.ledger().repairTypes().name(usual.repairType());
        return shop.truth().types().stream()
                .filter(type -> type.repairType().equals(key))
                .mapToDouble(TypeTruth::typicalFactor)
                .findFirst()
                .orElse(Double.NaN);
    }

    private static void add(double[] counts, Count count, double amount) {
        counts[count.ordinal()] += amount;
    }

    private double of(Count count) {
        return sums[count.ordinal()];
    }

    /** Returns the mean error of ln(usual job) with open jobs left out. */
    double without() {
        return of(Count.BIAS_WITHOUT) / of(Count.OPEN_USED);
    }

    /** Returns the same with open jobs counted as censored. */
    double with() {
        return of(Count.BIAS_WITH) / of(Count.OPEN_USED);
    }

    /** Prints the table. */
    OpenJobsTruth print(String name) {
        System.out.printf(
                Locale.ROOT,
                "%s: %.0f shops, %s; %.1f open jobs a shop counted in %.1f types with %.1f finished jobs each, %.1f left out%n"
                        + "  mean error of ln(usual job) of those types: open jobs left out %+.4f, counted as censored"
                        + " %+.4f: takes %.2f of it away%n",
                name,
                of(Count.SHOPS),
                seeds,
                of(Count.OPEN_USED) / of(Count.SHOPS),
                of(Count.TYPES) / of(Count.SHOPS),
                of(Count.FINISHED) / of(Count.TYPES),
                of(Count.OPEN_LEFT_OUT) / of(Count.SHOPS),
                without(),
                with(),
                1 - with() / without());
        return this;
    }
}
