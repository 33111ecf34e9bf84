package benchtrue.page;

import benchtrue.findings.RepairFinding;
import benchtrue.format.Figures;
import benchtrue.revision.ProposedChange;
import benchtrue.shop.Hours;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The figures: one row a repair type, the costliest first. */
final class FormatRepairs {
    private final PageFormatter told;
    private final Map<Integer, ProposedChange> changes = new HashMap<>();

    FormatRepairs(PageFormatter told) {
        this.told = told;
        told.review().revision().changes().forEach(change -> changes.put(change.repairType(), change));
    }

    List<ReviewView.Repair> tell() {
        return told.review().answers().worstFirst().stream().map(this::row).toList();
    }

    private ReviewView.Repair row(RepairFinding finding) {
        int type = finding.repairType();
        Figures figures = told.figures();
        ProposedChange change = changes.get(type);
        boolean any = finding.lines() > 0;
        return new ReviewView.Repair(
                PageFormatter.rowId(type),
                told.label(type),
                told.key(type),
                finding.verdict().words(),
                figures.count(finding.lines()),
                any ? figures.hours(finding.quotedHours() / finding.lines()) : Figures.UNKNOWN,
                any
                        ? figures.hours(Hours.of(finding.actualSeconds() + finding.reworkSeconds()) / finding.lines())
                        : Figures.UNKNOWN,
                figures.ratio(finding.loadFactor()),
                Double.isNaN(finding.lower())
                        ? Figures.UNKNOWN
                        : figures.ratio(finding.lower()) + " to " + figures.ratio(finding.upper()),
                told.yearly(finding.annualShortfall(), finding.annualShortfallLower(), finding.annualShortfallUpper()),
                change == null ? "no longer in the book" : figures.quote(change.bookSeconds()),
                change == null ? "" : figures.quote(change.proposedSeconds()),
                finding.why(),
                change == null ? "" : change.heldBecause(),
                any ? "#" + PageFormatter.jobsId(type) : "");
    }
}
