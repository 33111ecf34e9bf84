package benchtrue.charts;

import benchtrue.charts.drawing.PanelChart;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Slowing;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Hours;
import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every repair type half-year by half-year, family by family, so that a trend shows at a glance. */
final class EveryRepair {
    private static final double HALF_YEAR = 365.25 / 2;
    private static final int ENOUGH = 3;
    private static final int MOST_HALVES = 16;
    private final ChartContext subject;
    private final JobLines jobs;
    private final Ledger ledger;

    EveryRepair(ChartContext subject) {
        this.subject = subject;
        jobs = subject.review().jobs();
        ledger = jobs.ledger();
    }

    Picture picture() {
        int first = ledger.asOf();
        for (int line = 0; line < jobs.size(); line++) {
            first = jobs.judged(line) ? Math.min(first, opened(line)) : first;
        }
        int halves = Math.min(MOST_HALVES, (int) ((ledger.asOf() - first) / HALF_YEAR) + 1);
        double[][] quoted = new double[ledger.repairTypes().size()][halves];
        double[][] taken = new double[quoted.length][halves];
        int[][] count = new int[quoted.length][halves];
        for (int line = 0; line < jobs.size(); line++) {
            int half = halves - 1 - (int) ((ledger.asOf() - opened(line)) / HALF_YEAR);
            if (jobs.judged(line) && half >= 0) {
                int type = ledger.lines().repairType(line);
                quoted[type][half] += jobs.todayQuotedHours(line);
                taken[type][half] += Hours.of(jobs.actualSeconds(line) + jobs.reworkSeconds(line));
                count[type][half]++;
            }
        }
        List<PanelChart.Panel> panels = new ArrayList<>();
        for (RepairFinding finding : order()) {
            int type = finding.repairType();
            List<PanelChart.Point> points = points(quoted[type], taken[type], count[type]);
            if (points.size() > 1) {
                panels.add(new PanelChart.Panel(subject.label(type), points));
            }
        }
        int from = (int) (ledger.asOf() - halves * HALF_YEAR);
        return new Picture(
                "every-repair",
                title(),
                "Hours taken for each hour quoted, half-year by half-year from "
                        + subject.figures().monthOf(from) + " to "
                        + subject.figures().monthOf(ledger.asOf()) + ", family by family; a half-year with fewer than "
                        + ENOUGH + " jobs is left out." + leftOut(order().size() - panels.size()),
                new PanelChart(
                        panels, from, ledger.asOf(), subject.review().settings().tolerance()));
    }

    private String leftOut(int repairs) {
        return repairs == 0
                ? ""
                : " " + subject.count(repairs, "repair has", "repairs have") + " too few jobs for two half-years.";
    }

    private int opened(int line) {
        return ledger.tickets().opened(ledger.lines().ticket(line));
    }

    private List<RepairFinding> order() {
        return subject.review().findings().repairs().stream()
                .filter(finding -> finding.lines() > 0)
                .sorted(Comparator.comparing((RepairFinding finding) -> subject.book(finding.repairType())
                                .map(RepairType::family)
                                .orElse(""))
                        .thenComparing(finding -> subject.label(finding.repairType()))
                        .thenComparingInt(RepairFinding::repairType))
                .toList();
    }

    private List<PanelChart.Point> points(double[] quoted, double[] taken, int[] count) {
        List<PanelChart.Point> points = new ArrayList<>();
        for (int half = 0; half < count.length; half++) {
            if (count[half] >= ENOUGH && quoted[half] > 0) {
                int day = (int) (ledger.asOf() - (count.length - half - 0.5) * HALF_YEAR);
                points.add(new PanelChart.Point(day, taken[half] / quoted[half]));
            }
        }
        return points;
    }

    private String title() {
        List<Slowing> slower = subject.review().findings().drift().slowings().stream()
                .filter(slowing -> slowing.standing() == Slowing.Standing.CONFIRMED)
                .sorted(Comparator.comparingDouble(Slowing::change).reversed().thenComparingInt(Slowing::repairType))
                .toList();
        if (slower.isEmpty()) {
            return "No repair has got slower beyond chance";
        }
        String first = subject.label(slower.get(0).repairType()) + " has got slower by "
                + subject.figures().percent(slower.get(0).change() - 1);
        return slower.size() == 1
                ? first
                : first + ", and " + subject.count(slower.size() - 1, "other repair too", "other repairs too");
    }
}
