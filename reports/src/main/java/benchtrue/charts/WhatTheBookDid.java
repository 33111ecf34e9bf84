package benchtrue.charts;

import benchtrue.charts.drawing.LegendEntry;
import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.revision.BookedHours;
import benchtrue.revision.FollowUp;
import benchtrue.revision.LastChange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the last change of the price book did: hours per book hour before and since, repair by repair. */
final class WhatTheBookDid {
    private static final int MOST_ROWS = 20;
    private final ChartContext subject;

    WhatTheBookDid(ChartContext subject) {
        this.subject = subject;
    }

    /** Returns the picture; empty where the book never changed, or no job has been finished since. */
    Optional<Picture> picture() {
        return subject.review()
                .revision()
                .lastChange()
                .filter(change -> change.together().hoursSince().jobs() > 0)
                .map(this::draw);
    }

    private Picture draw(LastChange change) {
        List<Map.Entry<Integer, FollowUp>> told = change.byType().entrySet().stream()
                .filter(type -> type.getValue().hoursSince().jobs() > 0)
                .toList();
        List<RowChart.Row> rows = new ArrayList<>();
        rows.add(row("All together", change.together()));
        told.stream()
                .sorted(Comparator.comparingInt((Map.Entry<Integer, FollowUp> type) ->
                                -type.getValue().hoursSince().jobs())
                        .thenComparing(Map.Entry.comparingByKey()))
                .limit(MOST_ROWS)
                .sorted(Comparator.comparingDouble((Map.Entry<Integer, FollowUp> type) ->
                        -type.getValue().hoursSince().ratio()))
                .forEach(type -> rows.add(row(subject.label(type.getKey()), type.getValue())));
        return new Picture(
                Picture.LAST_CHANGE,
                title(change),
                note(change, told.size()),
                new RowChart(
                        "hours taken for each hour of the book; line at 1: as the book says; lines: 90\u00a0% range since",
                        RowChart.Form.CHANGES,
                        1,
                        subject.review().settings().tolerance(),
                        rows,
                        List.of(
                                LegendEntry.of(Mark.BEFORE, "before, against the old book"),
                                LegendEntry.of(Mark.PLAIN, "since, against the new book")),
                        subject.figures()));
    }

    private String title(LastChange change) {
        FollowUp all = change.together();
        return "Since the book of " + subject.figures().day(change.effective()) + " jobs took "
                + subject.figures().ratio(all.hoursSince().ratio()) + " hours for each book hour"
                + (all.hoursBefore().jobs() > 0
                        ? ", before it "
                                + subject.figures().ratio(all.hoursBefore().ratio())
                        : "");
    }

    private String note(LastChange change, int types) {
        int rest = types - MOST_ROWS;
        return (subject.showsMoney() ? change.sentence() + " " : "")
                + "Right: jobs before and since; only jobs whose hours are surely their own."
                + (rest > 0
                        ? " " + subject.count(rest, "repair with fewer jobs is", "repairs with fewer jobs are")
                                + " left out."
                        : "");
    }

    private RowChart.Row row(String label, FollowUp type) {
        BookedHours since = type.hoursSince();
        return new RowChart.Row(
                label,
                type.hoursBefore().ratio(),
                since.ratio(),
                since.lower(),
                since.upper(),
                Mark.PLAIN,
                subject.figures().count(type.hoursBefore().jobs()) + " and "
                        + subject.count(since.jobs(), "job", "jobs"));
    }
}
