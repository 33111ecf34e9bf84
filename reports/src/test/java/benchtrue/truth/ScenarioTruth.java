package benchtrue.truth;

import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.findings.FindVerdicts;
import benchtrue.findings.Findings;
import benchtrue.findings.LoadReach;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Reconcile;
import benchtrue.sample.LineTruth;
import benchtrue.sample.RewrittenLog;
import benchtrue.sample.RewrittenLog.Entry;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Tidiness;
import benchtrue.sample.Truth;
import benchtrue.sample.WriteSample;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** What verdicts and ranges are worth where a shop's log says something else than was worked; summed over shops. */
final class ScenarioTruth {
    private static final int AS_OF = (int) LocalDate.of(2026, 10, 31).toEpochDay();
    private static final int ENOUGH_LINES = 20;

    private int shops;
    private int ranges;
    private int held;
    private double bias;
    private double squares;
    private int flaggedUnder;
    private int falseUnder;
    private int underBelowOne;
    private int falseOver;
    private int trulyUnder;
    private int foundUnder;

    /** What was found of one shop. */
    record Found(Truth truth, CostedLines costs, Findings findings, Settings settings) {}

    /** Writes a tidy shop, its log anew, and reads it back. */
    static Found shop(Path shop, long seed, int tickets, Consumer<List<Entry>> log) throws IOException {
        Truth truth = WriteSample.write(
                SampleOptions.standard(shop).withSeed(seed).withTickets(tickets).with(Tidiness.TIDY));
        RewrittenLog.rewrite(shop, log);
        Settings settings = new ReadSettings().read(shop);
        CostedLines costs = new CostLines()
                .cost(
                        new SplitHours()
                                .split(
                                        new Reconcile()
                                                .reconcile(new ReadExports().read(shop, settings), settings, AS_OF)
                                                .ledger(),
                                        settings),
                        settings);
        return new Found(truth, costs, new FindVerdicts().find(costs, settings), settings);
    }

    /** Counts what was found; the repair that gets slower by itself is left out. */
    void add(Found found) {
        shops++;
        for (RepairFinding finding : found.findings.repairs()) {
            String key = found.costs.jobs().ledger().repairTypes().name(finding.repairType());
            if (finding.lines() < ENOUGH_LINES || Double.isNaN(finding.lower()) || key.equals(found.truth.slowType())) {
                continue;
            }
            double load = found.truth.type(key).trueLoad();
            double off = Math.log(Math.sqrt(finding.lower() * finding.upper()) / load);
            boolean under = finding.verdict() == Verdict.UNDER_QUOTED;
            boolean truly = load > 1 + found.settings.tolerance();
            ranges++;
            held += load >= finding.lower() && load <= finding.upper() ? 1 : 0;
            bias += off;
            squares += off * off;
            flaggedUnder += under ? 1 : 0;
            falseUnder += under && !truly ? 1 : 0;
            underBelowOne += under && load < 1 ? 1 : 0;
            falseOver += finding.verdict() == Verdict.OVER_QUOTED && load >= 1 - found.settings.tolerance() ? 1 : 0;
            trulyUnder += truly ? 1 : 0;
            foundUnder += under && truly ? 1 : 0;
        }
    }

    /**
     * Returns how far the hours that repairs were worked in lie beyond what is reckoned with, as the root of the mean square of ln,
     * over repairs with jobs enough.
     */
    static double beyondReach(Found found) {
        JobLines jobs = found.costs.jobs();
        LoadReach reach = found.findings.reach();
        Map<String, Long> worked = found.truth.lines().stream()
                .filter(LineTruth::judged)
                .collect(
                        Collectors.groupingBy(LineTruth::repairType, Collectors.summingLong(LineTruth::loggedSeconds)));
        return Math.sqrt(found.findings.repairs().stream()
                .filter(finding -> finding.lines() >= ENOUGH_LINES)
                .mapToDouble(finding -> {
                    int type = finding.repairType();
                    double told = reach.middle()[type] * finding.actualSeconds();
                    double truly = worked.get(jobs.ledger().repairTypes().name(type));
                    double nearest = Math.max(told * reach.lower()[type], Math.min(told * reach.higher()[type], truly));
                    return Math.pow(Math.log(nearest / truly), 2);
                })
                .average()
                .orElseThrow());
    }

    /** Returns the share of ranges that hold today's load. */
    double held() {
        return held / (double) ranges;
    }

    int ranges() {
        return ranges;
    }

    /** Returns how many were called under-quoted that take less than is quoted. */
    int underBelowOne() {
        return underBelowOne;
    }

    int falseCalls() {
        return falseUnder + falseOver;
    }

    /** Returns the root of the mean square of what the middles of the ranges are off, as ln. */
    double off() {
        return Math.sqrt(squares / ranges);
    }

    /** Returns how many of the truly under-quoted were called so. */
    double power() {
        return foundUnder / (double) trulyUnder;
    }

    String row(String name) {
        return String.format(
                Locale.ROOT,
                "%-34s %.3f of %d ranges hold, middle off by %+.3f, rms %.3f; under %d, false %d, below 1 %d; false over %d; power %.2f"
                        + " of %d; %d shops%n",
                name,
                held(),
                ranges,
                bias / ranges,
                off(),
                flaggedUnder,
                falseUnder,
                underBelowOne,
                falseOver,
                power(),
                trulyUnder,
                shops);
    }
}
