package benchtrue.revision;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.QuotedLines;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * The cut-offs of the back-test: first days of calendar quarters with at least twelve months of closed lines before them and
 * at least {@value #ENOUGH} lines quoted in them that are closed by now.
 */
final class Quarters {
    /** Months in one. */
    static final int MONTHS = 3;

    private static final int ENOUGH = 5;
    private static final int HISTORY_MONTHS = 12;

    private Quarters() {}

    /** Returns the first days, oldest first. */
    static List<LocalDate> of(JobLines jobs) {
        QuotedLines lines = jobs.ledger().lines();
        TreeMap<LocalDate, Integer> quoted = new TreeMap<>();
        int firstClosed = Integer.MAX_VALUE;
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line)) {
                int opened = jobs.ledger().tickets().opened(lines.ticket(line));
                int closed = jobs.ledger().tickets().closed(lines.ticket(line));
                firstClosed = Math.min(firstClosed, Absent.has(closed) ? closed : firstClosed);
                quoted.merge(begin(Absent.firstOf(lines.quotedOn(line), opened)), 1, Integer::sum);
            }
        }
        List<LocalDate> days = new ArrayList<>();
        if (firstClosed < Integer.MAX_VALUE) {
            LocalDate first = LocalDate.ofEpochDay(firstClosed).plusMonths(HISTORY_MONTHS);
            quoted.tailMap(first, true).forEach((day, count) -> {
                if (count >= ENOUGH) {
                    days.add(day);
                }
            });
        }
        return days;
    }

    private static LocalDate begin(int day) {
        LocalDate date = LocalDate.ofEpochDay(day);
        return LocalDate.of(date.getYear(), date.getMonthValue() - (date.getMonthValue() - 1) % MONTHS, 1);
    }
}
