package benchtrue.page;

import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import java.util.Comparator;
import java.util.List;

/** First answer: which repairs lose most a year, and why. */
final class TellLosses {
    private static final int MOST = 5;
    private final Told told;

    TellLosses(Told told) {
        this.told = told;
    }

    List<ReviewView.Loss> tell() {
        return told.review().findings().repairs().stream()
                .filter(finding -> finding.verdict() == Verdict.UNDER_QUOTED)
                .sorted(Comparator.comparingLong(RepairFinding::annualShortfall)
                        .reversed()
                        .thenComparingInt(RepairFinding::repairType))
                .limit(MOST)
                .map(finding -> new ReviewView.Loss(
                        told.label(finding.repairType()),
                        Told.href(finding.repairType()),
                        told.yearly(
                                finding.annualShortfall(),
                                finding.annualShortfallLower(),
                                finding.annualShortfallUpper()),
                        finding.why()))
                .toList();
    }
}
