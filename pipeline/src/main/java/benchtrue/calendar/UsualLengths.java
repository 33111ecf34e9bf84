package benchtrue.calendar;

import benchtrue.costing.Families;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Ints;
import benchtrue.shop.TicketStatus;
import benchtrue.shop.Wait;
import benchtrue.shop.WaitReason;
import benchtrue.statistics.KaplanMeier;
import benchtrue.statistics.Quantile;
import java.util.Arrays;
import java.util.function.IntPredicate;

/** How many days such stretches took on earlier tickets, those that still last counted as far as they have come. */
final class UsualLengths {
    /** Share of earlier stretches that a usual one stays within. */
    static final double USUAL = 0.8;

    /** With fewer ended stretches nothing is called usual. */
    private static final int LEAST = 8;

    /** A pause within work is long beyond so many of the pauses of its kind. */
    private static final double LONG = 0.95;

    private static final int QUARTER = 90;
    private static final int MONTH = 30;

    private static final int LEAST_PAUSES = 20;

    /** No pause of up to two weeks is called long (common practice, no source). */
    static final int SHORT_PAUSE = 14;

    private final Ledger ledger;
    private final TicketDays days;
    private final KaplanMeier[] waits = new KaplanMeier[WaitReason.values().length];
    private final KaplanMeier collecting;
    private final KaplanMeier queue;
    private final int[] familyOf;
    private final int[] pauses;

    /** By days: how many finished instruments stood so long at least, and how many of them have left. */
    private final int[] stood = new int[QUARTER + MONTH + 1];

    private final int[] gone = new int[stood.length];

    UsualLengths(Ledger ledger, TicketDays days, int[] familyOf, int families) {
        this.ledger = ledger;
        this.days = days;
        this.familyOf = familyOf;
        for (WaitReason reason : WaitReason.values()) {
            waits[reason.ordinal()] = waits(reason);
        }
        collecting = collected();
        queue = queued();
        pauses = pauses(families);
        countStanding();
    }

    private void countStanding() {
        eachTicket(ticket -> Absent.has(ledger.tickets().finished(ticket)), ticket -> {
            int closed = Absent.firstOf(ledger.tickets().closed(ticket), Integer.MAX_VALUE);
            int days = Math.min(closed, ledger.asOf()) - ledger.tickets().finished(ticket);
            for (int day = Math.min(days, stood.length - 1); day >= 0; day--) {
                stood[day]++;
                gone[day] += closed <= ledger.asOf() ? 1 : 0;
            }
        });
    }

    /** Returns the family of each ticket's largest accepted line, or {@link Absent#INDEX} where it has none. */
    static int[] families(Ledger ledger, Families families) {
        int[] family = new int[ledger.tickets().size()];
        long[] most = new long[family.length];
        Arrays.fill(family, Absent.INDEX);
        for (int line = 0; line < ledger.lines().size(); line++) {
            int ticket = ledger.lines().ticket(line);
            long quoted = Math.max(0, ledger.lines().judgedSeconds(line));
            if (OpenTickets.isWanted(ledger, line) && (family[ticket] < 0 || quoted > most[ticket])) {
                family[ticket] = families.ofType()[ledger.lines().repairType(line)];
                most[ticket] = quoted;
            }
        }
        return family;
    }

    private KaplanMeier waits(WaitReason reason) {
        Stretches all = new Stretches();
        for (Wait wait : ledger.waits()) {
            if (wait.reason() == reason && wait.from() <= ledger.asOf()) {
                boolean over = Absent.has(wait.to()) && wait.to() <= ledger.asOf();
                boolean lasts = !over && ledger.tickets().status(wait.ticket()) == TicketStatus.OPEN;
                // A wait without an end on a ticket that is closed says nothing of its length.
                if (over || lasts) {
                    all.add((over ? wait.to() : ledger.asOf()) - wait.from(), over);
                }
            }
        }
        return all.curve();
    }

    private KaplanMeier collected() {
        Stretches all = new Stretches();
        eachTicket(ticket -> Absent.has(ledger.tickets().finished(ticket)), ticket -> {
            boolean over = ledger.tickets().status(ticket) == TicketStatus.CLOSED;
            int end = over ? ledger.tickets().closed(ticket) : ledger.asOf();
            all.add(Absent.has(end) ? end - ledger.tickets().finished(ticket) : -1, over);
        });
        return all.curve();
    }

    private KaplanMeier queued() {
        Stretches all = new Stretches();
        eachTicket(ticket -> days.begun(ticket) || ledger.tickets().status(ticket) == TicketStatus.OPEN, ticket -> {
            int end = Absent.firstOf(days.first(ticket), ledger.asOf());
            all.add(end - ledger.tickets().opened(ticket), days.begun(ticket));
        });
        return all.curve();
    }

    private interface Taking {
        void take(int ticket);
    }

    private void eachTicket(IntPredicate which, Taking taking) {
        for (int ticket = 0; ticket < ledger.tickets().size(); ticket++) {
            if (ledger.tickets().status(ticket) != TicketStatus.VOID && which.test(ticket)) {
                taking.take(ticket);
            }
        }
    }

    /** By family, and for the whole shop at the end: beyond how many days a pause within work is long. */
    private int[] pauses(int families) {
        Ints[] seen = new Ints[families + 1];
        Arrays.setAll(seen, family -> new Ints());
        for (int ticket = 0; ticket < familyOf.length; ticket++) {
            for (int sitting = days.from(ticket) + 1; sitting < days.to(ticket); sitting++) {
                int before = days.day(sitting - 1);
                int pause = days.day(sitting)
                        - before
                        - days.waited(ticket, before, days.day(sitting), TicketDays.BEFORE_READY);
                if (pause > 0) {
                    seen[families].add(pause);
                    seen[familyOf[ticket] < 0 ? families : familyOf[ticket]].add(pause);
                }
            }
        }
        int shop = longest(seen[families], SHORT_PAUSE);
        return Arrays.stream(seen).mapToInt(pauses -> longest(pauses, shop)).toArray();
    }

    private static int longest(Ints seen, int otherwise) {
        double[] sorted =
                Quantile.sorted(Arrays.stream(seen.toArray()).asDoubleStream().toArray());
        return sorted.length < LEAST_PAUSES
                ? otherwise
                : Math.max(SHORT_PAUSE, (int) StrictMath.ceil(Quantile.of(sorted, LONG)));
    }

    /** Returns the days that a usual wait for a reason stays within, or {@link Absent#DAY} where too few ended. */
    int wait(WaitReason reason) {
        return usual(waits[reason.ordinal()]);
    }

    /** Returns the days within which finished instruments are usually collected. */
    int collecting() {
        return usual(collecting);
    }

    /** Returns the days within which work on a ticket usually begins. */
    int queue() {
        return usual(queue);
    }

    /** Returns the days beyond which a pause within the work on a ticket is unusual. */
    int pause(int ticket) {
        return pauses[familyOf[ticket] < 0 ? pauses.length - 1 : familyOf[ticket]];
    }

    private static int usual(KaplanMeier curve) {
        double days = curve.steps() < LEAST ? Double.NaN : curve.quantile(USUAL);
        return Double.isNaN(days) ? Absent.DAY : (int) StrictMath.ceil(days);
    }

    /**
     * Returns the share of finished instruments, standing so many days (beyond a quarter it makes no difference), that still
     * stood a month later, among those of which that is known; half a case is added on either side (Jeffreys 1946), so that
     * few cases never make it certain.
     */
    double stillThere(int standing) {
        int from = Math.min(standing, QUARTER);
        int stayed = stood[from + MONTH];
        int left = gone[from] - gone[from + MONTH];
        return (stayed + 0.5) / (stayed + left + 1);
    }
}
