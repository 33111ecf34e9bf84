package benchtrue.tables;

import benchtrue.calendar.Calendar;
import benchtrue.costing.CostedLines;
import benchtrue.costing.Restatement;
import benchtrue.findings.Findings;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.BackTest;
import benchtrue.revision.Revision;
import benchtrue.settings.Settings;
import benchtrue.tables.SmallTables.Tried;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Writes the tables that other programs read; names and order of their columns are the data contract's. */
public final class WriteTables {
    /** One row a quoted line: its hours and its money. */
    public static final String LINES = "lines.csv";

    /** One row a repair type: what is proposed. */
    public static final String REVISION = "revision.csv";

    private final CostedLines costs;
    private final Calendar calendar;
    private final Findings findings;
    private final Settings settings;
    private final ResultTable<Integer> lines;

    /** Takes the shop whose tables are written. */
    public WriteTables(CostedLines costs, Calendar calendar, Findings findings, Settings settings) {
        this.costs = costs;
        this.calendar = calendar;
        this.findings = findings;
        this.settings = settings;
        lines = LinesTable.of(costs, findings, settings);
    }

    /** Writes the small tables of a review into a folder that exists. */
    public void small(Revision revision, Path folder) throws IOException {
        Ledger ledger = costs.jobs().ledger();
        SmallTables.openLines(costs).write(calendar.backlog().lines(), folder);
        OpenTicketsTable.of(ledger, calendar.calls()).write(calendar.open(), folder);
        WeeksTable.of(ledger).write(calendar.weeks(), folder);
        SmallTables.findings(ledger).write(findings.repairs(), folder);
        SmallTables.causes(ledger).write(findings.causes(), folder);
        SmallTables.restorations().write(findings.restorations(), folder);
        SmallTables.revision(ledger).write(revision.changes(), folder);
        SmallTables.backTest().write(tried(revision.backTest()), folder);
    }

    private static List<Tried> tried(BackTest test) {
        return test.cutOffs().stream()
                .flatMap(cutOff -> test.methods().stream()
                        .map(method ->
                                new Tried(method, cutOff.day(), cutOff.scores().get(method))))
                .toList();
    }

    /** Returns the table of {@link #LINES}; a row is the index of a line. */
    public ResultTable<Integer> lines() {
        return lines;
    }

    /** Writes {@code lines.csv}. */
    public void lines(Path folder) throws IOException {
        lines.write(IntStream.range(0, costs.jobs().size()).boxed()::iterator, folder);
    }

    /** Writes {@code restatements.csv}. */
    public void restatements(List<Restatement> restatements, Path folder) throws IOException {
        SmallTables.restatements().write(restatements, folder);
    }

    /** Writes {@code calls.ics}, where there is anybody to call. */
    public void calls(Path folder) throws IOException {
        new CallsFile(costs.jobs().ledger(), settings.figures()).write(calendar, folder);
    }

    /** Returns what describes the tables that stand in a folder, and others: an open Data Package with their Table Schemas. */
    public Map<String, Object> described(Path folder, List<Map<String, Object>> others) {
        Ledger ledger = costs.jobs().ledger();
        Map<String, Object> described = new LinkedHashMap<>();
        described.put("name", "benchtrue-results");
        described.put("title", "Result tables of a night");
        described.put("profile", "tabular-data-package");
        described.put(
                "resources",
                Stream.concat(
                                Stream.of(
                                                lines,
                                                SmallTables.findings(ledger),
                                                SmallTables.causes(ledger),
                                                SmallTables.restorations(),
                                                SmallTables.revision(ledger),
                                                SmallTables.backTest(),
                                                SmallTables.openLines(costs),
                                                OpenTicketsTable.of(ledger, calendar.calls()),
                                                WeeksTable.of(ledger),
                                                SmallTables.restatements())
                                        .filter(table -> Files.exists(folder.resolve(table.file())))
                                        .map(ResultTable::described),
                                others.stream())
                        .toList());
        return described;
    }
}
