package benchtrue.breakdown;

import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A question that was understood.
 *
 * @param title what it is called; empty where nobody named it
 * @param down what the rows are grouped by
 * @param across what stands across
 * @param where conditions, all of which hold
 * @param from first day that counts, or {@link Absent#DAY}
 * @param to last day that counts, or {@link Absent#DAY}
 * @param date which day of a job that is
 * @param show the figures
 * @param order how the rows are ordered
 * @param top how many rows are shown; 0 for all
 */
public record Question(
        String title,
        List<Field> down,
        Optional<Field> across,
        List<Condition> where,
        int from,
        int to,
        Day date,
        List<Measure> show,
        Order order,
        int top) {
    public Question {
        down = List.copyOf(down);
        where = List.copyOf(where);
        show = List.copyOf(show);
    }

    /** Which day of a job counts. */
    enum Day {
        QUOTED(Field.QUOTED_ON),
        OPENED(Field.OPENED),
        CLOSED(Field.CLOSED);

        private final Field field;

        Day(Field field) {
            this.field = field;
        }

        Field field() {
            return field;
        }

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * How rows are ordered.
     *
     * @param by the figure; empty for the order of names
     * @param falling whether the largest comes first
     */
    record Order(Optional<Measure> by, boolean falling) {}

    /** Returns whether nothing is said about how far the jobs are. */
    boolean finishedOnly() {
        return where.stream().noneMatch(condition -> condition.field() == Field.STATE)
                && !groups().contains(Field.STATE);
    }

    /** Returns whether jobs are grouped by a field or asked for by it. */
    boolean asksFor(Field field) {
        return groups().contains(field) || where.stream().anyMatch(condition -> condition.field() == field);
    }

    /** Returns what is grouped by, that across last. */
    List<Field> groups() {
        List<Field> all = new ArrayList<>(down);
        across.ifPresent(all::add);
        return all;
    }

    /** Returns the columns of {@code lines.csv} that it needs; those of its jobs and what was left out included. */
    Set<String> columns() {
        Set<String> columns = new LinkedHashSet<>(List.of("state", "actual_hours", "margin"));
        groups().forEach(field -> columns.add(field.column()));
        where.forEach(condition -> columns.add(condition.field().column()));
        show.forEach(measure -> columns.addAll(measure.columns()));
        if (columns.contains(Field.REPAIR.column())) {
            columns.add("repair_type");
        }
        if (columns.remove("") || dated()) { // A year, quarter or month has no column of its own.
            columns.add(date.field().column());
        }
        return columns;
    }

    /** Returns the question without figures that would tell what a technician is paid, where it asks for one. */
    Question withoutWages() {
        return asksFor(Field.TECHNICIAN)
                ? showing(show.stream().filter(measure -> !measure.tellsWages()).toList(), order)
                : this;
    }

    Question showing(List<Measure> figures, Order ordered) {
        return new Question(title, down, across, where, from, to, date, figures, ordered, top);
    }

    boolean dated() {
        return Absent.has(from) || Absent.has(to);
    }
}
