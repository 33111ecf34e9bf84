package benchtrue.breakdown;

import benchtrue.format.Figures;
import benchtrue.format.Spelling;
import benchtrue.shop.Absent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.selection.Selection;

/** Picks the jobs that a question is about, says which they are, and which condition leaves none. */
final class SelectJobs {
    private final Table table;
    private final Question question;
    private final Figures figures;
    private final List<String> notes = new ArrayList<>();

    SelectJobs(Table table, Question question, Figures figures) {
        this.table = table;
        this.question = question;
        this.figures = figures;
    }

    /** Returns the jobs, in the order of tickets and lines; {@link #notes} tells of them afterwards. */
    Table jobs() {
        Map<String, Selection> conditions = new LinkedHashMap<>();
        question.where().forEach(condition -> conditions.merge(condition.words(), selected(condition), Selection::and));
        days().ifPresent(days -> conditions.put(days, inDays()));
        Selection kept = all();
        String emptied = "";
        for (Map.Entry<String, Selection> condition : conditions.entrySet()) {
            kept.and(condition.getValue());
            emptied = emptied.isEmpty() && kept.isEmpty() ? condition.getKey() : emptied;
        }
        notes.add((question.finishedOnly() ? "Closed jobs" : "Jobs")
                + conditions.keySet().stream().map(words -> "; " + words).collect(Collectors.joining())
                + ".");
        if (!emptied.isEmpty()) {
            notes.add("No job is left: \"" + emptied + "\" leaves none"
                    + (conditions.size() > 1 ? " of those that meet what stands before it" : "") + "."
                    + meant(emptied));
        }
        return question.finishedOnly() ? closed(kept) : table.where(kept);
    }

    List<String> notes() {
        return notes;
    }

    private Selection all() {
        return Selection.withRange(0, table.rowCount());
    }

    private Selection selected(Condition condition) {
        if (condition.field().kind() == Field.Kind.NUMBER) {
            return table.doubleColumn(condition.field().column()).eval(condition::holds);
        }
        return among(column(condition.field()), condition);
    }

    private Selection among(StringColumn column, Condition condition) {
        List<String> meeting =
                column.unique().asList().stream().filter(condition::holds).toList();
        Selection selected = column.isIn(meeting);
        boolean byKey = condition.field() == Field.REPAIR && !condition.sign().equals("contains");
        if (byKey) {
            Selection keys = among(
                    table.stringColumn("repair_type"),
                    new Condition(condition.words(), Field.FAMILY, condition.sign(), condition.values()));
            return condition.sign().equals("!=") ? selected.and(keys) : selected.or(keys);
        }
        return selected;
    }

    /** Returns the column of a field; years, quarters and months follow the day that counts. */
    private StringColumn column(Field field) {
        return field.column().isEmpty() ? period(table, question, field) : table.stringColumn(field.column());
    }

    static StringColumn period(Table table, Question question, Field field) {
        return Facts.mapped(table.stringColumn(question.date().field().column()), day -> of(field, day))
                .setName(field.word());
    }

    private static String of(Field field, String day) {
        if (day.isEmpty()) {
            return "";
        }
        return switch (field) {
            case YEAR -> day.substring(0, 4);
            case QUARTER -> day.substring(0, 4) + "-Q" + (Integer.parseInt(day.substring(5, 7)) + 2) / 3;
            default -> day.substring(0, 7);
        };
    }

    private Optional<String> days() {
        if (!question.dated()) {
            return Optional.empty();
        }
        return Optional.of(question.date().word()
                + (Absent.has(question.from()) ? " from " + figures.day(question.from()) : "")
                + (Absent.has(question.to()) ? " to " + figures.day(question.to()) : ""));
    }

    private Selection inDays() {
        String from = Absent.has(question.from())
                ? LocalDate.ofEpochDay(question.from()).toString()
                : "0";
        String to =
                Absent.has(question.to()) ? LocalDate.ofEpochDay(question.to()).toString() : "9999-12-31";
        StringColumn days = table.stringColumn(question.date().field().column());
        return days.isIn(days.unique().asList().stream()
                .filter(day -> !day.isEmpty() && day.compareTo(from) >= 0 && day.compareTo(to) <= 0)
                .toList());
    }

    /** A line that is not finished stands with all of its price and a part of its hours, so it is told apart. */
    private Table closed(Selection kept) {
        StringColumn state = table.stringColumn(Field.STATE.column());
        Table left = Table.create(table.columns(Field.STATE.column(), "actual_hours", "margin"))
                .where(all().and(kept).and(state.isNotEqualTo("closed")));
        if (!left.isEmpty()) {
            Map<String, Long> states = new LinkedHashMap<>();
            left.stringColumn(Field.STATE.column()).forEach(word -> states.merge(word, 1L, Long::sum));
            JobSums sums = JobSums.all(new JobColumns(left));
            String margin = question.asksFor(Field.TECHNICIAN)
                    ? ""
                    : " and a margin of " + sums.amount("margin").text(figures);
            notes.add("Left out: "
                    + states.entrySet().stream()
                            .map(entry -> figures.count(entry.getValue()) + " " + entry.getKey())
                            .collect(Collectors.joining(", "))
                    + "; on them stand " + sums.hours("actual_hours").text(figures) + margin
                    + ". A condition on state, such as \"state in closed, open\", takes them in.");
        }
        return table.where(kept.and(state.isEqualTo("closed")));
    }

    /** Returns the value that was most likely meant, where a condition names one that no job has. */
    private String meant(String emptied) {
        return question.where().stream()
                .filter(condition ->
                        condition.words().equals(emptied) && condition.sign().equals("="))
                .filter(condition -> condition.field().kind() == Field.Kind.TEXT)
                .filter(condition -> selected(condition).isEmpty())
                .flatMap(condition ->
                        Spelling.nearest(
                                condition.values().get(0),
                                column(condition.field()).unique().asList())
                                .stream())
                .findFirst()
                .map(near -> " Did you mean \"" + near + "\"?")
                .orElse("");
    }
}
