package benchtrue.calendar;

import benchtrue.calendar.PromiseModel.Case;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.RepairType;
import java.util.function.ToLongFunction;

/** The days to promise today: for every open ticket whose day the past tells, and for each repair that comes in now. */
final class GivePromises {
    /** Nobody does more of the shortest safe hours in a day. */
    private static final double FULL_DAY = 8;

    private final Ledger ledger;
    private final Visits visits;
    private final WorkDays workDays;
    private final TryPromises tried;
    private final PromiseModel model;
    private final double freshLevel;
    private final double standingLevel;

    GivePromises(Ledger ledger, Visits visits, WorkDays workDays) {
        this.ledger = ledger;
        this.visits = visits;
        this.workDays = workDays;
        tried = new TryPromises(ledger, visits);
        tried.run();
        model = tried.model(ledger.asOf());
        freshLevel = tried.freshLevel(ledger.asOf());
        standingLevel = tried.standingLevel(ledger.asOf());
    }

    /** Returns how such promises would have done. */
    PromiseTrial trial() {
        return tried.trial();
    }

    /** Returns how such promises would have done on visits that stood in the shop. */
    PromiseTrial openTrial() {
        return tried.standingTrial();
    }

    private boolean isTold(int ticket) {
        return model.knowsEnough()
                && !Absent.has(visits.gone(ticket))
                && !Absent.has(visits.ready(ticket))
                && tried.isMoving(ticket, ledger.asOf())
                && ahead(ticket).enough(standingLevel) < DayChances.MOST;
    }

    private DayChances ahead(int ticket) {
        return model.ahead(tried.caseOf(model, ticket, ledger.asOf()));
    }

    /** Returns the day to promise for an open ticket, or {@link Absent#DAY} where the past does not tell. */
    int open(int ticket) {
        if (!isTold(ticket)) {
            return Absent.DAY;
        }
        double least = 0;
        for (int type : visits.types(ticket)) {
            least += leastHours(type);
        }
        int days = Math.max(ahead(ticket).enough(standingLevel), floor(least - visits.worked(ticket, ledger.asOf())));
        return workDays.onOrAfter(ledger.asOf() + Math.max(1, days));
    }

    /** Returns the chance that an open ticket is not ready by a day to come; NaN where the past does not tell. */
    double chanceLate(int ticket, int day) {
        return isTold(ticket) ? 1 - ahead(ticket).within(day - ledger.asOf()) : Double.NaN;
    }

    /** Returns the days to promise today for a visit with one repair at book hours, or {@link Absent#DAY}. */
    int fresh(int type) {
        double hours = book(type, RepairType::bookSeconds);
        if (!model.knowsEnough() || !(hours > 0)) {
            return Absent.DAY;
        }
        Case now = new Case(false, 0, 0, hours, model.ownTime(type), visits.queue(ledger.asOf()));
        int days = Math.max(model.ahead(now).enough(freshLevel), floor(leastHours(type)));
        return workDays.onOrAfter(ledger.asOf() + days) - ledger.asOf();
    }

    private double leastHours(int type) {
        return book(type, row -> Absent.firstOf(row.leastSeconds(), 0));
    }

    private double book(int type, ToLongFunction<RepairType> seconds) {
        return ledger.books()
                .type(ledger.repairTypes().name(type), ledger.asOf())
                .map(row -> Hours.of(seconds.applyAsLong(row)))
                .orElse(0.0);
    }

    private static int floor(double leastHours) {
        return (int) StrictMath.ceil(Math.max(0, leastHours) / FULL_DAY);
    }
}
