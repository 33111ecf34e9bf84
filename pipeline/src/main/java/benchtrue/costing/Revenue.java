package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.LineState;
import benchtrue.shop.PaidBy;
import benchtrue.shop.PartUses;
import benchtrue.shop.QuotedLines;

/**
 * What each line brings in: the bill, else the quote. A declined or void line brings nothing, nor does work that the shop
 * itself pays for (goodwill, its own stock) unless it was billed.
 *
 * @param labour labour revenue of each line, absent where neither billed nor quoted
 * @param parts parts revenue of each line, absent where neither billed nor quoted nor charged by the part
 */
record Revenue(long[] labour, long[] parts) {
    static Revenue of(JobLines jobs) {
        long[] labour = new long[jobs.size()];
        long[] parts = new long[jobs.size()];
        long[] charged = charges(jobs);
        QuotedLines lines = jobs.ledger().lines();
        for (int line = 0; line < jobs.size(); line++) {
            labour[line] = earned(jobs, line, lines.billedLabour(line), lines.quotedLabour(line));
            long quoted = Absent.firstOf(lines.quotedParts(line), charged[line]);
            parts[line] = earned(jobs, line, lines.billedParts(line), quoted);
        }
        return new Revenue(labour, parts);
    }

    private static long earned(JobLines jobs, int line, long billed, long quoted) {
        LineState state = jobs.state(line);
        if (state == LineState.VOID || state == LineState.DECLINED) {
            return 0;
        }
        PaidBy payer = jobs.ledger().lines().paidBy(line);
        boolean ownPocket = payer == PaidBy.GOODWILL || payer == PaidBy.HOUSE;
        return Absent.firstOf(billed, ownPocket ? 0 : quoted);
    }

    /** Charges of the parts drawn for each line, absent where one of them has none. */
    private static long[] charges(JobLines jobs) {
        PartUses uses = jobs.ledger().partUses();
        long[] charged = new long[jobs.size()];
        java.util.Arrays.fill(charged, Absent.AMOUNT);
        for (int use = 0; use < uses.size(); use++) {
            int line = uses.line(use);
            if (line != Absent.INDEX && Absent.has(uses.unitCharge(use))) {
                charged[line] = Absent.firstOf(charged[line], 0) + uses.get(use).charge();
            }
        }
        return charged;
    }
}
