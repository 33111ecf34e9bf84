package benchtrue.page;

import benchtrue.hours.JobLines;
import benchtrue.hours.UnquotedWork;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.LineState;
import benchtrue.shop.Money;
import benchtrue.shop.PaidBy;
import java.util.ArrayList;
import java.util.List;

/** Third answer: what was given away in the year up to the as-of date, and to whom. */
final class TellGifts {
    private final Told told;
    private final Ledger ledger;
    private final JobLines jobs;

    TellGifts(Told told) {
        this.told = told;
        ledger = told.review().ledger();
        jobs = told.review().jobs();
    }

    ReviewView.Gifts tell() {
        List<ReviewView.Gift> rows = new ArrayList<>();
        add(rows, "Work that no line quoted", unquoted());
        long settling = 0;
        long rework = 0;
        for (int line = 0; line < jobs.size(); line++) {
            if (told.lastYear(ledger.lines().ticket(line))) {
                settling += jobs.settlingSeconds(line);
                rework += jobs.reworkSeconds(line);
            }
        }
        add(rows, "Free adjustment after the job", settling);
        add(rows, "Putting our own work right", rework);
        add(rows, "Goodwill", paidBy(PaidBy.GOODWILL));
        add(rows, "Work for the trade", paidBy(PaidBy.TRADE));
        String span = "On instruments that came in during the year up to "
                + told.figures().day(ledger.asOf());
        return new ReviewView.Gifts(
                rows,
                rows.isEmpty()
                        ? span + " nothing is recorded as given away."
                        : span + "; hours at the posted " + told.figures().price(rate())
                                + " an hour. Work for the trade is shown at the full rate, before what the trade paid.");
    }

    private long rate() {
        return told.review().costs().shopRate();
    }

    private void add(List<ReviewView.Gift> rows, String what, long seconds) {
        if (seconds > 0) {
            rows.add(new ReviewView.Gift(
                    what, told.figures().hours(seconds), told.figures().money(Money.perHour(rate(), seconds))));
        }
    }

    private long unquoted() {
        return jobs.unquoted().stream()
                .filter(work -> told.lastYear(work.ticket()))
                .mapToLong(UnquotedWork::seconds)
                .sum();
    }

    private long paidBy(PaidBy payer) {
        long seconds = 0;
        for (int line = 0; line < jobs.size(); line++) {
            boolean done = jobs.state(line) == LineState.CLOSED || jobs.state(line) == LineState.OPEN;
            if (done
                    && ledger.lines().paidBy(line) == payer
                    && told.lastYear(ledger.lines().ticket(line))) {
                seconds += jobs.actualSeconds(line);
            }
        }
        return seconds;
    }
}
