package benchtrue.charts;

import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.findings.Driver;
import java.util.List;
import java.util.Optional;

/** Traits of the instrument that make a family of repairs longer: candidates for a surcharge line. */
final class WhatMakesItLonger {
    private static final int MOST_ROWS = 12;
    private final ChartContext subject;
    private final List<Driver> drivers;

    WhatMakesItLonger(ChartContext subject) {
        this.subject = subject;
        drivers = subject.review().findings().drivers();
    }

    /** Returns the picture; empty where no trait is told apart from chance. */
    Optional<Picture> picture() {
        return drivers.isEmpty() ? Optional.empty() : Optional.of(draw());
    }

    private Picture draw() {
        Driver first = drivers.get(0);
        return new Picture(
                "what-makes-it-longer",
                "\u201c" + words(first.trait()) + "\u201d "
                        + (first.extraHours() < 0 ? "takes " : "adds ")
                        + subject.figures().hours(Math.abs(first.extraHours()))
                        + (first.extraHours() < 0 ? " off" : " to") + " a " + first.family() + " job",
                "All else alike, told apart from chance over all traits and families. Candidates for a surcharge line in the"
                        + " book. Right: extra hours, jobs with it. Lines: 90\u00a0% range.",
                new RowChart(
                        "extra hours a job",
                        RowChart.Form.MARKS,
                        0,
                        0,
                        drivers.stream().limit(MOST_ROWS).map(this::row).toList(),
                        List.of(),
                        subject.figures()));
    }

    private RowChart.Row row(Driver driver) {
        return new RowChart.Row(
                driver.family() + ": " + words(driver.trait()),
                driver.extraHours(),
                driver.extraLower(),
                driver.extraUpper(),
                driver.extraHours() < 0 ? Mark.OVER : Mark.UNDER,
                subject.figures().hours(driver.extraHours()) + ", " + subject.count(driver.jobsWith(), "job", "jobs"));
    }

    private static String words(String trait) {
        return trait.replace('-', ' ');
    }
}
