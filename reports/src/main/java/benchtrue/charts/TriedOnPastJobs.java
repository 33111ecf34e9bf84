package benchtrue.charts;

import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.revision.BackTest;
import benchtrue.revision.PastMethod;
import benchtrue.revision.PastScore;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How far the proposal, the book and simpler rules would have missed jobs of the past. */
final class TriedOnPastJobs {
    private final ChartContext subject;
    private final BackTest test;
    private final double share;

    TriedOnPastJobs(ChartContext subject) {
        this.subject = subject;
        test = subject.review().revision().backTest();
        share = subject.review().settings().policy().coverage();
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
        List<PastMethod> methods = new ArrayList<>(List.of(PastMethod.values()));
        methods.sort(Comparator.comparingDouble(this::missed));
        return new Picture(
                "tried-on-past-jobs",
                title(),
                "Each of " + subject.count(test.cutOffs().size(), "quarter", "quarters")
                        + " with what was known before it. An hour too short counts "
                        + subject.figures().number(share / (1 - share), 1) + " times one too long, since "
                        + subject.figures().percent(share)
                        + " of jobs are to fit" + families()
                        + ". Right: hours missed, jobs that fit. Lines with hours of their own one by"
                        + " one, other tickets by their total.",
                new RowChart(
                        "hours missed a job",
                        RowChart.Form.BARS,
                        Double.NaN,
                        0,
                        methods.stream().map(this::row).toList(),
                        List.of(),
                        subject.figures()));
    }

    private String title() {
        long jobs = test.total(PastMethod.PROPOSAL).jobs();
        String tried = "Tried on " + subject.count(jobs, "past job", "past jobs") + ", ";
        PastMethod best = test.best();
        double less = 1 - missed(best) / missed(PastMethod.KEEP_THE_BOOK);
        String nearest = best.words() + " came nearest";
        return tried
                + nearest
                + (best == PastMethod.KEEP_THE_BOOK
                        ? ""
                        : ", missing by " + subject.figures().percent(less) + " less than the book");
    }

    /** Hours too long and, weighted, too short: the pinball loss in hours of quoting too much. */
    private double missed(PastMethod method) {
        PastScore score = test.total(method);
        return score.loss() / score.jobs() / (1 - share);
    }

    private RowChart.Row row(PastMethod method) {
        String words = method.words();
        return new RowChart.Row(
                Character.toUpperCase(words.charAt(0)) + words.substring(1),
                missed(method),
                method.rival() ? Mark.UNSOLD : Mark.PLAIN,
                subject.figures().hours(missed(method)) + ", "
                        + subject.figures().percent(test.total(method).coverage()) + " fit");
    }
}
