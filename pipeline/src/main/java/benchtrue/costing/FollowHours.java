package benchtrue.costing;

import benchtrue.hours.EntryPlaces;
import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.TimeEntries;
import benchtrue.statistics.LargestRemainder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Puts the cost of time on the lines where the time went. An entry is priced once; an entry that names its line costs that
 * line; what a ticket's other entries cost is dealt over its lines by the seconds dealt to them.
 */
final class FollowHours {
    private static final List<WorkKind> ELSEWHERE =
            List.of(WorkKind.UNQUOTED, WorkKind.WITHOUT_LINE, WorkKind.HANDLING, WorkKind.QUOTING, WorkKind.SHOP);

    private final JobLines jobs;
    private final EntryPrice price;
    private final long[] known;
    private final BitSet incomplete = new BitSet();
    private final long[] pool;
    private final BitSet poolIncomplete = new BitSet();
    private final long[] elsewhere = new long[WorkKind.values().length];
    private long read;

    private FollowHours(JobLines jobs, EntryPrice price) {
        this.jobs = jobs;
        this.price = price;
        known = new long[jobs.size()];
        pool = new long[jobs.ledger().tickets().size()];
    }

    /** Returns what time cost, on the lines and elsewhere. */
    static HourCosts follow(JobLines jobs, EntryPrice price) {
        return new FollowHours(jobs, price).follow();
    }

    private HourCosts follow() {
        TimeEntries time = jobs.ledger().time();
        for (int entry = 0; entry < time.size(); entry++) {
            place(entry);
        }
        dealPools();
        return new HourCosts(known, incomplete, read, terms());
    }

    private void place(int entry) {
        TimeEntries time = jobs.ledger().time();
        long cost = price.of(entry);
        if (Absent.has(cost)) {
            read = Math.addExact(read, cost);
        }
        switch (jobs.places().place(entry)) {
            case ON_LINE -> add(known, incomplete, jobs.places().line(entry), cost);
            case OVER_TICKET -> add(pool, poolIncomplete, time.ticket(entry), cost);
            case OVER_TICKETS -> share(entry, cost);
            case UNQUOTED -> elsewhere(WorkKind.UNQUOTED, cost);
            case WITHOUT_LINE -> elsewhere(WorkKind.WITHOUT_LINE, cost);
            case BY_KIND -> elsewhere(WorkKinds.ofTime(time.kind(entry)), cost);
        }
    }

    private void share(int entry, long cost) {
        EntryPlaces places = jobs.places();
        int[] tickets = jobs.ledger().time().sharedTickets(entry);
        long[] parts = LargestRemainder.deal(Absent.firstOf(cost, 0), places.sharedSeconds(entry));
        for (int i = 0; i < tickets.length; i++) {
            add(pool, poolIncomplete, tickets[i], Absent.has(cost) ? parts[i] : Absent.AMOUNT);
        }
    }

    private static void add(long[] sums, BitSet unknown, int place, long cost) {
        if (Absent.has(cost)) {
            sums[place] = Math.addExact(sums[place], cost);
        } else {
            unknown.set(place);
        }
    }

    private void elsewhere(WorkKind where, long cost) {
        elsewhere[where.ordinal()] += Absent.firstOf(cost, 0);
    }

    private void dealPools() {
        QuotedLines lines = jobs.ledger().lines();
        BitSet dealt = new BitSet();
        for (int from = 0, to; from < jobs.size(); from = to) {
            int ticket = lines.ticket(from);
            for (to = from + 1; to < jobs.size() && lines.ticket(to) == ticket; ) {
                to++;
            }
            if (pool[ticket] != 0 || poolIncomplete.get(ticket)) {
                dealt.set(ticket, dealPool(ticket, from, to));
            }
        }
        for (int ticket = 0; ticket < pool.length; ticket++) {
            if (!dealt.get(ticket)) {
                elsewhere(WorkKind.WITHOUT_LINE, pool[ticket]);
            }
        }
    }

    /** Returns false where the ticket has no line that could carry the cost. */
    private boolean dealPool(int ticket, int from, int to) {
        int[] takers = takers(from, to);
        if (takers.length == 0) {
            return false;
        }
        long[] parts = LargestRemainder.deal(pool[ticket], weights(takers));
        for (int i = 0; i < takers.length; i++) {
            known[takers[i]] = Math.addExact(known[takers[i]], parts[i]);
            if (poolIncomplete.get(ticket)) {
                incomplete.set(takers[i]);
            }
        }
        return true;
    }

    private long[] weights(int[] takers) {
        boolean split = jobs.splitSeconds(takers[0]) > 0;
        return Arrays.stream(takers)
                .mapToLong(line -> split ? jobs.splitSeconds(line) : Math.max(0, jobs.actualSeconds(line)))
                .toArray();
    }

    /** Lines with dealt seconds; without any, every accepted line. */
    private int[] takers(int from, int to) {
        int[] withSeconds = IntStream.range(from, to)
                .filter(line -> jobs.splitSeconds(line) > 0)
                .toArray();
        if (withSeconds.length > 0) {
            return withSeconds;
        }
        return IntStream.range(from, to)
                .filter(line -> jobs.state(line).accepted())
                .toArray();
    }

    private List<Balance.Term> terms() {
        List<Balance.Term> terms = new ArrayList<>();
        long onIncomplete = incomplete.stream().mapToLong(line -> known[line]).reduce(0, Math::addExact);
        long onLines = Arrays.stream(known).reduce(0, Math::addExact) - onIncomplete;
        terms.add(new Balance.Term("lines", onLines));
        terms.add(new Balance.Term("lines with hours whose cost is not known", onIncomplete));
        for (WorkKind where : ELSEWHERE) {
            terms.add(new Balance.Term(where.words(), elsewhere[where.ordinal()]));
        }
        return terms;
    }
}
