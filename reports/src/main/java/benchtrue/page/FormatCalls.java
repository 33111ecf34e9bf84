package benchtrue.page;

import benchtrue.answers.Answers;
import benchtrue.calendar.Call;
import benchtrue.calendar.OpenState;
import benchtrue.calendar.OpenTicket;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.List;

/** Fourth answer, whom to call today and what to say; and where every open ticket stands. */
final class FormatCalls {
    private static final int MOST_LISTED = 200;
    private final PageFormatter told;
    private final Ledger ledger;
    private final List<Call> calls;
    private final List<OpenTicket> open;

    FormatCalls(PageFormatter told) {
        this.told = told;
        ledger = told.review().ledger();
        calls = told.review().answers().calls();
        open = told.review().calendar().open();
    }

    ReviewView.Calls tell() {
        if (calls.isEmpty()) {
            return new ReviewView.Calls(List.of(), "No open instrument needs a call.");
        }
        int rest = calls.size() - Answers.FEW_CALLS;
        return new ReviewView.Calls(
                calls.stream().limit(Answers.FEW_CALLS).map(this::call).toList(),
                (rest > 0 ? "And " + told.figures().count(rest) + " more, in the list of calls below. " : "")
                        + "Many places require approval before an estimate is exceeded.");
    }

    /** Returns the calls for the figures, what saves most first. */
    List<ReviewView.Call> all() {
        return calls.stream().limit(MOST_LISTED).map(this::call).toList();
    }

    /** Returns where the calls left out stand; empty where none is. */
    String more() {
        int left = calls.size() - MOST_LISTED;
        return left > 0
                ? told.count(left, "smaller call is", "smaller calls are")
                        + " left out here and stand in that file too."
                : "";
    }

    /** Returns every open ticket, by where it stands. */
    ReviewView.Open open() {
        List<String> states = new ArrayList<>();
        for (OpenState state : OpenState.values()) {
            long count = open.stream().filter(ticket -> ticket.state() == state).count();
            if (count > 0) {
                states.add(told.figures().count(count) + " " + state.words());
            }
        }
        int left = open.size() - MOST_LISTED;
        return new ReviewView.Open(
                open.isEmpty()
                        ? "No ticket is open."
                        : told.count(open.size(), "ticket is", "tickets are") + " open: " + String.join(", ", states)
                                + "."
                                + (left > 0 ? " " + told.figures().count(left) + " are left out here." : ""),
                open.stream().limit(MOST_LISTED).map(this::ticket).toList());
    }

    private ReviewView.OpenTicket ticket(OpenTicket ticket) {
        int days = ledger.asOf() - ticket.since();
        return new ReviewView.OpenTicket(
                ledger.tickets().ticket(ticket.ticket()),
                ticket.state().words(),
                told.figures().day(ticket.since()) + ", " + told.count(days, "day", "days"),
                Absent.has(ticket.until()) ? told.figures().day(ticket.until()) : "",
                repairs(ticket.repairs()),
                ticket.reason(),
                Absent.has(ticket.promise()) ? told.figures().day(ticket.promise()) : "",
                told.figures().price(ticket.worth()));
    }

    private ReviewView.Call call(Call call) {
        return new ReviewView.Call(
                "call-" + (call.ticket() + 1),
                ledger.tickets().ticket(call.ticket()),
                ledger.tickets().instrumentClass(call.ticket()).replace('-', ' '),
                repairs(call.repairs()),
                call.saves() > 0 ? told.figures().aboutMoney(call.saves()) : "",
                call.why(),
                call.cost(),
                call.say());
    }

    private String repairs(List<Integer> types) {
        return types.isEmpty() ? "no repair wanted" : ledger.titles(types);
    }
}
