package benchtrue.charts;

import benchtrue.hours.JobLines;
import benchtrue.shop.Balance;
import benchtrue.shop.Hours;
import java.util.ArrayList;
import java.util.List;

/** Where the logged hours went: sold, putting right, quoting, handling, shop. */
final class HoursByKind {
    private final Subject subject;

    HoursByKind(Subject subject) {
        this.subject = subject;
    }

    Picture picture() {
        JobLines jobs = subject.review().jobs();
        long rework = 0;
        long settling = 0;
        for (int line = 0; line < jobs.size(); line++) {
            rework += jobs.reworkSeconds(line);
            settling += jobs.settlingSeconds(line);
        }
        long all = 0;
        List<RowChart.Row> rows = new ArrayList<>();
        long sold = 0;
        for (Balance.Term term : jobs.placed()) {
            all += term.amount();
        }
        for (Balance.Term term : jobs.placed()) {
            if (term.name().equals("on lines")) {
                sold = term.amount() - rework - settling;
                rows.add(row("sold: on quoted jobs", sold, all, Mark.PLAIN));
                rows.add(row("putting our own work right", rework, all, Mark.UNSOLD));
                rows.add(row("free adjustment after the job", settling, all, Mark.UNSOLD));
            } else {
                rows.add(row(term.name(), term.amount(), all, Mark.UNSOLD));
            }
        }
        rows.removeIf(row -> row.value() == 0);
        String share = all == 0
                ? "No hours are logged"
                : subject.figures().percent((double) sold / all) + " of the logged hours were sold";
        return new Picture(
                "hours-by-kind",
                share,
                subject.figures().hours(all) + " logged in all, up to "
                        + subject.figures().day(subject.review().ledger().asOf())
                        + ". Filled: sold; hollow: not sold. Waiting is no bench time and stands apart.",
                new RowChart("hours", RowChart.Form.BARS, Double.NaN, 0, rows, List.of(), subject.figures()));
    }

    private RowChart.Row row(String label, long seconds, long all, Mark mark) {
        double share = all == 0 ? Double.NaN : (double) seconds / all;
        return new RowChart.Row(
                label,
                Hours.of(seconds),
                Double.NaN,
                Double.NaN,
                mark,
                subject.figures().hours(seconds) + ", " + subject.figures().percent(share));
    }
}
