package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.LineState;
import benchtrue.shop.PaidBy;
import benchtrue.shop.PartUses;
import benchtrue.shop.QuotedLines;
import java.util.Arrays;
import java.util.List;

/**
 * What each line brings in: the bill, else the quote. A declined or void line brings nothing, nor does work that the shop
 * itself pays for (goodwill, its own stock) unless it was billed.
 *
 * @param labour labour revenue of each line, absent where neither billed nor quoted
 * @param parts parts revenue of each line, absent where neither billed nor quoted nor charged by the part
 * @param balances labour and parts billed, else quoted, against what they brought
 */
record Revenue(long[] labour, long[] parts, List<Balance> balances) {
    static Revenue of(JobLines jobs) {
        long[] labour = new long[jobs.size()];
        long[] parts = new long[jobs.size()];
        long[] charged = charges(jobs);
        QuotedLines lines = jobs.ledger().lines();
        Tally labourTally = new Tally();
        Tally partsTally = new Tally();
        for (int line = 0; line < jobs.size(); line++) {
            Fate fate = fate(jobs, line);
            labour[line] = labourTally.earned(fate, lines.billedLabour(line), lines.quotedLabour(line));
            long quoted = Absent.firstOf(lines.quotedParts(line), charged[line]);
            parts[line] = partsTally.earned(fate, lines.billedParts(line), quoted);
        }
        return new Revenue(
                labour,
                parts,
                List.of(
                        labourTally.balance("labour billed, else quoted"),
                        partsTally.balance("parts billed, else quoted")));
    }

    /** What became of a line's price. */
    private enum Fate {
        BROUGHT("lines"),
        OWN_POCKET("quoted for goodwill or own stock"),
        DECLINED("declined"),
        VOID("void tickets");

        private final String words;

        Fate(String words) {
            this.words = words;
        }
    }

    private static Fate fate(JobLines jobs, int line) {
        LineState state = jobs.state(line);
        if (!state.accepted()) {
            return state == LineState.VOID ? Fate.VOID : Fate.DECLINED;
        }
        PaidBy payer = jobs.ledger().lines().paidBy(line);
        return payer == PaidBy.GOODWILL || payer == PaidBy.HOUSE ? Fate.OWN_POCKET : Fate.BROUGHT;
    }

    /** Adds prices up by what became of them. */
    private static final class Tally {
        private final long[] sums = new long[Fate.values().length];
        private long read;

        /** Returns what a line brings; a bill is paid whoever the payer is. */
        long earned(Fate fate, long billed, long quoted) {
            long price = Absent.firstOf(billed, quoted);
            Fate counted = fate == Fate.OWN_POCKET && Absent.has(billed) ? Fate.BROUGHT : fate;
            read = Math.addExact(read, Absent.firstOf(price, 0));
            sums[counted.ordinal()] = Math.addExact(sums[counted.ordinal()], Absent.firstOf(price, 0));
            return counted == Fate.BROUGHT ? price : 0;
        }

        Balance balance(String name) {
            List<Balance.Term> terms = Arrays.stream(Fate.values())
                    .map(fate -> new Balance.Term(fate.words, sums[fate.ordinal()]))
                    .toList();
            return new Balance(name, "ten-thousandths", read, terms);
        }
    }

    /** Charges of the parts drawn for each line, of those that have one; absent where none has. */
    private static long[] charges(JobLines jobs) {
        PartUses uses = jobs.ledger().partUses();
        long[] charged = new long[jobs.size()];
        Arrays.fill(charged, Absent.AMOUNT);
        for (int use = 0; use < uses.size(); use++) {
            int line = uses.line(use);
            if (line != Absent.INDEX && Absent.has(uses.unitCharge(use))) {
                charged[line] = Absent.firstOf(charged[line], 0) + uses.get(use).charge();
            }
        }
        return charged;
    }
}
