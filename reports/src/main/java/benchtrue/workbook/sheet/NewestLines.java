package benchtrue.workbook.sheet;

import benchtrue.hours.JobLines;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.Tickets;
import java.util.Arrays;

/** Picks the lines opened last where a sheet can't take all. */
public final class NewestLines {
    private NewestLines() {}

    /** Returns at most {@code most} of some lines, in their order: those of the tickets opened last. */
    public static int[] of(JobLines jobs, int[] lines, int most) {
        if (lines.length <= most) {
            return lines;
        }
        Tickets tickets = jobs.ledger().tickets();
        QuotedLines quoted = jobs.ledger().lines();
        int[] sorted = Arrays.stream(lines)
                .map(line -> tickets.opened(quoted.ticket(line)))
                .sorted()
                .toArray();
        int since = sorted[lines.length - most];
        int later = (int) Arrays.stream(sorted).filter(day -> day > since).count();
        int[] room = {most - later};
        return Arrays.stream(lines)
                .filter(line -> {
                    int opened = tickets.opened(quoted.ticket(line));
                    return opened > since || (opened == since && room[0]-- > 0);
                })
                .toArray();
    }
}
