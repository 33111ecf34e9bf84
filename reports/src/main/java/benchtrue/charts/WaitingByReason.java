package benchtrue.charts;

import benchtrue.calendar.Waiting;
import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.format.Words;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How long instruments waited in the last year, in calendar days, by reason; never bench hours. */
final class WaitingByReason {
    private final ChartContext subject;

    WaitingByReason(ChartContext subject) {
        this.subject = subject;
    }

    /** Returns the picture; empty where no waiting was recorded. */
    Optional<Picture> picture() {
        List<RowChart.Row> rows = subject.review().calendar().waiting().stream()
                .filter(waiting -> waiting.waits() > 0)
                .sorted(Comparator.comparingLong(Waiting::days).reversed().thenComparing(Waiting::reason))
                .map(this::row)
                .toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(picture(rows));
    }

    private Picture picture(List<RowChart.Row> rows) {
        return new Picture(
                "waiting-by-reason",
                "Most waiting is for " + rows.get(0).label(),
                "Calendar days of the year up to "
                        + subject.figures().day(subject.review().ledger().asOf())
                        + ", all instruments together; not bench hours. Right: days a wait, waits, waiting now.",
                new RowChart("calendar days", RowChart.Form.BARS, Double.NaN, 0, rows, List.of(), subject.figures()));
    }

    private RowChart.Row row(Waiting waiting) {
        String average = subject.figures().number((double) waiting.days() / waiting.waits(), 1);
        return new RowChart.Row(
                Words.of(waiting.reason()).replace('-', ' '),
                waiting.days(),
                Mark.PLAIN,
                average + " days, " + subject.count(waiting.waits(), "wait", "waits") + ", "
                        + subject.figures().count(waiting.waitingNow()) + " now");
    }
}
