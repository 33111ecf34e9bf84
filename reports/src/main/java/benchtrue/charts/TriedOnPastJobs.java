package benchtrue.charts;

import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.revision.BackTest;
import benchtrue.revision.PastMethod;
import benchtrue.revision.PastScore;
import benchtrue.settings.Policy;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How far the proposal, the book and simpler rules would have missed jobs of the past. */
final class TriedOnPastJobs {
    private final ChartContext subject;
    private final BackTest test;
    private final double share;
    private final boolean inAll;

    TriedOnPastJobs(ChartContext subject) {
        this.subject = subject;
        test = subject.review().revision().backTest();
        share = subject.review().settings().policy().coverage();
        inAll = test.rule() == Policy.Rule.BREAK_EVEN;
    }

    /** Returns the picture; empty where there are too few past jobs to tell. */
    Optional<Picture> picture() {
        return test.tells() ? Optional.of(draw()) : Optional.empty();
    }

    /** Families with a coverage of their own are weighed by it. */
    private String families() {
        return subject.review().settings().policy().someFamilyHasItsCoverage()
                ? "; some families by their own share"
                : "";
    }

    private Picture draw() {
        List<PastMethod> methods = new ArrayList<>(test.methods());
        methods.sort(Comparator.comparingDouble(this::missed));
        return new Picture(
                "tried-on-past-jobs",
                title(),
                note(),
                new RowChart(
                        inAll ? "hours in all, off by % of those worked" : "missed per quoted hour (h), each job once",
                        RowChart.Form.BARS,
                        Double.NaN,
                        0,
                        methods.stream().map(this::row).toList(),
                        List.of(),
                        subject.figures()));
    }

    private String note() {
        String quarters = "Each of " + subject.count(test.cutOffs().size(), "quarter", "quarters")
                + " with what was known before it. ";
        return inAll
                ? quarters
                        + "Your rule is that hours pay for themselves, so what counts is all hours together. Right: hours too"
                        + " many or too few, jobs that fit."
                : quarters + "An hour too short counts " + subject.figures().number(share / (1 - share), 1)
                        + " times one too long, since " + subject.figures().percent(share) + " of jobs are to fit"
                        + families()
                        + "; each line with hours of its own has one vote. Right: missed, jobs that fit, hours too many or too"
                        + " few in all.";
    }

    private String title() {
        long jobs = test.total(PastMethod.PROPOSAL).jobs();
        PastMethod best = test.best();
        String found = best != PastMethod.PROPOSAL
                ? best.words() + " came nearest"
                : test.proposalIsNearest()
                        ? "no simpler rule came nearer than the proposal"
                        : "no simpler rule beat the proposal job by job and in all hours together";
        double less = 1 - missed(best) / missed(PastMethod.KEEP_THE_BOOK);
        return "Tried on " + subject.count(jobs, "past job", "past jobs") + ", " + found
                + (less > 0 ? ", missing by " + subject.figures().percent(less) + " less than the book" : "");
    }

    /** By the rule's own measure: percent of all hours, or pinball loss per quoted hour in hours of quoting too much. */
    private double missed(PastMethod method) {
        PastScore score = test.total(method);
        return inAll ? 100 * StrictMath.abs(score.hoursBias()) : score.ratioLoss() / score.ownJobs() / (1 - share);
    }

    private RowChart.Row row(PastMethod method) {
        String words = method.words();
        return new RowChart.Row(
                Character.toUpperCase(words.charAt(0)) + words.substring(1),
                missed(method),
                method.rival() ? Mark.UNSOLD : Mark.PLAIN,
                figures(method));
    }

    private String figures(PastMethod method) {
        PastScore score = test.total(method);
        double bias = score.hoursBias();
        String all = subject.figures().percent(StrictMath.abs(bias)) + (bias < 0 ? " too few" : " too many");
        String fit = subject.figures().percent(score.coverage()) + " fit";
        return inAll ? all + ", " + fit : subject.figures().number(missed(method), 2) + ", " + fit + ", " + all;
    }
}
