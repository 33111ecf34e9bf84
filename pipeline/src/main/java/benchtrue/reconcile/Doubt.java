package benchtrue.reconcile;

/** Everything that is listed about rows that are used all the same. The names are stable. */
enum Doubt {
    SAME_WORK_TWICE("The same work stands in two files under other keys: it counts once."),
    PERHAPS_TWICE(
            "The same technician, ticket, day and hours stand in two files, perhaps the same work twice: both count, and no"
                    + " repair is judged of which they are much."),
    AFTER_AS_OF("Rows dated after the as-of date: read, but in no figure."),
    KEY_CHANGED("The newer export says something else under the same key: the newer row counts."),
    KEY_TWICE_IN_FILE("One file has the same key twice with different contents: the later row counts."),
    TICKET_AGAINST_ITSELF("The rows of a ticket's lines contradict each other on the ticket: the first row counts."),
    SOURCE_NOT_FOUND(
            "A corrected row came back, but the row it came from is not there any more: it counts as a new row."),
    UNKNOWN_LINE("The time names a line that its ticket lacks: it counts as logged to the ticket as a whole."),
    UNKNOWN_PART_LINE("The part names a line that its ticket lacks: it counts for the ticket as a whole."),
    UNKNOWN_EARLIER_TICKET("Names an earlier ticket or line that is not there: the reference is left out."),
    CLOSED_BEFORE_OPENED("The ticket was closed, or finished, before it was opened: one of the dates is wrong."),
    NO_OPENING_DAY("No day of opening: that of the first quote counts, else of the first work."),
    NO_CLASS("No class of instrument: it counts as a class of its own."),
    STATUS_AGAINST_DATES("The status and the closing day contradict each other: the status counts."),
    QUOTED_BEFORE_FIRST_BOOK("Quoted before the first price book took effect: the first one counts."),
    HOURS_FROM_PRICE("No hours were quoted: the price over that of a bench hour counts as hours."),
    TIME_AFTER_CLOSE("Time worked after the ticket was closed."),
    TIME_BEFORE_OPENING("Time worked before the ticket was opened."),
    CIRCULAR_REWORK("Names itself as the earlier ticket or line, by way of others or not: the reference is left out."),
    END_BEFORE_START("The end lies before the start, more than a night apart: the hours stated beside them count."),
    OVER_MIDNIGHT("The end lies before the start: taken as work over midnight."),
    CLOCKS_CHANGED("The clocks were changed between start and end: the hours that passed count."),
    HOURS_AGAINST_CLOCK("The hours differ from the time between start and end: the hours count."),
    CLOCK_TIMES_OVERLAP("One technician's clock times overlap: the overlap is shared, no minute counts twice."),
    DAY_OVER_24_HOURS("A technician's day adds up to more than 24 hours."),
    CANCELLED_PAIR("A negative entry cancels one of the same technician and ticket: neither counts."),
    BENCH_WITHOUT_TICKET("Bench time without a ticket: it counts as shop time."),
    NO_WAGE("The technician has no wage on that day: the hours count, the cost is incomplete."),
    KEY_USED_AGAIN(
            "After half a year without any time, or a month and at a lower wage, a technician works again with a new wage since, and"
                    + " is perhaps somebody else:"
                    + " each hour counts at the wage of its day, and all as one person's."),
    HOURS_EQUAL_QUOTE("The hours logged to a line equal its quote to the minute: perhaps copied, not measured."),
    PERHAPS_OF_ANOTHER(
            "The ticket took at least twice what was quoted, and another that was open has no hours: perhaps logged to each"
                    + " other."),
    ZERO_COST_PART("A part with a cost of zero."),
    OUTLYING_QUANTITY("A quantity more than ten times what is usual for that part.");

    private final String words;

    Doubt(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** Returns what is doubtful, without what was assumed. */
    String what() {
        return split()[0] + (split().length > 1 ? "." : "");
    }

    /** Returns what was assumed all the same. */
    String assumed() {
        return split().length > 1 ? split()[1] : "It counts as it stands.";
    }

    private String[] split() {
        return words.split(": ", 2);
    }
}
