package benchtrue.revision;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.util.ArrayList;
import java.util.List;

/**
 * A drafted price book with the owner's decisions.
 *
 * @param draft SHA-256 of the {@code revision.csv} that the draft was made from
 * @param file name of the workbook, for messages
 * @param decisions one a repair type; rows with a fault are left out
 * @param surcharges decisions on lines with conditions
 * @param faults what can't be used
 */
public record DecidedDraft(
        String draft,
        String file,
        List<Decision> decisions,
        List<SurchargeDecision> surcharges,
        List<CellFault> faults) {
    public DecidedDraft {
        decisions = List.copyOf(decisions);
        surcharges = List.copyOf(surcharges);
        faults = List.copyOf(faults);
    }

    /** Returns whether nothing at all was decided. */
    boolean isOpen() {
        return surcharges.isEmpty() && decided().isEmpty();
    }

    /** Returns the rows on which something was decided. */
    public List<Decision> decided() {
        return decisions.stream()
                .filter(decision -> decision.choice() != Decision.Choice.OPEN)
                .toList();
    }

    /**
     * Goes on where there is no fault.
     *
     * @param more faults that only the price book shows
     * @throws Refusal with every fault of the workbook
     */
    void expectSound(List<CellFault> more) {
        List<CellFault> all = new ArrayList<>(faults);
        all.addAll(more);
        if (!all.isEmpty()) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file + ": found " + all.size() + (all.size() == 1 ? " cell" : " cells") + " that can't be used:\n  "
                            + String.join(
                                    "\n  ", all.stream().map(CellFault::words).toList())
                            + "\nCorrect them in the workbook and adopt again. Nothing was written.");
        }
    }
}
