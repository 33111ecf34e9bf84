package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.LineState;
import benchtrue.shop.QuotedLines;
import java.util.ArrayList;
import java.util.List;

/**
 * Quotes of one repair type and what became of them.
 *
 * @param repairType code of the repair type
 * @param quotes lines quoted, void tickets left out
 * @param declined lines declined
 * @param declinedSeconds hours quoted on them, as far as recorded
 * @param declinedLabour labour quoted on them, as far as recorded
 */
public record QuoteOutcome(int repairType, int quotes, int declined, long declinedSeconds, long declinedLabour) {
    /** Returns the quotes given since a day, by repair-type code. */
    static List<QuoteOutcome> since(JobLines jobs, int day) {
        QuotedLines lines = jobs.ledger().lines();
        QuoteOutcome[] byType = new QuoteOutcome[jobs.ledger().repairTypes().size()];
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.ledger().quotedOn(line) >= day && jobs.state(line) != LineState.VOID) {
                int type = lines.repairType(line);
                byType[type] = plus(byType[type], type, lines, line, jobs.state(line) == LineState.DECLINED ? 1 : 0);
            }
        }
        List<QuoteOutcome> found = new ArrayList<>();
        for (QuoteOutcome outcome : byType) {
            if (outcome != null) {
                found.add(outcome);
            }
        }
        return found;
    }

    private static QuoteOutcome plus(QuoteOutcome sum, int type, QuotedLines lines, int line, int declined) {
        QuoteOutcome before = sum == null ? new QuoteOutcome(type, 0, 0, 0, 0) : sum;
        return new QuoteOutcome(
                type,
                before.quotes + 1,
                before.declined + declined,
                before.declinedSeconds + declined * Absent.firstOf(lines.quotedSeconds(line), 0),
                before.declinedLabour + declined * Absent.firstOf(lines.quotedLabour(line), 0));
    }
}
