package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.LineState;
import benchtrue.shop.QuotedLines;
import benchtrue.statistics.Normal;
import java.util.Arrays;

/**
 * Logged totals beside the quotes they could have been copied from: of a line with hours of its own, or of a whole ticket
 * that nobody labelled. One value a line.
 *
 * @param matches whether the total equals the quote to the minute
 * @param honest chance of such a match from honest logging and rounding alone, NaN where nothing could be compared
 * @param weight part of the total that the line stands for, so that a ticket counts once
 * @param grid how finely each technician writes time down
 */
record LoggedTotals(boolean[] matches, double[] honest, double[] weight, EntryGrid grid) {
    private static final long MINUTE = 60;

    /** Returns the totals of a shop. */
    static LoggedTotals of(JobLines jobs, OwnHours own) {
        int lines = jobs.size();
        EntryGrid grid =
                EntryGrid.of(jobs.ledger().time(), jobs.ledger().technicians().size());
        LoggedTotals totals = new LoggedTotals(new boolean[lines], new double[lines], new double[lines], grid);
        Arrays.fill(totals.honest, Double.NaN);
        boolean[] matches = new boolean[own.line().length];
        for (int i = 0; i < matches.length; i++) {
            int line = own.line()[i];
            matches[i] = equal(jobs.actualSeconds(line), jobs.ledger().lines().judgedSeconds(line));
        }
        UsualSpread usual = UsualSpread.of(jobs, own, matches);
        for (int i = 0; i < matches.length; i++) {
            totals.addLine(jobs, own.line()[i], matches[i], usual);
        }
        totals.addTickets(jobs, usual);
        return totals;
    }

    private static boolean equal(long worked, long quoted) {
        return Absent.has(quoted) && StrictMath.abs(worked - quoted) < MINUTE;
    }

    private void addLine(JobLines jobs, int line, boolean match, UsualSpread usual) {
        QuotedLines lines = jobs.ledger().lines();
        long quoted = lines.judgedSeconds(line);
        if (!Absent.has(quoted) || quoted <= 0) {
            return;
        }
        int type = lines.repairType(line);
        if (grid.hides(jobs.mainTechnician(line), quoted, usual.spread()[type])) {
            return;
        }
        double expected = StrictMath.log(jobs.todayQuotedHours(line)) + usual.middle()[type];
        double window = grid.window(jobs.mainTechnician(line), quoted);
        set(line, line + 1, match, chance(quoted, window, expected, usual.spread()[type]));
    }

    private void addTickets(JobLines jobs, UsualSpread usual) {
        int tickets = jobs.ledger().tickets().size();
        int[] starts = jobs.ledger().lines().starts(tickets);
        for (int ticket = 0; ticket < tickets; ticket++) {
            if (starts[ticket + 1] > starts[ticket] + 1) {
                addTicket(jobs, starts[ticket], starts[ticket + 1], usual);
            }
        }
    }

    /** Only a ticket whose every accepted line is judged, quoted and wholly split has a total to be copied into. */
    private void addTicket(JobLines jobs, int from, int to, UsualSpread usual) {
        QuotedLines lines = jobs.ledger().lines();
        long worked = 0;
        long quoted = 0;
        double mean = 0;
        double variance = 0;
        for (int line = from; line < to; line++) {
            if (jobs.state(line) == LineState.DECLINED) {
                continue;
            }
            if (!jobs.judged(line) || jobs.labelledSeconds(line) > 0 || !Absent.has(lines.judgedSeconds(line))) {
                return;
            }
            worked += jobs.actualSeconds(line);
            quoted += lines.judgedSeconds(line);
            int type = lines.repairType(line);
            double usually = jobs.todayQuotedHours(line) * StrictMath.exp(usual.middle()[type]);
            mean += usually;
            variance += StrictMath.expm1(usual.spread()[type] * usual.spread()[type]) * usually * usually;
        }
        if (quoted > 0 && worked > 0 && Double.isNaN(honest[from])) {
            double spread = StrictMath.sqrt(StrictMath.log1p(variance / (mean * mean)));
            double window = grid.window(jobs.mainTechnician(from), quoted);
            if (grid.hides(jobs.mainTechnician(from), quoted, spread)) {
                return;
            }
            set(from, to, equal(worked, quoted), chance(quoted, window, StrictMath.log(mean), spread));
        }
    }

    private void set(int from, int to, boolean match, double chance) {
        for (int line = from; line < to; line++) {
            matches[line] = match;
            honest[line] = chance;
            weight[line] = 1.0 / (to - from);
        }
    }

    private static double chance(long quoted, double window, double expectedLog, double spread) {
        double z = (StrictMath.log(Hours.of(quoted)) - expectedLog) / spread;
        return StrictMath.min(1, window / quoted * Normal.density(z) / spread);
    }
}
