package benchtrue.hours;

import benchtrue.hours.EntryPlaces.Place;
import benchtrue.hours.JobLines.LineColumns;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.LineState;
import benchtrue.shop.Outcome;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.TicketStatus;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeKind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Job lines whose unlabelled hours are dealt in whole seconds by quoted hours, so that a test can work money out by hand. */
public final class PlainJobLines {
    private final Ledger ledger;
    private final int size;
    private final byte[] state;
    private final long[] labelled;
    private final long[] split;
    private final byte[] place;
    private final int[] entryLine;
    private final Map<Integer, long[]> shared = new HashMap<>();

    private PlainJobLines(Ledger ledger) {
        this.ledger = ledger;
        size = ledger.lines().size();
        state = new byte[size];
        labelled = new long[size];
        split = new long[size];
        place = new byte[ledger.time().size()];
        entryLine = new int[ledger.time().size()];
    }

    /** Returns the lines of a ledger. */
    public static JobLines of(Ledger ledger) {
        return new PlainJobLines(ledger).lines();
    }

    private JobLines lines() {
        IntStream.range(0, size)
                .forEach(line -> state[line] = (byte) state(line).ordinal());
        IntStream.range(0, place.length).forEach(this::place);
        boolean[] judged = new boolean[size];
        double[] quoted = new double[size];
        long[] bookThen = new long[size];
        for (int line = 0; line < size; line++) {
            judged[line] = state(line) == LineState.CLOSED && ledger.lines().chargeKind(line) == ChargeKind.REPAIR;
            quoted[line] = ledger.lines().quotedSeconds(line) / 3_600.0;
            bookThen[line] = book(line);
        }
        LineColumns columns = new LineColumns(
                state,
                labelled,
                split,
                new long[size],
                new long[size],
                bookThen,
                quoted,
                new int[size],
                judged,
                evidence(),
                new byte[size],
                new double[size]);
        return new JobLines(
                ledger,
                columns,
                null,
                List.of(),
                List.of(),
                List.of(),
                new EntryPlaces(place, entryLine, shared),
                new SplitBasis(1, 0, 0, 0, 0));
    }

    private byte[] evidence() {
        byte[] evidence = new byte[size];
        for (int line = 0; line < size; line++) {
            SplitEvidence known = split[line] > 0
                    ? SplitEvidence.SPLIT
                    : labelled[line] > 0 ? SplitEvidence.LOGGED : SplitEvidence.NONE;
            evidence[line] = (byte) known.ordinal();
        }
        return evidence;
    }

    private long book(int line) {
        String type = ledger.repairTypes().name(ledger.lines().repairType(line));
        return type.equals(PriceBooks.ONE_OFF)
                ? Absent.AMOUNT
                : ledger.books().type(type, ledger.asOf()).orElseThrow().bookSeconds();
    }

    private LineState state(int line) {
        TicketStatus ticket = ledger.tickets().status(ledger.lines().ticket(line));
        if (ticket == TicketStatus.VOID) {
            return LineState.VOID;
        }
        if (ledger.lines().outcome(line) == Outcome.DECLINED) {
            return LineState.DECLINED;
        }
        return ticket == TicketStatus.OPEN ? LineState.OPEN : LineState.CLOSED;
    }

    private int[] accepted(int ticket) {
        return IntStream.range(0, size)
                .filter(line -> ledger.lines().ticket(line) == ticket
                        && state[line] != LineState.VOID.ordinal()
                        && state[line] != LineState.DECLINED.ordinal())
                .toArray();
    }

    private void place(int entry) {
        TimeEntries time = ledger.time();
        entryLine[entry] = Absent.INDEX;
        if (time.kind(entry) != TimeKind.BENCH || time.ticket(entry) == Absent.INDEX) {
            place[entry] = (byte) Place.BY_KIND.ordinal();
        } else if (time.ticket(entry) == TimeEntries.SHARED) {
            place[entry] = (byte) Place.OVER_TICKETS.ordinal();
            int[] tickets = time.sharedTickets(entry);
            shared.put(entry, equally(time.seconds(entry), tickets.length));
            IntStream.range(0, tickets.length).forEach(i -> split(tickets[i], shared.get(entry)[i]));
        } else if (time.line(entry) != Absent.INDEX) {
            place[entry] = (byte) Place.ON_LINE.ordinal();
            entryLine[entry] = time.line(entry);
            labelled[time.line(entry)] += time.seconds(entry);
        } else if (time.repairType(entry) != Absent.INDEX) {
            place[entry] = (byte) Place.UNQUOTED.ordinal();
        } else {
            boolean carried = split(time.ticket(entry), time.seconds(entry));
            place[entry] = (byte) (carried ? Place.OVER_TICKET : Place.WITHOUT_LINE).ordinal();
        }
    }

    private static long[] equally(long seconds, int parts) {
        long[] each = new long[parts];
        for (int i = 0; i < parts; i++) {
            each[i] = seconds / parts + (i < seconds % parts ? 1 : 0);
        }
        return each;
    }

    /** Deals seconds by quoted hours, the rest to the last line; returns false without a line. */
    private boolean split(int ticket, long seconds) {
        int[] lines = accepted(ticket);
        long quoted = IntStream.of(lines)
                .mapToLong(line -> ledger.lines().quotedSeconds(line))
                .sum();
        long left = seconds;
        for (int i = 0; i < lines.length; i++) {
            long part = i == lines.length - 1 ? left : seconds * ledger.lines().quotedSeconds(lines[i]) / quoted;
            split[lines[i]] += part;
            left -= part;
        }
        return lines.length > 0;
    }
}
