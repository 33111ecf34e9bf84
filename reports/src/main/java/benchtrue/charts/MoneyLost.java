package benchtrue.charts;

import benchtrue.charts.drawing.LegendEntry;
import benchtrue.charts.drawing.RowChart;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Money lost a year by repair type, largest first. */
final class MoneyLost {
    private static final int MOST_ROWS = 15;
    private final ChartContext subject;
    private final List<RepairFinding> losing;

    MoneyLost(ChartContext subject) {
        this.subject = subject;
        losing = subject.review().answers().seemLosing();
    }

    /** Returns the picture; empty where no repair seems to lose money. */
    Optional<Picture> picture() {
        return losing.isEmpty() ? Optional.empty() : Optional.of(new Picture("money-lost", title(), note(), chart()));
    }

    private String title() {
        RepairFinding first = losing.get(0);
        String label = subject.label(first.repairType());
        return first.verdict() == Verdict.UNDER_QUOTED
                ? label + " loses most: " + range(first) + " a year"
                : "No loss is beyond chance yet; " + label + " comes nearest";
    }

    private String range(RepairFinding finding) {
        return Absent.has(finding.annualShortfallLower())
                ? subject.figures().moneyRange(finding.annualShortfallLower(), finding.annualShortfallUpper())
                : subject.figures().aboutMoney(finding.annualShortfall());
    }

    private String note() {
        int rest = losing.size() - MOST_ROWS;
        return "At " + subject.figures().price(subject.review().costs().shopRate())
                + " an hour and the shop's yearly number of jobs. Lines: 90\u00a0% range."
                + (rest > 0 ? " " + subject.count(rest, "more repair loses", "more repairs lose") + " less." : "");
    }

    private RowChart chart() {
        return new RowChart(
                subject.currency("money") + " lost a year to hours that were not quoted",
                RowChart.Form.BARS,
                Double.NaN,
                0,
                losing.stream().limit(MOST_ROWS).map(this::row).toList(),
                Stream.of(Verdict.UNDER_QUOTED, Verdict.LEANING_UNDER)
                        .filter(verdict -> losing.stream().anyMatch(finding -> finding.verdict() == verdict))
                        .map(verdict -> LegendEntry.bar(QuotedAgainstActual.mark(verdict), words(verdict)))
                        .toList(),
                subject.figures());
    }

    private static String words(Verdict verdict) {
        return verdict == Verdict.UNDER_QUOTED ? "under-quoted" : "leaning under: chance could explain it";
    }

    private RowChart.Row row(RepairFinding finding) {
        return new RowChart.Row(
                subject.label(finding.repairType()),
                Money.units(finding.annualShortfall()),
                units(finding.annualShortfallLower()),
                units(finding.annualShortfallUpper()),
                QuotedAgainstActual.mark(finding.verdict()),
                range(finding));
    }

    private static double units(long amount) {
        return Absent.has(amount) ? Money.units(amount) : Double.NaN;
    }
}
