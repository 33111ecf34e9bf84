package benchtrue.revision;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * How proposals like tonight's would have done on the shop's own past (methods, section 9): rolling origin, one cut-off a
 * quarter, each with what was known before it.
 *
 * @param cutOffs oldest first; empty where the history is too short
 * @param used the method that the proposal stands on: {@link PastMethod#PROPOSAL}, or the rival it fell back to
 * @param sentence what came of it, for the owner
 */
public record BackTest(List<CutOff> cutOffs, PastMethod used, String sentence) {
    /** Fewer past jobs than this decide nothing. */
    static final int ENOUGH_JOBS = 30;

    public BackTest {
        cutOffs = List.copyOf(cutOffs);
    }

    /** Returns the test of a shop whose history is too short for one. */
    static BackTest none() {
        return new BackTest(
                List.of(),
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

    /** Returns whether there are enough past jobs to say which method does better. */
    public boolean tells() {
        return total(PastMethod.PROPOSAL).jobs() >= ENOUGH_JOBS;
    }

    /** Returns the method with the least loss over all cut-offs: the proposal, or a rival that beats it on enough jobs. */
    public PastMethod best() {
        return best(cutOffs);
    }

    /** Returns the method with the least loss over some cut-offs: a rival only where it beats the proposal on enough jobs. */
    static PastMethod best(List<CutOff> cutOffs) {
        Function<PastMethod, PastScore> score =
                method -> total(cutOffs, cutOff -> cutOff.scores().get(method));
        PastScore proposal = score.apply(PastMethod.PROPOSAL);
        Optional<PastMethod> rival = List.of(PastMethod.values()).stream()
                .filter(PastMethod::rival)
                .min(Comparator.comparingDouble(method -> score.apply(method).loss()));
        return rival.filter(method ->
                        proposal.jobs() >= ENOUGH_JOBS && score.apply(method).loss() < proposal.loss())
                .orElse(PastMethod.PROPOSAL);
    }

    private static PastScore total(List<CutOff> cutOffs, Function<CutOff, PastScore> score) {
        return cutOffs.stream().map(score).reduce(PastScore.NONE, PastScore::plus);
    }
}
