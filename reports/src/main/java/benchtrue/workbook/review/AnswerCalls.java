package benchtrue.workbook.review;

import benchtrue.answers.Answers;
import benchtrue.calendar.Call;
import benchtrue.format.Figures;
import benchtrue.nightly.Review;
import benchtrue.shop.Tickets;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.RowFlow;
import java.util.List;

/** Fourth answer: whom to call, and what to say. */
final class AnswerCalls {
    private final Review review;
    private final Figures figures;

    AnswerCalls(Review review, Figures figures) {
        this.review = review;
        this.figures = figures;
    }

    void write(RowFlow flow) {
        List<Call> calls = review.answers().calls();
        flow.title("4. Whom to call, and what to say");
        if (calls.isEmpty()) {
            flow.sentence("No open instrument needs a call.");
            return;
        }
        flow.headings(
                List.of(
                        "Repairs",
                        "Ticket",
                        "Hours so far",
                        "Hours quoted",
                        "Hours expected in all, about",
                        "A call is worth, about",
                        "",
                        "Why, and what to say"),
                0,
                1,
                7);
        calls.stream().limit(Answers.FEW_CALLS).forEach(call -> call(flow, call));
        int rest = calls.size() - Answers.FEW_CALLS;
        flow.sentence((rest > 0 ? "And " + figures.count(rest) + " more, on the sheet Open tickets. " : "")
                + "Many places require approval before an estimate is exceeded.");
    }

    private void call(RowFlow flow, Call call) {
        Tickets tickets = review.ledger().tickets();
        boolean hours = call.quotedSeconds() > 0;
        flow.next()
                .text(review.ledger().titles(call.repairs()), CellStyles.Kind.WRAPPED)
                .text(tickets.ticket(call.ticket()))
                .number(hours ? Amounts.hours(call.secondsSoFar()) : Double.NaN, CellStyles.Kind.HOURS)
                .number(hours ? Amounts.hours(call.quotedSeconds()) : Double.NaN, CellStyles.Kind.HOURS)
                .number(hours ? call.expectedHours() : Double.NaN, CellStyles.Kind.TENTHS)
                .number(call.saves() > 0 ? Amounts.about(call.saves()) : Double.NaN, CellStyles.Kind.WHOLE_MONEY)
                .skip();
        flow.across(call.why() + " Say: " + call.say(), 7);
    }
}
