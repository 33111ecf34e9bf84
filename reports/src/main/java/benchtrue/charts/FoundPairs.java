package benchtrue.charts;

import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.findings.FoundWork;
import java.util.List;
import java.util.Optional;

/** Which repair the bench finds while doing another, so that the first quote can warn of it. */
final class FoundPairs {
    private static final int MOST_ROWS = 12;
    private final ChartContext subject;
    private final List<FoundWork> pairs;

    FoundPairs(ChartContext subject) {
        this.subject = subject;
        pairs = subject.review().findings().foundWork();
    }

    /** Returns the picture; empty where no work was found and quoted later. */
    Optional<Picture> picture() {
        return pairs.isEmpty() ? Optional.empty() : Optional.of(draw());
    }

    private Picture draw() {
        FoundWork first = pairs.get(0);
        int rest = pairs.size() - MOST_ROWS;
        return new Picture(
                "found-work",
                subject.figures().percent(first.share()) + " of tickets with \u201c" + subject.label(first.quoted())
                        + "\u201d turn up \u201c" + subject.label(first.found()) + "\u201d on the bench",
                "Work found and quoted later; the first quote can warn of it. Right: times"
                        + (subject.showsMoney() ? ", worth a year" : "") + ". Lines: 90\u00a0% range."
                        + (rest > 0
                                ? " " + subject.count(rest, "smaller pair is", "smaller pairs are") + " left out."
                                : ""),
                new RowChart(
                        "tickets of each hundred on which it is found",
                        RowChart.Form.MARKS,
                        Double.NaN,
                        0,
                        pairs.stream().limit(MOST_ROWS).map(this::row).toList(),
                        List.of(),
                        subject.figures()));
    }

    private RowChart.Row row(FoundWork pair) {
        return new RowChart.Row(
                subject.label(pair.quoted()) + " \u2192 " + subject.label(pair.found()),
                100 * pair.share(),
                100 * pair.lower(),
                100 * pair.upper(),
                Mark.PLAIN,
                subject.figures().count(pair.times()) + " of "
                        + subject.count(pair.tickets(), "ticket", "tickets")
                        + (subject.showsMoney() ? ", " + subject.figures().aboutMoney(pair.annualMoney()) : ""));
    }
}
