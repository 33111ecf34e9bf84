package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.hours.SplitModel;
import benchtrue.settings.Settings;
import benchtrue.statistics.Bootstrap;
import benchtrue.statistics.Interval;
import benchtrue.statistics.Jackknife;
import benchtrue.statistics.Resampling;
import benchtrue.statistics.Seed;
import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Weighs how surely each load factor is known (methods, section 5). Tickets are the unit that is left out and drawn again,
 * since the lines of a ticket share technician, instrument and clock; the split of unlabelled hours is redone each time.
 *
 * <p>Interval and p for under-quoting: Student t on ln R with the delete-a-group jackknife (Tukey 1958; Efron 1982), degrees
 * of freedom = groups with the type - 1. Beside its own tickets, a type's hours hang on what the split leans on, which widens
 * it, twice as far where little else is known, since what one type is pulled by is then no chance among many (Armstrong,
 * Kolesar 2018: a bound on bias). p for over-quoting: the larger of that and the BCa bootstrap's (Efron 1987), since hours are
 * skewed to the right and each alone is too eager there.
 */
final class WeighLoads {
    static final double LEVEL = 0.90;
    /** How many of its scatters from what it leans on a repair type may lie that tickets say little about. */
    private static final double FAR = 2;

    /** What jobs that all took the same may still differ by, as ln: hours are written to a hundredth. */
    private static final double LEAST_SCATTER = 0.005;
    /** Standard error of ln below which jobs are all alike but for how a computer rounds. */
    private static final double ALIKE = 1e-9;

    private static final int MOST_GROUPS = 1_200;
    private static final int FEW_GROUPS = 200;
    private static final int MOST_REFITTED = 3_000;

    private final JobLines jobs;
    private final SplitModel model;
    private final Settings settings;
    private final UnreadShares unread;

    /**
     * Takes a shop's jobs.
     *
     * @param unread what was not read; evidence must hold whatever it was
     */
    WeighLoads(JobLines jobs, Settings settings, UnreadShares unread) {
        this.jobs = jobs;
        this.unread = unread;
        this.model = jobs.model();
        this.settings = settings;
    }

    /**
     * Returns the evidence on each repair type by code.
     *
     * @param enough by repair type, whether it has jobs enough to be judged
     * @param today what brings loads to today's pace
     */
    LoadEvidence[] weigh(boolean[] enough, ShopPace.Corrections today) {
        TicketGroups groups = new TicketGroups(jobs, MOST_GROUPS, ticket -> true);
        UnaryOperator<double[]> loads = model.firstOrder(groups.ofTickets(), groups.all());
        Jackknife[] jackknives = jackknives(groups, isLarge() ? loads : refitted(groups));
        long seed = Seed.of(settings.seed(), "load-factor", "");
        double[][] replicates = new Resampling(seed, settings.resamples(), groups.size())
                .replicates(drawn -> loads.apply(groups.weights(drawn)));
        LoadEvidence[] evidence = new LoadEvidence[jackknives.length];
        for (int type = 0; type < evidence.length; type++) {
            Jackknife paced = paced(jackknives[type], today, type);
            evidence[type] = enough[type] && paced.standardError() >= 0
                    ? evidence(type, paced, times(replicates[type], today.factor()[type]))
                    : LoadEvidence.NONE;
        }
        return evidence;
    }

    private static double[] times(double[] values, double factor) {
        return factor == 1
                ? values
                : Arrays.stream(values).map(value -> value * factor).toArray();
    }

    /**
     * Returns the jackknife of ln R of each repair type by code.
     *
     * @param counts which tickets count
     */
    Jackknife[] jackknives(IntPredicate counts) {
        TicketGroups groups = new TicketGroups(jobs, MOST_GROUPS, counts);
        return jackknives(groups, leavingOut(groups));
    }

    /** Returns the same from fewer groups and to first order: for figures that stand beside a verdict. */
    Jackknife[] roughly(IntPredicate counts) {
        TicketGroups groups = new TicketGroups(jobs, FEW_GROUPS, counts);
        return jackknives(groups, model.firstOrder(groups.ofTickets(), groups.all()));
    }

    /** Returns the load factors themselves, by code of the repair type. */
    double[] loads(IntPredicate counts) {
        TicketGroups groups = new TicketGroups(jobs, MOST_GROUPS, counts);
        return leavingOut(groups).apply(groups.whole());
    }

    /** To first order a group left out moves the split a little less than it does, which shows where tickets are few. */
    private UnaryOperator<double[]> leavingOut(TicketGroups groups) {
        return isLarge() ? model.firstOrder(groups.ofTickets(), groups.all()) : refitted(groups);
    }

    private boolean isLarge() {
        return model.tickets() > MOST_REFITTED;
    }

    private UnaryOperator<double[]> refitted(TicketGroups groups) {
        return weights -> model.loads(groups.toTickets(weights));
    }

    private Jackknife[] jackknives(TicketGroups groups, UnaryOperator<double[]> loads) {
        double[] whole = loads.apply(groups.whole());
        double[][] without = IntStream.range(0, groups.size())
                .parallel()
                .mapToObj(group -> loads.apply(groups.without(group)))
                .toArray(double[][]::new);
        double[] leaning = model.leaningVariance();
        Jackknife[] jackknives = new Jackknife[whole.length];
        Arrays.setAll(jackknives, type -> {
            Jackknife sampled = Jackknife.ofLog(whole[type], groups.holding(type, without));
            return sampled.widened(doubt(leaning[type], sampled.standardError()));
        });
        return jackknives;
    }

    /**
     * Returns the variance that leaning brings: its own where it is small beside what tickets say, up to {@link #FAR} squared
     * times that where it is as large.
     */
    private static double doubt(double leaning, double standardError) {
        double part = StrictMath.min(1, leaning / (standardError * standardError));
        return leaning == 0 ? 0 : leaning * (1 + (FAR * FAR - 1) * part);
    }

    /** Returns the 90 % interval of a load factor from the jackknife of its logarithm. */
    static Interval range(Jackknife jackknife) {
        Interval onLog = jackknife.interval(LEVEL);
        return new Interval(StrictMath.exp(onLog.low()), StrictMath.exp(onLog.high()));
    }

    /**
     * Returns the evidence of measured jobs alone, where many others repeat their quotes; too few of them say nothing.
     *
     * @param measured from the tickets without a copy
     * @param ofAll evidence from all tickets
     */
    LoadEvidence measured(Jackknife measured, LoadEvidence ofAll, ShopPace.Corrections today, int type) {
        boolean enough = ofAll.known() && measured.groups() >= FindVerdicts.ENOUGH_TICKETS;
        return enough ? evidence(type, paced(measured, today, type), new double[0]) : LoadEvidence.NONE;
    }

    private static Jackknife paced(Jackknife jackknife, ShopPace.Corrections today, int type) {
        return jackknife.shifted(StrictMath.log(today.factor()[type])).widened(today.logVariance()[type]);
    }

    /** Returns the evidence of the newest jobs alone; over-quoting must hold for all jobs as well. */
    LoadEvidence since(Jackknife newest, LoadEvidence ofAll, int type) {
        double rounding = StrictMath.log(unread.reach().middle()[type]);
        LoadEvidence since = evidence(type, newest.shifted(rounding), new double[0]);
        return new LoadEvidence(
                ofAll.range(),
                since.range(),
                since.chanceOver(),
                since.underP(),
                StrictMath.max(since.overP(), ofAll.overP()));
    }

    /**
     * Returns the evidence that a jackknife gives.
     *
     * @param replicates of the load factor, for its skew; none where it is told from a part of the tickets
     */
    private LoadEvidence evidence(int type, Jackknife sampled, double[] replicates) {
        boolean scatters = sampled.standardError() > ALIKE;
        Jackknife jackknife = scatters ? sampled : sampled.widened(LEAST_SCATTER * LEAST_SCATTER);
        double lower = unread.lower(type);
        double floor = (1 - settings.tolerance()) / unread.higher(type);
        double byJackknife = jackknife.chanceAtLeast(StrictMath.log(floor));
        // Jobs that are drawn again and are all alike have no shape that a bootstrap could read.
        boolean skewed = scatters && replicates.length > 0;
        Interval range = range(jackknife);
        Interval whateverWasUnread = new Interval(range.low() * lower, range.high() * unread.higher(type));
        return new LoadEvidence(
                whateverWasUnread,
                whateverWasUnread,
                1 - jackknife.chanceAtMost(0),
                jackknife.chanceAtMost(StrictMath.log((1 + settings.tolerance()) / lower)),
                skewed ? StrictMath.max(byJackknife, skewed(jackknife, replicates, floor)) : byJackknife);
    }

    private static double skewed(Jackknife jackknife, double[] replicates, double floor) {
        double load = StrictMath.exp(jackknife.estimate());
        return Bootstrap.of(load, replicates, jackknife.acceleration()).bcaChanceAtLeast(floor);
    }
}
