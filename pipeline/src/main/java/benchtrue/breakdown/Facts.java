package benchtrue.breakdown;

import benchtrue.format.Figures;
import benchtrue.format.FormulaGuard;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.tables.ResultTable;
import com.univocity.parsers.csv.CsvParser;
import com.univocity.parsers.csv.CsvParserSettings;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.numbers.DoubleColumnType;
import tech.tablesaw.io.RuntimeIOException;
import tech.tablesaw.io.csv.CsvReadOptions;
import tech.tablesaw.io.csv.CsvReader;

/** The columns of {@code lines.csv} that questions need, read by Tablesaw; this class loads it. */
public final class Facts {
    private static final Set<String> NUMBERS = Set.of(
            "quoted_hours",
            "actual_hours",
            "rework_hours",
            "quoted_hours_today",
            "labour_revenue",
            "parts_revenue",
            "labour_cost",
            "parts_cost",
            "overhead_cost",
            "margin",
            "days_in_shop",
            "days_waited",
            "built_year");
    private static final List<String> KEYS = List.of("ticket", "line");
    /** Column of the visits' numbers; the lines of a ticket stand together. */
    static final String VISIT = "visit";

    private static final int LONGEST_CELL = 1 << 20;
    private static final String JARS = "java.class.path";

    static { // Else the first table looks through every jar for readers, none of which is needed.
        String jars = System.setProperty(JARS, "");
        Table.create();
        System.setProperty(JARS, jars);
    }

    private final Table table;

    /** Whether the jobs behind an answer will be listed, for which their keys are read. */
    public enum Listing {
        GROUPS,
        EVERY_JOB
    }

    private Facts(Table table) {
        this.table = table;
    }

    /**
     * Reads what some questions need.
     *
     * @param listing whether the jobs will be listed
     * @param rows how many lines the record of the run counts
     * @throws Refusal where a column or a line is missing
     */
    public static Facts read(Path lines, Collection<Question> questions, Listing listing, long rows) {
        Set<String> needed = needed(questions);
        if (listing == Listing.EVERY_JOB) {
            needed.addAll(KEYS);
        }
        try {
            Table table = new PickedColumns().read(lines, needed);
            Set<String> missing = new HashSet<>(needed);
            missing.removeAll(table.columnNames());
            if (!missing.isEmpty() || table.rowCount() != rows) {
                throw new Refusal(
                        ExitCode.UNUSABLE_FILE,
                        lines + ": found " + table.rowCount() + " lines"
                                + (missing.isEmpty() ? "" : " without " + String.join(", ", missing))
                                + ", expected " + rows
                                + " lines with every column. Another version wrote it: run the night again.");
            }
            return new Facts(readable(counted(table, questions, listing)));
        } catch (IOException | RuntimeIOException e) {
            throw new Refusal(ExitCode.READ_FAILED, lines + " can't be read: " + e.getMessage(), e);
        }
    }

    private static Set<String> needed(Collection<Question> questions) {
        return questions.stream()
                .flatMap(question -> question.columns().stream())
                .collect(Collectors.toSet());
    }

    /** Takes what some questions need from a table that is about to be written; a row is its place. */
    public static Facts of(ResultTable<Integer> lines, int rows, Collection<Question> questions) {
        Table table = Table.create();
        for (String name : needed(questions)) {
            Stream<String> cells = IntStream.range(0, rows).boxed().map(lines.cell(name));
            table.addColumns(
                    NUMBERS.contains(name)
                            ? DoubleColumn.create(name, cells.mapToDouble(Facts::number))
                            : StringColumn.create(name, cells));
        }
        return new Facts(readable(counted(table, questions, Listing.GROUPS)));
    }

    private static double number(String cell) {
        return cell.isEmpty() ? DoubleColumnType.missingValueIndicator() : Double.parseDouble(cell);
    }

    /** Steps over columns that nobody asked for, of which the library's own reader makes texts too. */
    private static final class PickedColumns extends CsvReader {
        Table read(Path lines, Set<String> needed) throws IOException {
            try (BufferedReader text = Files.newBufferedReader(lines, StandardCharsets.UTF_8)) {
                text.mark(LONGEST_CELL);
                List<String> header = List.of(text.readLine().split(","));
                text.reset();
                CsvParserSettings settings = new CsvParserSettings();
                settings.setLineSeparatorDetectionEnabled(true);
                settings.setReadInputOnSeparateThread(false);
                settings.getFormat().setComment('\0');
                settings.setMaxCharsPerColumn(LONGEST_CELL);
                settings.selectIndexes(needed.stream()
                        .map(header::indexOf)
                        .filter(at -> at >= 0)
                        .toArray(Integer[]::new));
                CsvReadOptions options = options(text);
                return parseRows(options, false, text, options.columnTypeReadOptions(), new CsvParser(settings));
            }
        }

        /** What the library would take for missing or for a type is text here. */
        private static CsvReadOptions options(Reader text) {
            return CsvReadOptions.builder(text)
                    .columnTypes(name -> NUMBERS.contains(name) ? ColumnType.DOUBLE : ColumnType.STRING)
                    .missingValueIndicator("")
                    .build();
        }
    }

    /** Gives each visit a number, and leaves keys out that nobody will see: they are as many as the lines. */
    private static Table counted(Table table, Collection<Question> questions, Listing listing) {
        if (!table.columnNames().contains("ticket")) {
            return table;
        }
        StringColumn tickets = table.stringColumn("ticket");
        IntColumn visits = IntColumn.create(VISIT);
        String before = null;
        int visit = -1;
        for (String ticket : tickets) {
            visit += ticket.equals(before) ? 0 : 1;
            visits.append(visit);
            before = ticket;
        }
        table.addColumns(visits);
        boolean shown =
                listing == Listing.EVERY_JOB || questions.stream().anyMatch(question -> question.asksFor(Field.TICKET));
        return shown ? table : table.removeColumns("ticket");
    }

    /** Takes apostrophes away that kept spreadsheets from running text, and gives repairs without a title their key. */
    private static Table readable(Table table) {
        for (StringColumn column : table.stringColumns()) {
            if (column.unique().asList().stream().anyMatch(cell -> !cell.equals(FormulaGuard.read(cell)))) {
                table.replaceColumn(mapped(column, FormulaGuard::read));
            }
        }
        String titles = Field.REPAIR.column();
        if (table.columnNames().contains(titles)) {
            table.replaceColumn(labels(table.stringColumn(titles), table.stringColumn("repair_type")));
        }
        return table;
    }

    static StringColumn mapped(StringColumn column, UnaryOperator<String> reading) {
        Map<String, String> read = new HashMap<>();
        StringColumn mapped = StringColumn.create(column.name());
        for (int row = 0; row < column.size(); row++) {
            mapped.append(read.computeIfAbsent(column.get(row), reading));
        }
        return mapped;
    }

    /** A repair's title; its key where it has none; both where two repairs share a title. */
    private static StringColumn labels(StringColumn titles, StringColumn keys) {
        Map<String, String> byKey = new HashMap<>();
        Map<String, Set<String>> sharing = new HashMap<>();
        for (int row = 0; row < keys.size(); row++) {
            if (byKey.put(keys.get(row), titles.get(row)) == null) {
                sharing.computeIfAbsent(titles.get(row), title -> new HashSet<>())
                        .add(keys.get(row));
            }
        }
        byKey.replaceAll((key, title) ->
                title.isBlank() ? key : sharing.get(title).size() > 1 ? title + " (" + key + ")" : title);
        StringColumn labels = StringColumn.create(titles.name());
        for (int row = 0; row < keys.size(); row++) {
            labels.append(byKey.get(keys.get(row)));
        }
        return labels;
    }

    Table table() {
        return table;
    }

    /** Returns the answer to one of the questions that were read for. */
    public Breakdown answer(Question question, Figures figures) {
        return new AnswerQuestion(this, question, figures).answer();
    }

    /** Returns the jobs behind an answer, one a row. */
    public Breakdown jobs(Question question, Figures figures) {
        return new AnswerQuestion(this, question, figures).jobs();
    }
}
