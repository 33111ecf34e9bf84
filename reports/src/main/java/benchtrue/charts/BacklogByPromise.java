package benchtrue.charts;

import benchtrue.calendar.Backlog;
import benchtrue.calendar.Promise;
import benchtrue.charts.drawing.ChartFont;
import benchtrue.charts.drawing.LegendEntry;
import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.reconcile.Ledger;
import java.util.List;
import java.util.Optional;

/** Work in the shop, by promised day, and which promises will likely be missed. */
final class BacklogByPromise {
    private static final int MOST_ROWS = 15;
    private final ChartContext subject;
    private final Backlog backlog;

    BacklogByPromise(ChartContext subject) {
        this.subject = subject;
        backlog = subject.review().calendar().backlog();
    }

    /** Returns the picture; empty where nothing is on the bench with a promised day. */
    Optional<Picture> picture() {
        return backlog.promises().isEmpty() ? Optional.empty() : Optional.of(draw());
    }

    private Picture draw() {
        int rest = backlog.promises().size() - MOST_ROWS;
        return new Picture(
                "backlog",
                title(),
                "Bench hours still to do: " + subject.figures().hours(backlog.hours()) + " (90\u00a0% range "
                        + subject.figures().hours(backlog.lower()) + " to "
                        + subject.figures().hours(backlog.upper())
                        + "). Right: promised day, chance to be late where it is not past, waiting included where past visits tell it."
                        + (rest > 0
                                ? " " + subject.count(rest, "later ticket is", "later tickets are") + " left out."
                                : ""),
                new RowChart(
                        "expected bench hours still to do on the ticket",
                        RowChart.Form.BARS,
                        Double.NaN,
                        0,
                        backlog.promises().stream()
                                .limit(MOST_ROWS)
                                .map(this::row)
                                .toList(),
                        List.of(
                                LegendEntry.bar(Mark.UNDER, "past, or will more likely be late"),
                                LegendEntry.bar(Mark.UNSOLD, "likely in time")),
                        subject.figures()));
    }

    private String title() {
        int asOf = subject.review().ledger().asOf();
        long past = backlog.promises().stream()
                .filter(promise -> promise.promised() < asOf)
                .count();
        long atRisk = backlog.promises().stream()
                .filter(promise -> promise.promised() >= asOf && promise.atRisk())
                .count();
        String weeks = Double.isFinite(backlog.weeks())
                ? subject.figures().number(backlog.weeks(), 1) + " weeks of work in the shop"
                : subject.figures().hours(backlog.hours()) + " of work in the shop";
        return weeks
                + (past == 0 ? "" : "; " + subject.count(past, "promise is past", "promises are past"))
                + (atRisk == 0 ? "" : "; " + subject.count(atRisk, "more at risk", "more at risk"))
                + (past + atRisk == 0 ? "; no promise looks at risk" : "");
    }

    private RowChart.Row row(Promise promise) {
        Ledger ledger = subject.review().ledger();
        String ticket = ledger.tickets().ticket(promise.ticket());
        return new RowChart.Row(
                ChartFont.shows(ticket) ? ticket : "ticket no. " + (promise.ticket() + 1),
                promise.hours(),
                promise.atRisk() ? Mark.UNDER : Mark.UNSOLD,
                subject.figures().day(promise.promised()) + ", "
                        + (promise.promised() < ledger.asOf()
                                ? "past"
                                : subject.figures().percent(promise.chanceLate())));
    }
}
