package benchtrue.calendar;

import benchtrue.costing.CostedLines;
import benchtrue.costing.Families;
import benchtrue.format.Figures;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;
import java.util.List;

/** Tells what waits, whom to call and when work will be done (methods, section 15). */
public final class PlanCalendar {
    private static final int YEAR = 365;

    /** Returns the calendar of a shop. */
    public Calendar plan(CostedLines costs, Settings settings) {
        Ledger ledger = costs.jobs().ledger();
        Figures figures = settings.figures();
        TicketDays days = TicketDays.of(costs.jobs());
        Families families = Families.of(ledger);
        UsualLengths usual = new UsualLengths(
                ledger,
                days,
                UsualLengths.families(ledger, families),
                families.names().size());
        List<OpenTicket> open = new OpenTickets(costs, days, usual, figures).place();
        Backlog backlog = new SumBacklog(costs).sum();
        return new Calendar(
                open,
                new FindCalls(costs, usual, new TellCall(ledger, figures)).find(open, backlog),
                new WorkDays(ledger).onOrAfter(ledger.asOf() + 1),
                backlog,
                new SumWaiting(costs, ledger.asOf() - YEAR + 1).sum(),
                OpenTickets.balance(ledger, open));
    }
}
