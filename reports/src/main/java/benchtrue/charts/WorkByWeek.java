package benchtrue.charts;

import benchtrue.calendar.WorkAhead;
import benchtrue.charts.drawing.LegendEntry;
import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Hours sold and not done, by the week in which they are due, against the hours really worked in a week; then by kind of work. */
final class WorkByWeek {
    private final ChartContext subject;
    private final List<WorkAhead> weeks;
    private final List<WorkAhead> families;
    private final double worked;

    WorkByWeek(ChartContext subject) {
        this.subject = subject;
        weeks = subject.review().calendar().byWeek();
        families = subject.review().calendar().byFamily();
        worked = weeks.stream()
                .mapToDouble(WorkAhead::worked)
                .filter(Double::isFinite)
                .findFirst()
                .orElse(0);
    }

    /** Returns the picture; empty where nothing is to do or nobody knows what is worked in a week. */
    Optional<Picture> picture() {
        double hours = weeks.stream().mapToDouble(WorkAhead::hours).sum();
        return hours > 0 && worked > 0 ? Optional.of(draw(hours)) : Optional.empty();
    }

    private Picture draw(double hours) {
        List<RowChart.Row> rows = new ArrayList<>();
        weeks.stream()
                .filter(week -> week.hours() > 0 || Double.isFinite(week.worked()))
                .forEach(week -> rows.add(week(week)));
        families.forEach(family -> rows.add(family(family)));
        return new Picture(
                "work-by-week",
                title(hours),
                "Bench hours to do by the week of the day promised, else of the day to promise; below, by kind of work. The line: "
                        + subject.figures().hours(worked)
                        + " really worked in a week of the last quarter. A kind's weeks are reckoned by its own hours worked; a ticket's hours count under its largest repair.",
                new RowChart(
                        "expected bench hours to do",
                        RowChart.Form.BARS,
                        worked,
                        0,
                        rows,
                        List.of(
                                LegendEntry.bar(Mark.UNDER, "more than is worked in a week, or overdue"),
                                LegendEntry.bar(Mark.UNSOLD, "fits a week"),
                                LegendEntry.bar(Mark.PLAIN, "by kind of work")),
                        subject.figures()));
    }

    private String title(double hours) {
        String all = subject.figures().number(hours / worked, 1) + " weeks of work are sold and not done";
        return families.isEmpty() || !Double.isFinite(families.get(0).worked())
                ? all
                : all + "; " + families.get(0).name().replace('-', ' ') + " has the most, "
                        + subject.figures()
                                .number(
                                        families.get(0).hours()
                                                / families.get(0).worked(),
                                        1)
                        + " of its own";
    }

    private RowChart.Row week(WorkAhead week) {
        boolean tooMuch = week.hours() > worked || week == weeks.get(0);
        return new RowChart.Row(
                week.name(),
                week.hours(),
                tooMuch ? Mark.UNDER : Mark.UNSOLD,
                subject.figures().hours(week.hours()));
    }

    private RowChart.Row family(WorkAhead family) {
        return new RowChart.Row(
                family.name().replace('-', ' '),
                family.hours(),
                Mark.PLAIN,
                subject.figures().hours(family.hours())
                        + (Double.isFinite(family.worked())
                                ? ", " + subject.figures().number(family.hours() / family.worked(), 1) + " weeks"
                                : ""));
    }
}
