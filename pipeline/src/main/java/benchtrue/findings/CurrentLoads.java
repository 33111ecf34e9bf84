package benchtrue.findings;

import benchtrue.findings.Slowing.Standing;
import benchtrue.hours.JobLines;
import benchtrue.statistics.Jackknife;
import java.util.List;

/**
 * Judges a repair type that surely got slower by the jobs opened since (methods, section 6): evidence from those alone, the
 * load factor leaning on the one before.
 */
final class CurrentLoads {
    /** Variance of ln(change) that a repair type is expected to have when it changes: about a fifth. */
    private static final double USUAL_CHANGE = 0.04;

    private final JobLines jobs;
    private final WeighLoads loads;
    private final boolean[] copied;

    /**
     * Takes a shop's jobs.
     *
     * @param copied by ticket, whether its hours repeat a quote; such tickets say nothing
     */
    CurrentLoads(JobLines jobs, WeighLoads loads, boolean[] copied) {
        this.jobs = jobs;
        this.loads = loads;
        this.copied = copied;
    }

    /** Returns the slowings with their load factor since; the evidence on each confirmed one is replaced. */
    List<Slowing> replace(List<Slowing> slowings, LoadEvidence[] evidence) {
        return slowings.parallelStream()
                .map(slowing -> replace(slowing, evidence))
                .toList();
    }

    /** A repair type has one slowing at most, so that each replaces its own evidence. */
    private Slowing replace(Slowing slowing, LoadEvidence[] evidence) {
        int type = slowing.repairType();
        boolean judged = slowing.standing() == Standing.CONFIRMED && evidence[type].known();
        Jackknife since = judged
                ? loads.jackknives(ticket -> !copied[ticket] && opened(ticket) >= slowing.startDay())[type]
                : null;
        if (since == null || since.groups() < FindVerdicts.ENOUGH_TICKETS || !(since.standardError() > 0)) {
            return slowing;
        }
        double before = loads.loads(ticket -> !copied[ticket] && opened(ticket) < slowing.startDay())[type];
        evidence[type] = loads.since(since, evidence[type], type);
        return slowing.withLoadSince(lean(since, before));
    }

    private int opened(int ticket) {
        return jobs.ledger().tickets().opened(ticket);
    }

    private static double lean(Jackknife since, double before) {
        double variance = since.standardError() * since.standardError();
        double own = USUAL_CHANGE / (USUAL_CHANGE + variance);
        double log =
                Double.isNaN(before) ? since.estimate() : own * since.estimate() + (1 - own) * StrictMath.log(before);
        return StrictMath.exp(log);
    }
}
