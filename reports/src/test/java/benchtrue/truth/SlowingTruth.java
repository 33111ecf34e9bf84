package benchtrue.truth;

import benchtrue.findings.Drift;
import benchtrue.findings.DriftChart;
import benchtrue.findings.FindVerdicts;
import benchtrue.findings.Slowing;
import benchtrue.sample.SampleOptions;
import benchtrue.settings.Settings;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * How soon the charts of whole shops show the one repair type that gets slower, and how often they signal where nothing
 * changed: a false alarm is each time that the chart of another type crosses its limit.
 */
final class SlowingTruth {
    /** What is counted in a shop. */
    private enum Count {
        SHOPS,
        YEARS,
        /** Jobs with hours of their own of the slower type before its change, and since. */
        JOBS_BEFORE,
        JOBS_SINCE,
        /** Shops whose chart signals after the change, with the jobs and days that took. */
        SIGNALLED,
        DELAY_JOBS,
        DELAY_DAYS,
        /** Shops that say on the last day that the type got slower, and those that are sure of it. */
        STANDING,
        CONFIRMED,
        CHANGE,
        ALARMS_BEFORE,
        FALSE_ALARMS,
        FALSE_STANDING,
        FALSE_CONFIRMED,
        FALSE_ALARMS_STATED
    }

    private final double[] sums;
    private final String seeds;

    private SlowingTruth(double[] sums, String seeds) {
        this.sums = sums;
        this.seeds = seeds;
    }

    /** Watches one shop a seed. */
    static SlowingTruth of(SeedTable table, Settings settings, UnaryOperator<SampleOptions> change) {
        return new SlowingTruth(table.sums(seed -> watch(KnownShop.of(seed, change), settings)), table.range());
    }

    private static double[] watch(KnownShop shop, Settings settings) {
        double[] counts = new double[Count.values().length];
        Drift drift = new FindVerdicts().find(shop.costs(), settings).drift();
        int slow = shop.ledger().repairTypes().code(shop.truth().slowType());
        add(counts, Count.SHOPS, 1);
        add(counts, Count.YEARS, SampleOptions.standard(null).years());
        add(counts, Count.FALSE_ALARMS_STATED, drift.falseAlarmsAYear());
        for (DriftChart chart : drift.charts()) {
            if (chart.repairType() == slow) {
                addSlower(counts, shop, chart);
            } else {
                add(counts, Count.FALSE_ALARMS, crossings(chart, 0, chart.size()));
            }
        }
        for (Slowing slowing : drift.slowings()) {
            boolean right = slowing.repairType() == slow;
            boolean confirmed = slowing.standing() == Slowing.Standing.CONFIRMED;
            add(counts, right ? Count.STANDING : Count.FALSE_STANDING, 1);
            add(counts, right ? Count.CONFIRMED : Count.FALSE_CONFIRMED, confirmed ? 1 : 0);
            add(counts, Count.CHANGE, right ? slowing.change() : 0);
        }
        return counts;
    }

    private static void addSlower(double[] counts, KnownShop shop, DriftChart chart) {
        int from = (int) shop.truth().slowFrom().toEpochDay();
        int before = 0;
        while (before < chart.size() && opened(shop, chart, before) < from) {
            before++;
        }
        add(counts, Count.JOBS_BEFORE, before);
        add(counts, Count.JOBS_SINCE, chart.size() - before);
        add(counts, Count.ALARMS_BEFORE, crossings(chart, 0, before));
        for (int place = before; place < chart.size(); place++) {
            if (chart.level(place) > chart.limit(place)) {
                add(counts, Count.SIGNALLED, 1);
                add(counts, Count.DELAY_JOBS, place - before + 1);
                add(counts, Count.DELAY_DAYS, opened(shop, chart, place) - from);
                return;
            }
        }
    }

    private static int opened(KnownShop shop, DriftChart chart, int place) {
        return shop.ledger().tickets().opened(shop.ledger().lines().ticket(chart.line(place)));
    }

    private static int crossings(DriftChart chart, int from, int to) {
        int crossings = 0;
        boolean above = false;
        for (int place = from; place < to; place++) {
            boolean now = chart.level(place) > chart.limit(place);
            crossings += now && !above ? 1 : 0;
            above = now;
        }
        return crossings;
    }

    private static void add(double[] counts, Count count, double amount) {
        counts[count.ordinal()] += amount;
    }

    private double of(Count count) {
        return sums[count.ordinal()];
    }

    private double share(Count part, Count whole) {
        return of(part) / of(whole);
    }

    /** Returns in how many of the shops the chart signals. */
    double signalled() {
        return share(Count.SIGNALLED, Count.SHOPS);
    }

    /** Returns false alarms of all charts together a shop and year. */
    double falseAlarmsAYear() {
        return share(Count.FALSE_ALARMS, Count.YEARS);
    }

    /** Prints the table. */
    SlowingTruth print(String name) {
        System.out.printf(
                Locale.ROOT,
                "%s: %.0f shops, %s; the slower type has %.1f jobs of its own hours before, %.1f since%n"
                        + "  signalled %.3f of shops after %.1f such jobs, %.0f days on average; on the last day said %.3f,"
                        + " sure %.3f, as a change of %.2f%n"
                        + "  false alarms a shop-year, all other types: %.3f (stated: fewer than %.3f), before the change"
                        + " %.3f a shop; wrongly said on the last day %.3f a shop, wrongly sure %.3f%n",
                name,
                of(Count.SHOPS),
                seeds,
                share(Count.JOBS_BEFORE, Count.SHOPS),
                share(Count.JOBS_SINCE, Count.SHOPS),
                signalled(),
                share(Count.DELAY_JOBS, Count.SIGNALLED),
                share(Count.DELAY_DAYS, Count.SIGNALLED),
                share(Count.STANDING, Count.SHOPS),
                share(Count.CONFIRMED, Count.SHOPS),
                share(Count.CHANGE, Count.STANDING),
                falseAlarmsAYear(),
                share(Count.FALSE_ALARMS_STATED, Count.SHOPS),
                share(Count.ALARMS_BEFORE, Count.SHOPS),
                share(Count.FALSE_STANDING, Count.SHOPS),
                share(Count.FALSE_CONFIRMED, Count.SHOPS));
        return this;
    }
}
