package benchtrue.revision;

import benchtrue.format.Figures;
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
        BackTest wordless = new BackTest(cutOffs, used, "");
        return new BackTest(cutOffs, used, new DescribePastJobs(wordless, settings).sentence());
    }

    private String sentence() {
        PastScore proposal = test.total(PastMethod.PROPOSAL);
        PastScore book = test.total(PastMethod.KEEP_THE_BOOK);
        String tried = "Tried on " + figures.count(proposal.jobs(), "past job", "past jobs") + " of "
                + figures.count(test.cutOffs().size(), "quarter", "quarters")
                + ", each time with what was known before: " + figures.percent(proposal.coverage())
                + " fitted the hours proposed and " + figures.percent(book.coverage()) + " the book";
        return tried + ", where you ask for "
                + figures.percent(settings.policy().coverage()) + families() + "; " + outcome() + ".";
    }

    private String families() {
        return settings.policy().someFamilyHasItsCoverage() ? " and of some families another share" : "";
    }

    private String outcome() {
        if (!test.tells()) {
            return "too few jobs to say which does better";
        }
        PastMethod best = test.best();
        Optional<String> nearer = nearer(best);
        if (best == PastMethod.PROPOSAL) {
            return "the proposal came nearer to them than the book, the plain average of the last 12 months and each"
                    + " repair's middle job" + nearer.orElse("");
        }
        return best.words() + " came nearer to them than the proposal" + what(best);
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

    /** How much less the proposal missed by than the book. */
    private Optional<String> nearer(PastMethod best) {
        double book = test.total(PastMethod.KEEP_THE_BOOK).loss();
        double less = 1 - test.total(best).loss() / book;
        return book > 0
                ? Optional.of(", missing by " + figures.percent(less) + " less than the book")
                : Optional.empty();
    }
}
