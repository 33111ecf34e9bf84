package benchtrue.calendar;

import benchtrue.calendar.PromiseModel.Case;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.statistics.KaplanMeier;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Gives promises at past cut-offs with what was known then, and sees what became of them; the level at which the next are
 * given is the one that would have kept {@value #KEPT} of the earlier ones (open visits censored).
 */
final class TryPromises {
    /** Share of promises that should be kept. */
    static final double KEPT = 0.8;

    private static final int CUT_OFFS = 24;
    private static final int MONTH = 30;
    private static final int MOST_CASES = 150;

    /** A shop changes; older promises say little of the next. */
    private static final int NEWEST = 150;

    private static final int NEWEST_STANDING = 100;

    /** What is aimed at, a little above, since the past that it is learnt from is but a sample. */
    private static final double AIM = 0.815;

    private static final double LEAST = 0.7;

    private static final double SUREST = 0.99;

    private static final double STEP = 0.02;

    /** Promises' worth of trust in the plain level. */
    private static final double PRIOR = 20;

    private final Ledger ledger;
    private final Visits visits;
    private final int[] byReady;
    private final List<Tried> fresh = new ArrayList<>();
    private final List<Tried> standing = new ArrayList<>();
    private int cutOffs;

    TryPromises(Ledger ledger, Visits visits) {
        this.ledger = ledger;
        this.visits = visits;
        byReady = PromiseModel.byReady(visits);
    }

    /**
     * A promise that was tried.
     *
     * @param day when it was given
     * @param days promised
     * @param usual days until it is ready by the usual time once begun, plus the queue
     */
    private record Tried(int ticket, int day, DayChances chances, int days, double usual) {}

    /** Tries promises up to the as-of date. */
    void run() {
        for (int back = CUT_OFFS; back >= 1; back--) {
            int day = ledger.asOf() - back * MONTH;
            PromiseModel model = model(day);
            if (model.knowsEnough()) {
                cutOffs++;
                cutOff(model, day);
            }
        }
    }

    PromiseModel model(int day) {
        return new PromiseModel(visits, byReady, day, ledger.repairTypes().size());
    }

    private void cutOff(PromiseModel model, int day) {
        double freshLevel = freshLevel(day);
        double standingLevel = standingLevel(day);
        List<Tried> given = new ArrayList<>();
        for (int ticket : some(ticket -> visits.opened(ticket) > day && visits.opened(ticket) <= day + MONTH)) {
            given.add(tried(model, ticket, visits.opened(ticket), freshLevel));
        }
        for (int ticket : some(ticket -> visits.opened(ticket) <= day && !isOver(ticket, day))) {
            Tried promise = tried(model, ticket, day, standingLevel);
            if (isMoving(ticket, day) && promise.days < DayChances.MOST) {
                standing.add(promise);
            }
        }
        fresh.addAll(given);
    }

    private boolean isOver(int ticket, int day) {
        int ready = visits.ready(ticket);
        return Absent.has(ready) && ready <= day;
    }

    /** Visits that nobody wanted work on need no promise; of very many every so manieth is tried. */
    private int[] some(IntPredicate which) {
        int[] all = IntStream.range(0, visits.size())
                .filter(ticket -> !Absent.has(visits.gone(ticket)))
                .filter(which)
                .toArray();
        int step = (all.length + MOST_CASES - 1) / MOST_CASES;
        return IntStream.range(0, all.length)
                .filter(i -> i % Math.max(1, step) == 0)
                .map(i -> all[i])
                .toArray();
    }

    private Tried tried(PromiseModel model, int ticket, int day, double level) {
        DayChances chances = model.ahead(caseOf(model, ticket, day));
        double usual = model.usual(ticket) + visits.queue(visits.opened(ticket));
        return new Tried(ticket, day, chances, chances.enough(level), usual);
    }

    /** Returns whether a visit is not one of those that were begun and left lying. */
    boolean isMoving(int ticket, int day) {
        return !visits.begun(ticket, day) || visits.days().pause(ticket, day) <= UsualLengths.SHORT_PAUSE;
    }

    /** Returns a visit as it stood on a day. */
    Case caseOf(PromiseModel model, int ticket, int day) {
        TicketDays days = visits.days();
        int opened = visits.opened(ticket);
        int waited = days.waited(ticket, opened, day, TicketDays.OF_ITS_OWN);
        return new Case(
                visits.begun(ticket, day) && day > opened,
                day - opened - waited,
                waited,
                visits.left(ticket, day),
                model.expectedWait(ticket),
                visits.queue(opened));
    }

    /** Returns the level for new visits, from all that is known on a day. */
    double freshLevel(int day) {
        return level(fresh, NEWEST, freshAim(day), day);
    }

    /** Returns the level for visits that stand in the shop. */
    double standingLevel(int day) {
        return level(standing, NEWEST_STANDING, standingAim(day), day);
    }

    private double level(List<Tried> tried, int newest, double wanted, int day) {
        double aim = Math.max(LEAST, Math.min(SUREST, wanted));
        List<Tried> earlier = tried.subList(Math.max(0, tried.size() - newest), tried.size());
        double[] share = new double[earlier.size()];
        boolean[] over = new boolean[share.length];
        for (int i = 0; i < share.length; i++) {
            Tried promise = earlier.get(i);
            over[i] = isOver(promise.ticket, day);
            int took = (over[i] ? visits.ready(promise.ticket) : day) - promise.day;
            share[i] = promise.chances.within(took - 1);
        }
        double needed =
                share.length == 0 ? Double.NaN : KaplanMeier.of(share, over).quantile(aim);
        double seen = Double.isNaN(needed) ? aim : Math.min(SUREST, needed);
        return (share.length * seen + PRIOR * aim) / (share.length + PRIOR);
    }

    /** Where fewer were kept than should have been, more is aimed at by as much. */
    private double freshAim(int day) {
        List<Tried> due = due(fresh, day);
        return AIM + Math.max(0, missing(due)) * due.size() / (due.size() + PRIOR);
    }

    /**
     * More is aimed at with each one broken, less with each one kept, so that in the long run as many are kept, however the shop
     * changes (Gibbs, Candes 2021).
     */
    private double standingAim(int day) {
        List<Tried> due = due(standing, day);
        return AIM + STEP * missing(due) * due.size();
    }

    private static List<Tried> due(List<Tried> tried, int day) {
        return tried.stream()
                .filter(promise -> promise.day + promise.days <= day)
                .toList();
    }

    private double missing(List<Tried> due) {
        return due.isEmpty() ? 0 : KEPT - kept(due, promise -> promise.days);
    }

    /** Returns how the promises given to new visits did. */
    PromiseTrial trial() {
        return of(fresh);
    }

    /** Returns how the promises given to visits that stood in the shop did. */
    PromiseTrial standingTrial() {
        return of(standing);
    }

    /** Only promises whose day has come tell; those of open visits are broken. */
    private PromiseTrial of(List<Tried> all) {
        List<Tried> known = due(all, ledger.asOf());
        List<Tried> own = known.stream()
                .filter(promise -> Absent.has(ledger.tickets().promised(promise.ticket)))
                .toList();
        return new PromiseTrial(
                known.size(),
                cutOffs,
                kept(known, promise -> promise.days),
                average(known, promise -> promise.days),
                daysForTheSame(known, promise -> promise.usual),
                own.size(),
                kept(own, this::own),
                average(own, promise -> promise.days),
                daysForTheSame(own, this::own));
    }

    private double own(Tried promise) {
        return ledger.tickets().promised(promise.ticket) - promise.day;
    }

    /** Returns the days that a visit took from the day of the promise; endless where it is not ready. */
    private double took(Tried promise) {
        return isOver(promise.ticket, ledger.asOf())
                ? visits.ready(promise.ticket) - promise.day
                : Double.POSITIVE_INFINITY;
    }

    private double kept(List<Tried> promises, ToDoubleFunction<Tried> days) {
        return promises.stream()
                        .filter(promise -> took(promise) <= days.applyAsDouble(promise))
                        .count()
                / (double) promises.size();
    }

    private static double average(List<Tried> promises, ToDoubleFunction<Tried> days) {
        return promises.stream().mapToDouble(days).average().orElse(Double.NaN);
    }

    /** Returns the average days of another rule once moved by as many days as it needs to keep the same share. */
    private double daysForTheSame(List<Tried> promises, ToDoubleFunction<Tried> rival) {
        double[] missing = promises.stream()
                .mapToDouble(promise -> took(promise) - rival.applyAsDouble(promise))
                .sorted()
                .toArray();
        int kept = (int) StrictMath.rint(kept(promises, promise -> promise.days) * promises.size());
        return kept == 0 ? Double.NaN : average(promises, rival) + missing[kept - 1];
    }
}
