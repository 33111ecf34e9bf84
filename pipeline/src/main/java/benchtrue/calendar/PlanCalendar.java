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
        WorkDays workDays = new WorkDays(ledger);
        Visits visits = new Visits(costs.jobs(), days);
        GivePromises promises = new GivePromises(ledger, visits, workDays);
        List<OpenTicket> open = new OpenTickets(costs, days, usual, promises, figures).place();
        Backlog backlog = new SumBacklog(costs, promises).sum();
        SumWorkAhead ahead = new SumWorkAhead(ledger, visits, backlog.lines());
        return new Calendar(
                open,
                new FindCalls(costs, usual, new TellCall(ledger, figures)).find(open, backlog),
                workDays.onOrAfter(ledger.asOf() + 1),
                backlog,
                ahead.byWeek(promises::open, figures),
                ahead.byFamily(families),
                new SumWaiting(costs, ledger.asOf() - YEAR + 1).sum(),
                new SumWeeks(ledger, visits, promises, families, settings.falseDiscovery()).sum(),
                promises.trial(),
                promises.openTrial(),
                OpenTickets.balance(ledger, open));
    }
}
