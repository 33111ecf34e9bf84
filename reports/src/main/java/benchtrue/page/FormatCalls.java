package benchtrue.page;

import benchtrue.answers.Answers;
import benchtrue.costing.Backlog;
import benchtrue.costing.Call;
import benchtrue.costing.OpenLine;
import benchtrue.reconcile.Ledger;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Fourth answer: which open instruments need a call to the customer before more work is done. */
final class FormatCalls {
    private static final int MOST_LISTED = 200;
    private final PageFormatter told;
    private final Backlog backlog;
    private final Map<Integer, List<OpenLine>> byTicket;

    FormatCalls(PageFormatter told) {
        this.told = told;
        backlog = told.review().costs().shop().backlog();
        byTicket = backlog.lines().stream()
                .collect(Collectors.groupingBy(
                        line -> told.review().ledger().lines().ticket(line.line())));
    }

    ReviewView.Calls tell() {
        List<Call> calls = told.review().answers().calls();
        if (calls.isEmpty()) {
            return new ReviewView.Calls(List.of(), "No open instrument needs a call.");
        }
        int rest = calls.size() - Answers.FEW_CALLS;
        return new ReviewView.Calls(
                calls.stream().limit(Answers.FEW_CALLS).map(this::call).toList(),
                (rest > 0 ? "And " + told.figures().count(rest) + " more, in the list of calls below. " : "")
                        + "Many places require approval before an estimate is exceeded.");
    }

    /** Returns the calls for the figures, the most money first. */
    List<ReviewView.Call> all() {
        return told.review().answers().calls().stream()
                .limit(MOST_LISTED)
                .map(this::call)
                .toList();
    }

    /** Returns where the calls left out stand; empty where none is. */
    String more() {
        int left = backlog.calls().size() - MOST_LISTED;
        return left > 0 ? told.count(left, "smaller call is", "smaller calls are") + " left out here." : "";
    }

    private ReviewView.Call call(Call call) {
        Ledger ledger = told.review().ledger();
        return new ReviewView.Call(
                "call-" + (call.ticket() + 1),
                ledger.tickets().ticket(call.ticket()),
                ledger.tickets().instrumentClass(call.ticket()).replace('-', ' '),
                hours(call),
                PageFormatter.sentence(
                        call.reasons().stream().map(Call.Reason::words).collect(Collectors.joining("; "))),
                repairs(call));
    }

    private String hours(Call call) {
        if (call.quotedSeconds() <= 0) {
            return told.figures().quote(call.secondsSoFar()) + " so far";
        }
        return told.figures().quote(call.secondsSoFar()) + " of "
                + told.figures().quote(call.quotedSeconds()) + " quoted"
                + (call.moreMoney() > 0 ? ", " + told.figures().aboutMoney(call.moreMoney()) + " more" : "");
    }

    private String repairs(Call call) {
        return byTicket.getOrDefault(call.ticket(), List.of()).stream()
                .sorted(Comparator.comparingInt(OpenLine::line))
                .map(line -> told.label(told.review().ledger().lines().repairType(line.line())))
                .distinct()
                .collect(Collectors.joining(", "));
    }
}
