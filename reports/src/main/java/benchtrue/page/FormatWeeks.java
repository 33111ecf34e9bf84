package benchtrue.page;

import benchtrue.calendar.Calendar;
import benchtrue.calendar.PromiseTrial;
import benchtrue.calendar.RepairWeeks;
import benchtrue.format.Words;
import benchtrue.shop.Absent;
import java.util.stream.Collectors;

/** How many weeks visits take, repair by repair, and what to promise today. */
final class FormatWeeks {
    private static final double WEEK = 7;
    private final PageFormatter told;
    private final Calendar calendar;

    FormatWeeks(PageFormatter told) {
        this.told = told;
        calendar = told.review().calendar();
    }

    ReviewView.Weeks tell() {
        return new ReviewView.Weeks(
                calendar.trial()
                        .sentence(told.figures())
                        .map(words -> words + standing())
                        .orElse(""),
                calendar.weeks().stream().map(this::row).toList());
    }

    private String standing() {
        PromiseTrial open = calendar.openTrial();
        return open.tried() == 0
                ? ""
                : " Of " + told.count(open.tried(), "promise", "promises")
                        + " for visits that stood in the shop already, "
                        + told.figures().percent(open.kept()) + " would have been kept.";
    }

    private ReviewView.RepairWeeks row(RepairWeeks row) {
        return new ReviewView.RepairWeeks(
                row.repairType() == Absent.INDEX
                        ? PageFormatter.sentence(row.family().replace('-', ' ')) + ", all"
                        : told.label(row.repairType()) + (row.group().isEmpty() ? "" : ", " + row.group()),
                told.figures().count(row.visits()),
                weeks(row.middle()),
                weeks(row.most()),
                days(row.queue()),
                days(row.bench()),
                row.waits().entrySet().stream()
                        .filter(wait -> wait.getValue() >= 0.05)
                        .map(wait -> Words.of(wait.getKey()).replace('-', ' ') + " " + days(wait.getValue()))
                        .collect(Collectors.joining(", ")),
                Absent.has(row.promise()) ? told.count(row.promise(), "day", "days") : "");
    }

    private String weeks(double days) {
        return Double.isFinite(days) ? told.figures().number(days / WEEK, 1) : "not reached";
    }

    private String days(double days) {
        return Double.isFinite(days) ? told.figures().number(days, 1) : "not known";
    }
}
