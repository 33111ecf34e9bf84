package benchtrue.findings;

import java.util.List;

/**
 * What the review found.
 *
 * @param repairs one finding a repair type of today's or an earlier book, by code
 * @param foundWork repair types found on the bench while doing others, the most money first
 * @param unquotedWork work that tickets never quoted, the most money first
 * @param copiedQuotes repair types with totals that equal the quote, by code
 */
public record Findings(
        List<RepairFinding> repairs,
        List<FoundWork> foundWork,
        List<UnquotedTotal> unquotedWork,
        List<CopiedQuotes> copiedQuotes) {
    public Findings {
        repairs = List.copyOf(repairs);
        foundWork = List.copyOf(foundWork);
        unquotedWork = List.copyOf(unquotedWork);
        copiedQuotes = List.copyOf(copiedQuotes);
    }

    /** Verdicts and nothing beside them. */
    public Findings(List<RepairFinding> repairs) {
        this(repairs, List.of(), List.of(), List.of());
    }
}
