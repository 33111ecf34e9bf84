package benchtrue.findings;

import java.util.List;

/**
 * What the review found.
 *
 * @param repairs one finding a repair type of today's or an earlier book, by code
 */
public record Findings(List<RepairFinding> repairs) {
    public Findings {
        repairs = List.copyOf(repairs);
    }
}
