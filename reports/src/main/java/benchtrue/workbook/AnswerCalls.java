package benchtrue.workbook;

import benchtrue.costing.Call;
import benchtrue.nightly.Review;
import benchtrue.shop.Tickets;
import java.util.List;
import java.util.stream.Collectors;

/** Fourth answer: which open instruments need a call to the customer before more work is done. */
final class AnswerCalls {
    private static final int MOST = 5;

    private final Review review;

    AnswerCalls(Review review) {
        this.review = review;
    }

    void write(Flow flow) {
        List<Call> calls = review.costs().shop().backlog().calls();
        flow.title("4. Whom to call before going on");
        if (calls.isEmpty()) {
            flow.sentence("No open instrument needs a call.");
            return;
        }
        flow.headings(
                List.of(
                        "Instrument",
                        "Ticket",
                        "Hours so far",
                        "Hours quoted",
                        "Hours expected in all, about",
                        "More money, about",
                        "",
                        "Why to call"),
                0,
                1,
                7);
        calls.stream().limit(MOST).forEach(call -> call(flow, call));
        flow.sentence((calls.size() > MOST ? "And " + (calls.size() - MOST) + " more, in review.html. " : "")
                + "Many places require approval before an estimate is exceeded.");
    }

    private void call(Flow flow, Call call) {
        Tickets tickets = review.ledger().tickets();
        flow.next()
                .text(tickets.instrumentClass(call.ticket()).replace('-', ' '), Look.Kind.WRAPPED)
                .text(tickets.ticket(call.ticket()))
                .number(Amounts.hours(call.secondsSoFar()), Look.Kind.HOURS)
                .number(call.quotedSeconds() > 0 ? Amounts.hours(call.quotedSeconds()) : Double.NaN, Look.Kind.HOURS)
                .number(call.expectedHours(), Look.Kind.TENTHS)
                .number(call.moreMoney() > 0 ? Amounts.about(call.moreMoney()) : Double.NaN, Look.Kind.WHOLE_MONEY)
                .skip();
        flow.across(call.reasons().stream().map(Call.Reason::words).collect(Collectors.joining("; ")), 7);
    }
}
