package benchtrue.charts;

import benchtrue.charts.drawing.LegendEntry;
import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.shop.Hours;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Hours taken for each hour quoted, every repair type in a row, the longest first. */
final class QuotedAgainstActual {
    private static final Comparator<RepairFinding> LONGEST_FIRST = Comparator.comparing(
                    (RepairFinding finding) -> finding.verdict() == Verdict.TOO_FEW_JOBS)
            .thenComparing(Comparator.comparingDouble(RepairFinding::loadFactor).reversed())
            .thenComparingInt(RepairFinding::repairType);
    private final ChartContext subject;
    private final List<RepairFinding> shown;

    QuotedAgainstActual(ChartContext subject) {
        this.subject = subject;
        shown = subject.review().findings().repairs().stream()
                .filter(finding -> finding.lines() > 0 && !Double.isNaN(finding.loadFactor()))
                .sorted(LONGEST_FIRST)
                .toList();
    }

    /** Returns the picture; without any finished job it has no row. */
    Picture picture() {
        return new Picture("quoted-against-actual", title(), note(), chart());
    }

    private String title() {
        long under = count(Verdict.UNDER_QUOTED);
        long over = count(Verdict.OVER_QUOTED);
        String of = " of " + subject.count(shown.size(), "repair", "repairs");
        if (under == 0) {
            return over == 0
                    ? "No repair is clearly quoted too low or too high"
                    : subject.figures().count(over) + of + (over == 1 ? " is" : " are")
                            + " quoted too high, none too low";
        }
        String low = subject.figures().count(under) + of + (under == 1 ? " takes" : " take") + " longer than quoted";
        return over == 0
                ? low
                : low + "; " + subject.figures().count(over) + (over == 1 ? " is" : " are") + " quoted too high";
    }

    private long count(Verdict verdict) {
        return shown.stream().filter(finding -> finding.verdict() == verdict).count();
    }

    private String note() {
        long jobs = shown.stream().mapToLong(RepairFinding::lines).sum();
        int silent = subject.review().findings().repairs().size() - shown.size();
        return subject.count(jobs, "closed job", "closed jobs") + " up to "
                + subject.figures().day(subject.review().ledger().asOf())
                + ", quotes brought to today's book, putting right included. Right: average quoted \u2192 taken, jobs."
                + (silent == 0
                        ? ""
                        : " " + subject.count(silent, "repair has", "repairs have") + " no closed job yet.");
    }

    private RowChart chart() {
        double tolerance = subject.review().settings().tolerance();
        String band = tolerance > 0 ? "; grey: within " + subject.figures().percent(tolerance) + " of the quote" : "";
        return new RowChart(
                "hours taken for each hour quoted; line at 1: as quoted" + band + "; bars: 90\u00a0% range",
                RowChart.Form.MARKS,
                1,
                tolerance,
                shown.stream().map(this::row).toList(),
                Arrays.stream(Verdict.values())
                        .filter(verdict -> count(verdict) > 0)
                        .map(verdict -> LegendEntry.of(mark(verdict), verdict.words()))
                        .toList(),
                subject.figures());
    }

    private RowChart.Row row(RepairFinding finding) {
        double quoted = finding.quotedHours() / finding.lines();
        double taken = Hours.of(finding.actualSeconds() + finding.reworkSeconds()) / finding.lines();
        String note = subject.figures().hours(quoted) + " \u2192 "
                + subject.figures().hours(taken) + ", " + subject.count(finding.lines(), "job", "jobs");
        return new RowChart.Row(
                subject.label(finding.repairType()),
                finding.loadFactor(),
                finding.lower(),
                finding.upper(),
                mark(finding.verdict()),
                note);
    }

    static Mark mark(Verdict verdict) {
        return switch (verdict) {
            case UNDER_QUOTED -> Mark.UNDER;
            case LEANING_UNDER -> Mark.LEANING_UNDER;
            case ON_THE_MARK -> Mark.ON_THE_MARK;
            case LEANING_OVER -> Mark.LEANING_OVER;
            case OVER_QUOTED -> Mark.OVER;
            case TOO_FEW_JOBS -> Mark.TOO_FEW;
            case NOT_JUDGED -> Mark.NOT_JUDGED;
        };
    }
}
