package benchtrue.revision;

import java.util.List;

/**
 * A drafted price book with the owner's decisions.
 *
 * @param draft SHA-256 of the {@code revision.csv} that the draft was made from
 * @param file name of the workbook, for messages
 * @param decisions one a repair type
 */
public record DecidedDraft(String draft, String file, List<Decision> decisions) {
    public DecidedDraft {
        decisions = List.copyOf(decisions);
    }
}
