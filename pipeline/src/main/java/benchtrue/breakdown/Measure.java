package benchtrue.breakdown;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A figure over a group of jobs, by its plain name. */
public enum Measure {
    JOBS("jobs", "jobs", "how many"),
    QUOTED("quoted", "quoted", "hours quoted", "quoted_hours"),
    TAKEN("taken", "taken", "hours taken", "actual_hours"),
    REWORK("rework", "put right", "hours taken later to put them right", "rework_hours"),
    EACH(
            "each",
            "hours a job",
            "hours taken by the average job that counts in the findings",
            "actual_hours",
            "counted"),
    LOAD(
            "load",
            "hours per quoted hour",
            "hours per quoted hour of the jobs that count in the findings, quotes brought to today's book and putting"
                    + " right included",
            "actual_hours",
            "rework_hours",
            "quoted_hours_today",
            "counted",
            "copied",
            "verdict",
            "ticket"),
    RANGE(
            "range",
            "90 % range",
            "range of load, as wide as jobs with hours of their own make it; too few to tell below five visits",
            "actual_hours",
            "rework_hours",
            "quoted_hours_today",
            "counted",
            "own_hours",
            "verdict",
            "ticket"),
    LABOUR("labour", "labour", "labour charged", "labour_revenue"),
    PARTS("parts", "parts", "parts charged", "parts_revenue"),
    COST("cost", "cost", "wages, parts and overhead", "labour_cost", "parts_cost", "overhead_cost"),
    MARGIN("margin", "margin", "what is left after all costs", "margin"),
    RATE("rate", "earned an hour", "labour charged for an hour taken", "labour_revenue", "actual_hours"),
    DAYS("days", "days in the shop", "days in the shop of the average job", "days_in_shop"),
    WAITED("waited", "days waited", "days waited by the average job", "days_waited");

    private final String word;
    private final String heading;
    private final String meaning;
    private final List<String> columns;

    Measure(String word, String heading, String meaning, String... columns) {
        this.word = word;
        this.heading = heading;
        this.meaning = meaning;
        this.columns = List.of(columns);
    }

    /** Returns the name that the owner writes. */
    public String word() {
        return word;
    }

    /** Returns what stands above its column. */
    public String heading() {
        return heading;
    }

    /** Returns what it is, in words. */
    public String meaning() {
        return meaning;
    }

    /** Returns the columns of {@code lines.csv} that it is made from. */
    List<String> columns() {
        return columns;
    }

    /** Returns whether it would tell what a person is paid, where the jobs are that person's. */
    boolean tellsWages() {
        return this == COST || this == MARGIN;
    }

    static Optional<Measure> of(String word) {
        return Arrays.stream(values())
                .filter(measure -> measure.word.equalsIgnoreCase(word.strip()))
                .findFirst();
    }
}
