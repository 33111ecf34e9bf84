package benchtrue.sample;

import benchtrue.sample.TimeRows.Typed;
import java.io.IOException;
import java.time.LocalDate;

/** Writes the rows that are wrong on purpose, beside the rows of the visit that carries them. */
final class FaultRows {
    /** A technician whose only wage begins after the entries. */
    static final String NO_WAGE_YET = "Lark";

    private static final int HOUR = 3_600;
    private static final String NOBODY = "Q-0007";
    private static final int IN_FUTURE = (int) LocalDate.of(2027, 1, 15).toEpochDay();
    private static final int LAST_OF_FILE = History.AS_OF;

    private final Shelf shelf;
    private final Bench bench;
    private final Tally tally;

    FaultRows(Shelf shelf, Bench bench, Tally tally) {
        this.shelf = shelf;
        this.bench = bench;
        this.tally = tally;
    }

    /** Writes what a visit's fault asks for; hours that count are added to its first line. */
    void plant(Worked worked) throws IOException {
        Fault fault = worked.visit().fault();
        if (fault == Fault.NONE) {
            return;
        }
        boolean planted = fault.ownVisit() ? plantCounting(fault, worked) : plantBeside(fault, worked.visit());
        if (planted) {
            tally.add(fault.word());
        }
    }

    private boolean plantBeside(Fault fault, Visit visit) throws IOException {
        String ticket = visit.ticket();
        int day = visit.opened();
        Typed entry = Typed.of(ticket, "Wren", day, "1.25");
        switch (fault) {
            case UNREADABLE_DATE -> shelf.time().write(entry.dated("2025-13-07"), day);
            case UNREADABLE_HOURS -> shelf.time().write(Typed.of(ticket, "Wren", day, "about two"), day);
            case UNREADABLE_QUOTE -> shelf.lines().writeFaulty(ticket, "7", "nut-replace", "three");
            case UNREADABLE_COST -> shelf.parts().writeFaulty(ticket, 1, "n/a", day);
            case UNREADABLE_OPENED -> shelf.tickets().writeFaulty("S-" + visit.index(), "2025-02-31");
            case MISSING_TICKET_KEY -> shelf.tickets().writeFaulty("", "2025-02-28");
            case MISSING_LINE_KEY -> shelf.lines().writeFaulty(ticket, "", "nut-replace", "1.75");
            case MISSING_TECHNICIAN -> shelf.time().write(Typed.of(ticket, "", day, "1.25"), day);
            case UNKNOWN_TICKET -> shelf.time().write(Typed.of(NOBODY, "Wren", day, "1.25"), day);
            case NEAR_MISS_TICKET ->
                shelf.time().write(Typed.of(nearly(ticket, visit.index()), "Wren", day, "1.25"), day);
            case LINE_OF_UNKNOWN_TICKET -> shelf.lines().writeFaulty(NOBODY, "" + visit.index(), "nut-replace", "1.75");
            case PART_OF_UNKNOWN_TICKET -> shelf.parts().writeFaulty(NOBODY, 1, "12.5", day);
            case NEGATIVE_HOURS -> shelf.time().write(Typed.of(ticket, "Wren", day, "-1.37"), day);
            case END_BEFORE_START -> shelf.time().write(entry.from("15:00", "13:30"), day);
            case WAIT_ENDS_BEFORE_START ->
                shelf.waits().write(ticket, new Pause(day + 1, day - 8, benchtrue.shop.WaitReason.APPROVAL));
            case OVER_24_HOURS -> shelf.time().write(Typed.of(ticket, "Wren", day, "26"), day);
            case UNKNOWN_REPAIR_TYPE -> shelf.lines().writeFaulty(ticket, "8", "harp-restring", "2");
            case FUTURE_DATE -> shelf.time().write(Typed.of(ticket, "Wren", IN_FUTURE, "1.25"), LAST_OF_FILE);
            case ZERO_COST_PART -> shelf.parts().writeFaulty(ticket, 1, "0", day);
            case OUTLYING_QUANTITY -> shelf.parts().writeFaulty(ticket, 1_200, "2.5", day);
            case CANCELLED_PAIR -> {
                shelf.time().write(Typed.of(ticket, "Wren", day, "3.1"), day);
                shelf.time().write(Typed.of(ticket, "Wren", day, "-3.1"), day);
            }
            default -> throw new IllegalStateException(fault + " needs a visit of its own");
        }
        return true;
    }

    /** Returns a ticket's key as it is mistyped: in small letters, without its hyphen, or with a zero too many. */
    private static String nearly(String ticket, int index) {
        return switch (index % 3) {
            case 0 -> ticket.replace('B', 'b');
            case 1 -> ticket.replace("-", "") + " ";
            default -> ticket.replace("-", "-0");
        };
    }

    private boolean plantCounting(Fault fault, Worked worked) throws IOException {
        Visit visit = worked.visit();
        Bench.Whole whole = bench.takeWhole(visit.opened(), StrictMath.min(worked.closed(), History.AS_OF - 60));
        if (whole.day() == Bench.NEVER) {
            return false;
        }
        String name = shelf.name(whole.technician());
        Typed entry = Typed.of(visit.ticket(), name, whole.day(), "0.5");
        switch (fault) {
            case DAY_OVER_24_HOURS -> {
                count(worked, entry("13", entry).onLine("1"), whole.day(), 13 * HOUR);
                count(worked, entry("12.5", entry).onLine("1"), whole.day(), 25 * HOUR / 2);
            }
            case OVERLAPPING_CLOCKS -> {
                count(worked, entry.from("09:00", "12:00").onLine("1"), whole.day(), 3 * HOUR);
                count(worked, entry.from("11:00", "13:00").onLine("1"), whole.day(), HOUR);
            }
            case NO_WAGE ->
                count(worked, Typed.of(visit.ticket(), NO_WAGE_YET, whole.day(), "2"), whole.day(), 2 * HOUR);
            case AFTER_CLOSE -> count(worked, entry.dated(text(worked.closed() + 4)), worked.closed() + 4, HOUR / 2);
            case BEFORE_OPENED -> count(worked, entry.dated(text(visit.opened() - 5)), visit.opened() - 5, HOUR / 2);
            case UNKNOWN_LINE -> count(worked, entry("1", entry).onLine("9"), whole.day(), HOUR);
            case FINER_THAN_A_SECOND -> count(worked, entry("0.3335", entry), whole.day(), HOUR / 3 + 1);
            case DOUBLE_ENTRY -> {
                count(worked, entry, whole.day(), HOUR / 2);
                count(worked, entry, whole.day(), HOUR / 2);
            }
            case NO_LINES, ALL_DECLINED -> count(worked, entry, whole.day(), HOUR / 2);
            default -> throw new IllegalStateException(fault + " needs no visit of its own");
        }
        return true;
    }

    private static Typed entry(String hours, Typed entry) {
        return new Typed(entry.ticket(), entry.line(), entry.technician(), entry.date(), hours, "", "");
    }

    private static String text(int day) {
        return LocalDate.ofEpochDay(day).toString();
    }

    private void count(Worked worked, Typed entry, int day, long seconds) throws IOException {
        shelf.time().write(entry, day);
        if (!worked.lines().isEmpty() && worked.lines().get(0).accepted()) {
            worked.loggedSeconds()[0] += seconds;
        }
    }
}
