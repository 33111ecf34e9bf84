package benchtrue.charts;

import benchtrue.shop.Absent;
import benchtrue.shop.Wait;
import benchtrue.shop.WaitReason;
import benchtrue.shop.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** How long instruments waited, in calendar days, by reason; never bench hours. */
final class WaitingByReason {
    private final Subject subject;

    WaitingByReason(Subject subject) {
        this.subject = subject;
    }

    /** Returns the picture; empty where no waiting was recorded. */
    Optional<Picture> picture() {
        long[] days = new long[WaitReason.values().length];
        int[] waits = new int[days.length];
        int asOf = subject.review().ledger().asOf();
        for (Wait wait : subject.review().ledger().waits()) {
            int until = Absent.has(wait.to()) ? wait.to() : asOf;
            days[wait.reason().ordinal()] += Math.max(0, until - wait.from());
            waits[wait.reason().ordinal()]++;
        }
        List<RowChart.Row> rows = new ArrayList<>();
        for (WaitReason reason : WaitReason.values()) {
            int place = reason.ordinal();
            if (waits[place] > 0) {
                rows.add(row(reason, days[place], waits[place]));
            }
        }
        rows.sort(Comparator.comparingDouble(RowChart.Row::value).reversed());
        return rows.isEmpty() ? Optional.empty() : Optional.of(picture(rows));
    }

    private Picture picture(List<RowChart.Row> rows) {
        return new Picture(
                "waiting-by-reason",
                "Instruments wait longest for " + rows.get(0).label(),
                "Calendar days, not bench hours. Right: average, waits recorded.",
                new RowChart(
                        "calendar days a wait, on average",
                        RowChart.Form.BARS,
                        Double.NaN,
                        0,
                        rows,
                        List.of(),
                        subject.figures()));
    }

    private RowChart.Row row(WaitReason reason, long days, int waits) {
        double average = (double) days / waits;
        return new RowChart.Row(
                Words.of(reason).replace('-', ' '),
                average,
                Double.NaN,
                Double.NaN,
                Mark.PLAIN,
                subject.figures().number(average, 1) + " days, " + subject.count(waits, "wait", "waits"));
    }
}
