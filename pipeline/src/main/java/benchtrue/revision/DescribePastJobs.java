package benchtrue.revision;

import benchtrue.format.Figures;
import benchtrue.settings.Policy;
import benchtrue.settings.Policy.FallBack;
import benchtrue.settings.Settings;
import java.util.List;
import java.util.Optional;

/** Says in plain words how proposals did on past jobs. */
final class DescribePastJobs {
    private final BackTest test;
    private final Settings settings;
    private final Figures figures;

    private DescribePastJobs(BackTest test, Settings settings) {
        this.test = test;
        this.settings = settings;
        figures = settings.figures();
    }

    static BackTest tell(List<CutOff> cutOffs, PastMethod used, Settings settings) {
        BackTest wordless = new BackTest(cutOffs, settings.policy().rule(), used, "");
        return new BackTest(
                cutOffs, settings.policy().rule(), used, new DescribePastJobs(wordless, settings).sentence());
    }

    private String sentence() {
        PastScore proposal = test.total(PastMethod.PROPOSAL);
        String tried = "Tried on " + figures.count(proposal.jobs(), "past job", "past jobs") + " of "
                + figures.count(test.cutOffs().size(), "quarter", "quarters")
                + copied(proposal.lines() - proposal.uncopiedLines()) + ", each time with what was known before: ";
        return tried + measured(proposal, test.total(PastMethod.KEEP_THE_BOOK)) + "; " + outcome() + ".";
    }

    private String copied(int lines) {
        return lines == 0
                ? ""
                : " (" + figures.count(lines, "more repeats its quote", "more repeat their quotes") + " and "
                        + (lines == 1 ? "tells" : "tell") + " nothing)";
    }

    private String measured(PastScore proposal, PastScore book) {
        if (test.rule() == Policy.Rule.BREAK_EVEN) {
            return "all together took " + apart(proposal) + " the hours proposed and " + apart(book) + " the book";
        }
        return figures.percent(proposal.coverage()) + " fitted the hours proposed and "
                + figures.percent(book.coverage()) + " the book, where you ask for "
                + figures.percent(settings.policy().coverage()) + families();
    }

    private String apart(PastScore score) {
        double more = -score.hoursBias() / (1 + score.hoursBias());
        return figures.percent(StrictMath.abs(more)) + (more < 0 ? " less than" : " more than");
    }

    private String families() {
        return settings.policy().someFamilyHasItsCoverage() ? " and of some families another share" : "";
    }

    private String outcome() {
        if (!test.tells()) {
            return "too few jobs to say which does better";
        }
        PastMethod best = test.best();
        if (best == PastMethod.PROPOSAL) {
            return proposal() + nearer(best).orElse("");
        }
        return best.words() + " came nearer to them than the proposal" + what(best);
    }

    private String proposal() {
        String rivals = "the book, the plain average of the last 12 months and each repair's middle job";
        return test.proposalIsNearest()
                ? "the proposal came nearer to them than " + rivals
                : "the proposal was not beaten both job by job and in all hours together by any of " + rivals;
    }

    private String what(PastMethod best) {
        if (settings.policy().fallBack() == FallBack.NEVER) {
            return ", which stands all the same, as your settings say";
        }
        if (test.used() == PastMethod.PROPOSAL) {
            return ", but not beyond chance or not by your rule, so the proposal stands";
        }
        return test.used() == best
                ? ", so what is proposed now stands on that"
                : ", and what is proposed now stands on " + test.used().words() + ", which serves your rule";
    }

    /** How much less the proposal missed by than the book, each job counting once. */
    private Optional<String> nearer(PastMethod best) {
        double book = test.total(PastMethod.KEEP_THE_BOOK).missed(test.rule());
        double less = 1 - test.total(best).missed(test.rule()) / book;
        return book > 0 && less > 0
                ? Optional.of(", missing by " + figures.percent(less) + " less than the book")
                : Optional.empty();
    }
}
