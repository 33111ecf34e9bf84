package benchtrue.tables;

import benchtrue.calendar.Call;
import benchtrue.calendar.OpenTicket;
import benchtrue.format.Words;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;

/** {@code open-tickets.csv}: every open ticket once, by state, those that stand there longest first. */
final class OpenTicketsTable {
    private OpenTicketsTable() {}

    static ResultTable<OpenTicket> of(Ledger ledger, List<Call> toCall) {
        Map<Integer, Call> calls = toCall.stream().collect(Collectors.toMap(Call::ticket, Function.identity()));
        return ResultTable.<OpenTicket>of("open-tickets", "One row is one open ticket in the one place where it stands")
                .text("ticket", "the visit's key", row -> ledger.tickets().ticket(row.ticket()))
                .text("state", "where it stands", row -> Words.of(row.state()))
                .day("since", "first day of that", OpenTicket::since)
                .day("until", "day by which four in five such stretches are over", OpenTicket::until)
                .text(
                        "repairs",
                        "keys of the repairs on it",
                        row -> row.repairs().stream()
                                .map(ledger.repairTypes()::name)
                                .collect(Collectors.joining(";")))
                .text("reason", "why it stands there", OpenTicket::reason)
                .text(
                        "call",
                        "why to call about it; empty where nobody need",
                        row -> calls.containsKey(row.ticket())
                                ? calls.get(row.ticket()).why()
                                : "")
                .money("worth", "what it brings when it is handed over", OpenTicket::worth)
                .day("promise_80", "day that will be kept four times in five", OpenTicket::promise)
                .day("opened", "first day of the visit", row -> ledger.tickets().opened(row.ticket()))
                .day("promised", "promised day", row -> ledger.tickets().promised(row.ticket()))
                .count("days", "days it has stood there", row -> ledger.asOf() - row.since())
                .money("saves", "what a call is likely worth", saves(calls));
    }

    private static ToLongFunction<OpenTicket> saves(Map<Integer, Call> calls) {
        return row -> calls.containsKey(row.ticket()) && calls.get(row.ticket()).saves() > 0
                ? calls.get(row.ticket()).saves()
                : Absent.AMOUNT;
    }
}
