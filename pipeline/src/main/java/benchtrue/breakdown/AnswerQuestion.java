package benchtrue.breakdown;

import benchtrue.format.Figures;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tech.tablesaw.aggregate.AggregateFunctions;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.table.TableSlice;

/** Groups the jobs of a question, lays what stands across beside each other, and orders the rows. */
final class AnswerQuestion {
    /** Above this share of copied hours their load leans to 1. */
    private static final double MANY_COPIES = 0.15;

    /** Sorts what is not known behind everything known. */
    private static final String LAST = "\uffff";

    private final Question question;
    private final Figures figures;
    private final Table jobs;
    private final JobColumns columns;
    private final List<String> notes;

    AnswerQuestion(Facts facts, Question question, Figures figures) {
        this.question = question;
        this.figures = figures;
        SelectJobs select = new SelectJobs(facts.table(), question, figures);
        jobs = select.jobs();
        notes = new ArrayList<>(select.notes());
        for (Field field : question.groups()) {
            if (field.column().isEmpty()) {
                jobs.addColumns(SelectJobs.period(jobs, question, field));
            }
        }
        columns = new JobColumns(jobs);
    }

    /** A group of jobs with the names that it was grouped by. */
    private record Group(List<String> names, JobSums sums) {}

    Breakdown answer() {
        List<Group> rows = groups(question.down());
        List<String> across = question.across().map(this::texts).orElse(List.of());
        List<Breakdown.Column> columns = columns(across);
        JobSums[][] cells = cells(rows, across);
        List<Breakdown.Row> told = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            told.add(told(
                    named(rows.get(row).names()),
                    columns,
                    across,
                    cells[row],
                    rows.get(row).sums()));
        }
        int[] order = order(rows, told, columns);
        int shown = question.top() == 0 ? order.length : Math.min(question.top(), order.length);
        warn();
        return new Breakdown(
                title(),
                question.down().stream().map(Field::word).toList(),
                columns,
                Arrays.stream(order).limit(shown).mapToObj(told::get).toList(),
                rest(Arrays.copyOfRange(order, shown, order.length), rows, across, cells, columns),
                total(columns, across),
                notes);
    }

    private List<Group> groups(List<Field> fields) {
        if (jobs.isEmpty()) {
            return List.of();
        }
        String[] names = fields.stream().map(AnswerQuestion::column).toArray(String[]::new);
        List<Group> groups = new ArrayList<>();
        for (TableSlice slice : jobs.splitOn(names)) {
            int[] rows = IntStream.range(0, slice.rowCount())
                    .map(slice::mappedRowNumber)
                    .toArray();
            groups.add(new Group(
                    Arrays.stream(names)
                            .map(name -> jobs.stringColumn(name).get(rows[0]))
                            .toList(),
                    new JobSums(this.columns, rows)));
        }
        return groups;
    }

    private static String column(Field field) {
        return field.column().isEmpty() ? field.word() : field.column();
    }

    private List<String> texts(Field field) {
        return jobs.stringColumn(column(field)).unique().asList().stream()
                .map(text -> text.isEmpty() ? LAST : text)
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .map(text -> text.equals(LAST) ? "" : text)
                .toList();
    }

    private List<Breakdown.Column> columns(List<String> across) {
        return Stream.concat(across.stream().map(AnswerQuestion::named), Stream.of(""))
                .flatMap(name -> question.show().stream().map(measure -> new Breakdown.Column(name, measure)))
                .toList();
    }

    private static String named(String text) {
        return text.isEmpty() ? Figures.UNKNOWN : text;
    }

    private static List<String> named(List<String> names) {
        return names.stream().map(AnswerQuestion::named).toList();
    }

    /** By row and by what stands across; null where a group has no job. Laid out by Tablesaw's pivot over the groups' numbers. */
    private JobSums[][] cells(List<Group> rows, List<String> across) {
        JobSums[][] cells = new JobSums[rows.size()][across.size()];
        if (across.isEmpty() || rows.isEmpty()) {
            return cells;
        }
        List<Group> groups = groups(question.groups());
        Map<List<String>, Integer> place = new HashMap<>();
        rows.forEach(row -> place.put(row.names(), place.size()));
        StringColumn down = StringColumn.create("row");
        StringColumn side = StringColumn.create("side");
        IntColumn number = IntColumn.create("group");
        for (Group group : groups) {
            List<String> names = group.names();
            down.append(place.get(names.subList(0, names.size() - 1)).toString());
            side.append(Integer.toString(across.indexOf(names.get(names.size() - 1))));
            number.append(number.size());
        }
        Table laid = Table.create(down, side, number).pivot("row", "side", "group", AggregateFunctions.min);
        for (int i = 0; i < laid.rowCount(); i++) {
            int row = Integer.parseInt(laid.getString(i, "row"));
            for (int j = 0; j < across.size(); j++) {
                DoubleColumn found = laid.doubleColumn(Integer.toString(j));
                cells[row][j] = found.isMissing(i)
                        ? null
                        : groups.get((int) found.getDouble(i)).sums();
            }
        }
        return cells;
    }

    private Breakdown.Row told(
            List<String> names, List<Breakdown.Column> columns, List<String> across, JobSums[] cells, JobSums all) {
        List<Figure> told = new ArrayList<>();
        for (int i = 0; i <= across.size(); i++) {
            JobSums cell = i < across.size() ? cells[i] : all;
            question.show().forEach(measure -> told.add(cell == null ? Figure.NONE : cell.figure(measure)));
        }
        return new Breakdown.Row(names, told);
    }

    /** Returns the places of the rows in the question's order. */
    private int[] order(List<Group> rows, List<Breakdown.Row> told, List<Breakdown.Column> columns) {
        if (rows.isEmpty()) {
            return new int[0];
        }
        Table keys = Table.create(IntColumn.indexColumn("place", rows.size(), 0));
        List<String> sort = new ArrayList<>();
        question.order().by().ifPresent(by -> {
            int column = columns.indexOf(new Breakdown.Column("", by));
            boolean falling = question.order().falling();
            double unknown = falling ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
            keys.addColumns(DoubleColumn.create("figure", told.stream().mapToDouble(row -> {
                double value = row.figures().get(column).value();
                return Double.isNaN(value) ? unknown : value;
            })));
            sort.add(falling ? "-figure" : "figure");
        });
        for (int i = 0; i < question.down().size(); i++) {
            int field = i;
            String name = "name " + i;
            keys.addColumns(StringColumn.create(
                    name, rows.stream().map(row -> row.names().get(field)).map(text -> text.isEmpty() ? LAST : text)));
            sort.add(name);
        }
        return keys.sortOn(sort.toArray(String[]::new)).intColumn("place").asIntArray();
    }

    private Optional<Breakdown.Row> rest(
            int[] places, List<Group> rows, List<String> across, JobSums[][] cells, List<Breakdown.Column> columns) {
        if (places.length == 0) {
            return Optional.empty();
        }
        JobSums[] together = new JobSums[across.size()];
        for (int i = 0; i < together.length; i++) {
            int side = i;
            together[i] = together(Arrays.stream(places).mapToObj(place -> cells[place][side]));
        }
        JobSums all =
                together(Arrays.stream(places).mapToObj(place -> rows.get(place).sums()));
        List<String> names = new ArrayList<>(List.of("all others (" + figures.count(places.length) + ")"));
        while (names.size() < question.down().size()) {
            names.add("");
        }
        return Optional.of(told(names, columns, across, together, all));
    }

    private JobSums together(Stream<JobSums> parts) {
        int[] rows = parts.filter(part -> part != null)
                .flatMapToInt(JobSums::rows)
                .sorted()
                .toArray();
        return rows.length == 0 ? null : new JobSums(this.columns, rows);
    }

    private Breakdown.Row total(List<Breakdown.Column> columns, List<String> across) {
        JobSums[] cells = new JobSums[across.size()];
        question.across()
                .ifPresent(field -> groups(List.of(field))
                        .forEach(group -> cells[across.indexOf(group.names().get(0))] = group.sums()));
        List<String> names = new ArrayList<>(List.of("all"));
        while (names.size() < question.down().size()) {
            names.add("");
        }
        return told(names, columns, across, cells, JobSums.all(this.columns));
    }

    private String title() {
        return question.title().isBlank()
                ? question.groups().stream().map(Field::word).collect(Collectors.joining(" by "))
                : question.title();
    }

    private void warn() {
        JobSums all = JobSums.all(this.columns);
        if (question.show().contains(Measure.LOAD)) {
            warnOfLoads(all.counted());
        }
        question.show().stream()
                .filter(measure -> measure == Measure.MARGIN || measure == Measure.LABOUR)
                .forEach(measure -> {
                    int unknown = all.unknown(measure.columns().get(0));
                    if (unknown > 0) {
                        notes.add("Of " + figures.count(unknown, "job", "jobs") + " the " + measure.heading()
                                + " is not known; " + (unknown == 1 ? "it adds" : "they add") + " nothing.");
                    }
                });
    }

    private void warnOfLoads(JobSums counted) {
        int copied = counted.copied();
        int missing = LoadRange.notJudged(this.columns, counted);
        if (copied > MANY_COPIES * counted.size()) {
            notes.add("Hours of " + figures.count(copied) + " of " + figures.count(counted.size())
                    + " jobs likely repeat their quotes: hours per quoted hour lean to 1.");
        }
        if (missing > 0) {
            notes.add(figures.count(missing) + " of " + figures.count(counted.size())
                    + " jobs are of repairs that are not judged since some of their hours could not be read: hours per"
                    + " quoted hour may be too low.");
        }
    }

    Breakdown jobs() {
        List<Breakdown.Column> columns = question.show().stream()
                .filter(measure -> measure != Measure.JOBS && measure != Measure.RANGE && measure != Measure.EACH)
                .map(measure -> new Breakdown.Column("", measure))
                .toList();
        List<String> fields =
                question.groups().stream().map(AnswerQuestion::column).toList();
        Table sorted = jobs.isEmpty() ? jobs : jobs.sortOn(fields.toArray(String[]::new));
        JobColumns single = new JobColumns(sorted);
        List<Breakdown.Row> rows = new ArrayList<>();
        for (int row = 0; row < sorted.rowCount(); row++) {
            int at = row;
            JobSums one = new JobSums(single, new int[] {row});
            rows.add(new Breakdown.Row(
                    Stream.concat(fields.stream(), Stream.of("ticket", "line"))
                            .map(column -> named(sorted.stringColumn(column).get(at)))
                            .toList(),
                    columns.stream().map(column -> one.figure(column.measure())).toList()));
        }
        List<String> names =
                new ArrayList<>(question.groups().stream().map(Field::word).toList());
        names.addAll(List.of("ticket", "line"));
        List<String> all = new ArrayList<>(names);
        all.replaceAll(name -> "");
        all.set(0, "all");
        JobSums whole = JobSums.all(this.columns);
        return new Breakdown(
                title() + ", job by job",
                names,
                columns,
                rows,
                Optional.empty(),
                new Breakdown.Row(
                        all,
                        columns.stream()
                                .map(column -> whole.figure(column.measure()))
                                .toList()),
                List.of());
    }
}
