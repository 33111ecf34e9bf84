package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Judged lines summed by repair type; every array has one value a repair-type code.
 *
 * @param lines judged lines
 * @param tickets tickets that hold at least one of them
 * @param quotedHours their quoted hours against today's book
 * @param actualSeconds their hours, without rework
 * @param reworkSeconds hours spent putting them right
 * @param yearlyHours quoted hours a year, from the lines closed in the last 365 days
 */
public record TypeTotals(
        int[] lines,
        int[] tickets,
        double[] quotedHours,
        long[] actualSeconds,
        long[] reworkSeconds,
        double[] yearlyHours) {
    /** Returns the sums over all judged lines. */
    public static TypeTotals of(JobLines jobs) {
        int types = jobs.ledger().repairTypes().size();
        TypeTotals sums = new TypeTotals(
                new int[types], new int[types], new double[types], new long[types], new long[types], new double[types]);
        LastYear year = LastYear.of(jobs);
        int[] lastTicket = new int[types];
        Arrays.fill(lastTicket, Absent.INDEX);
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line)) {
                sums.add(jobs, line, year, lastTicket);
            }
        }
        return sums;
    }

    /** Returns hours per quoted hour, rework included; NaN without judged lines. */
    public double load(int type) {
        return Hours.of(actualSeconds[type] + reworkSeconds[type]) / quotedHours[type];
    }

    /** Returns {@link #load} by repair type. */
    double[] loads() {
        return IntStream.range(0, lines.length).mapToDouble(this::load).toArray();
    }

    private void add(JobLines jobs, int line, LastYear year, int[] lastTicket) {
        int type = jobs.ledger().lines().repairType(line);
        int ticket = jobs.ledger().lines().ticket(line);
        lines[type]++;
        if (lastTicket[type] != ticket) {
            lastTicket[type] = ticket;
            tickets[type]++;
        }
        quotedHours[type] += jobs.todayQuotedHours(line);
        actualSeconds[type] += jobs.actualSeconds(line);
        reworkSeconds[type] += jobs.reworkSeconds(line);
        if (year.holds(ticket)) {
            yearlyHours[type] += jobs.todayQuotedHours(line) * year.scale();
        }
    }
}
