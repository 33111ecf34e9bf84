package benchtrue.revision;

import benchtrue.format.Figures;
import benchtrue.shop.Absent;
import benchtrue.shop.ExitCode;
import benchtrue.shop.PriceBook;
import benchtrue.shop.Refusal;
import benchtrue.shop.RepairType;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Makes the next price book from today's and the owner's decisions. */
public final class NextBook {
    /**
     * Returns the next version: today's rows, with hours and price where the owner decided so.
     *
     * @param effective first day it is in force
     * @param figures how the shop's people read figures, for refusals
     * @throws Refusal naming the cell, where a decision names an unknown repair type, goes below the shortest safe hours or
     *     the minimum charge, or keeps without a reason and a date; and where nothing at all was decided
     */
    public PriceBook decide(PriceBook today, DecidedDraft draft, int effective, Figures figures) {
        Map<String, RepairType> types = new TreeMap<>(today.types());
        boolean decided = false;
        for (Decision decision : draft.decisions()) {
            Optional<RepairType> type = today.type(decision.repairType());
            if (type.isEmpty()) {
                throw refused(
                        draft, decision, "the repair type " + decision.repairType() + " is not in today's price book");
            }
            check(draft, decision, type.get(), effective, figures);
            types.put(decision.repairType(), changed(type.get(), decision));
            decided |= decision.choice() != Decision.Choice.OPEN;
        }
        if (!decided) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    draft.file() + ": found no decision in it, expected take, keep or own on at least one row.");
        }
        return new PriceBook(effective, types);
    }

    private static void check(DecidedDraft draft, Decision decision, RepairType type, int effective, Figures figures) {
        if (decision.choice() == Decision.Choice.KEEP
                && (decision.reason().isBlank() || !Absent.has(decision.until()) || decision.until() <= effective)) {
            throw refused(
                    draft, decision, "keep needs a reason and a date after the new book begins until which it holds");
        }
        if (decision.choice() == Decision.Choice.OPEN || decision.choice() == Decision.Choice.KEEP) {
            return;
        }
        if (Absent.has(type.leastSeconds()) && decision.seconds() < type.leastSeconds()) {
            throw refused(
                    draft,
                    decision,
                    figures.quote(decision.seconds()) + " is below the shortest safe hours, "
                            + figures.quote(type.leastSeconds()));
        }
        if (decision.seconds() <= 0 || decision.labour() < Absent.firstOf(type.leastLabour(), 0)) {
            throw refused(draft, decision, "hours must be above zero and the price not below the minimum charge");
        }
    }

    private static RepairType changed(RepairType type, Decision decision) {
        return new RepairType(
                type.repairType(),
                type.title(),
                type.family(),
                decision.seconds(),
                decision.labour(),
                type.leastSeconds(),
                type.hazards(),
                type.leastLabour(),
                type.freeWeeks());
    }

    private static Refusal refused(DecidedDraft draft, Decision decision, String what) {
        return new Refusal(
                ExitCode.UNUSABLE_FILE,
                draft.file() + ", cell " + decision.cell() + ": " + what
                        + ". Correct it in the workbook and adopt again." + " Nothing was written.");
    }
}
