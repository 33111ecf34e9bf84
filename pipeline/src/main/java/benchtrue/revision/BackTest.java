package benchtrue.revision;

import benchtrue.settings.Policy;
import benchtrue.statistics.Moments;
import benchtrue.statistics.StudentT;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * How proposals like tonight's would have done on the shop's own past (methods, section 9): rolling origin, one cut-off a
 * quarter, each with what was known before it.
 *
 * @param cutOffs oldest first; empty where the history is too short
 * @param rule by whose own measure methods are compared
 * @param used the method that the proposal stands on: {@link PastMethod#PROPOSAL}, or the rival it fell back to
 * @param sentence what came of it, for the owner
 */
public record BackTest(List<CutOff> cutOffs, Policy.Rule rule, PastMethod used, String sentence) {
    /** Fewer past jobs than this decide nothing. */
    static final int ENOUGH_JOBS = 30;

    private static final double SURE = 2;
    private static final double ALMOST = 0.975;

    public BackTest {
        cutOffs = List.copyOf(cutOffs);
    }

    /** Returns the test of a shop whose history is too short for one. */
    static BackTest none() {
        return new BackTest(
                List.of(),
                Policy.DEFAULTS.rule(),
                PastMethod.PROPOSAL,
                "Proposals could not be tried on past jobs yet: that takes a year of finished jobs and some quoted after it.");
    }

    /** Returns a method's scores added up over all cut-offs. */
    public PastScore total(PastMethod method) {
        return total(cutOffs, cutOff -> cutOff.scores().get(method));
    }

    /** Returns the same with the method's hours within the guard rails and rounded. */
    public PastScore railedTotal(PastMethod method) {
        return total(cutOffs, cutOff -> cutOff.railed().get(method));
    }

    /** Returns the methods that were tried: a curve over sizes only where the size of a quote ever mattered. */
    public List<PastMethod> methods() {
        return List.of(PastMethod.values()).stream()
                .filter(method -> !cutOffs.isEmpty())
                .filter(method ->
                        method != PastMethod.SIZE_CURVE || !total(method).equals(total(PastMethod.PROPOSAL)))
                .toList();
    }

    /** Returns whether there are enough past jobs to say which method does better. */
    public boolean tells() {
        return total(PastMethod.PROPOSAL).judgedBy(rule) >= ENOUGH_JOBS;
    }

    /** Returns the method that did best by the rule's own measure: the proposal, or a rival that beats it on enough jobs. */
    public PastMethod best() {
        PastScore proposal = total(PastMethod.PROPOSAL);
        return List.of(PastMethod.values()).stream()
                .filter(PastMethod::rival)
                .filter(method -> tells() && nearer(rule, total(method), proposal))
                .min(Comparator.comparingDouble(method -> total(method).missed(rule)))
                .orElse(PastMethod.PROPOSAL);
    }

    /** Returns whether no rival missed by less than the proposal by the rule's own measure. */
    public boolean proposalIsNearest() {
        double proposal = total(PastMethod.PROPOSAL).missed(rule);
        return List.of(PastMethod.values()).stream()
                .filter(PastMethod::rival)
                .allMatch(rival -> total(rival).missed(rule) >= proposal);
    }

    /** The larger of mean and share is beaten by what does no worse by the measure of either. */
    private static boolean nearer(Policy.Rule rule, PastScore rival, PastScore proposal) {
        boolean inAll = rule != Policy.Rule.LARGER
                || rival.missed(Policy.Rule.BREAK_EVEN) <= proposal.missed(Policy.Rule.BREAK_EVEN);
        return inAll && rival.missed(rule) < proposal.missed(rule);
    }

    /**
     * Returns what a proposal should stand on after some cut-offs: a rival that serves the shop's rule and, within the guard
     * rails, missed by less than the proposal beyond chance (Student's t of the differences by cut-off), else the proposal.
     */
    static PastMethod standsOn(List<CutOff> cutOffs, Policy.Rule rule) {
        PastScore proposal = railed(cutOffs, PastMethod.PROPOSAL);
        return List.of(PastMethod.values()).stream()
                .filter(PastMethod::standsIn)
                .filter(method -> proposal.judgedBy(rule) >= ENOUGH_JOBS)
                .filter(method -> nearer(rule, railed(cutOffs, method), proposal))
                .filter(method -> rule == Policy.Rule.COVERAGE || paysForItself(railed(cutOffs, method), proposal))
                .filter(method -> surelyNearer(cutOffs, method, rule))
                .min(Comparator.comparingDouble(
                        method -> railed(cutOffs, method).missed(rule)))
                .orElse(PastMethod.PROPOSAL);
    }

    private static PastScore railed(List<CutOff> cutOffs, PastMethod method) {
        return total(cutOffs, cutOff -> cutOff.railed().get(method));
    }

    /** Whether a rival's hours were enough in all, or no further from it than the proposal's. */
    private static boolean paysForItself(PastScore rival, PastScore proposal) {
        return rival.hoursBias() >= 0 || rival.hoursBias() >= proposal.hoursBias();
    }

    private static boolean surelyNearer(List<CutOff> cutOffs, PastMethod method, Policy.Rule rule) {
        double[] less = cutOffs.stream()
                .map(CutOff::railed)
                .mapToDouble(scores -> scores.get(PastMethod.PROPOSAL).missed(rule)
                        - scores.get(method).missed(rule))
                .toArray();
        if (less.length < 2) {
            return false;
        }
        Moments moments = Moments.of(less);
        double error = moments.standardDeviation() / StrictMath.sqrt(less.length);
        return moments.mean() > StrictMath.max(SURE, StudentT.quantile(ALMOST, less.length - 1)) * error;
    }

    private static PastScore total(List<CutOff> cutOffs, Function<CutOff, PastScore> score) {
        return cutOffs.stream().map(score).reduce(PastScore.NONE, PastScore::plus);
    }
}
