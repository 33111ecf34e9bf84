package benchtrue.tables;

import benchtrue.calendar.OpenTicket;
import benchtrue.format.FormulaGuard;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;

/** What an earlier result said, read back from its tables. */
public final class EarlierResult {
    /** Name of the file that tells what was found. */
    public static final String FINDINGS = "findings.csv";

    private final Path folder;

    /** Takes a result's folder. */
    public EarlierResult(Path folder) {
        this.folder = folder;
    }

    /**
     * A repair type's row in the findings of an earlier result.
     *
     * @param repairType key of the repair type
     * @param lines judged lines
     * @param loadFactor hours per quoted hour, NaN where there was none
     * @param verdict the verdict's words
     */
    public record EarlierFinding(String repairType, int lines, double loadFactor, String verdict) {}

    /** Returns the rows of {@code findings.csv}, in its order. */
    public List<EarlierFinding> findings() throws IOException {
        return SmallTables.findings(null).read(folder, EarlierResult::finding);
    }

    private static EarlierFinding finding(CSVRecord row) {
        String factor = row.get("load_factor");
        return new EarlierFinding(
                FormulaGuard.read(row.get("repair_type")),
                Integer.parseInt(row.get("lines")),
                factor.isEmpty() ? Double.NaN : Double.parseDouble(factor),
                row.get("verdict"));
    }

    /**
     * A day to promise that an earlier result named for an open ticket.
     *
     * @param day days since 1970-01-01
     */
    public record EarlierPromise(String ticket, int day) {}

    /** Returns the days that {@code open-tickets.csv} named; none where that result had no such file. */
    public List<EarlierPromise> promises() throws IOException {
        ResultTable<OpenTicket> table = OpenTicketsTable.of(null, List.of());
        return Files.exists(folder.resolve(table.file()))
                ? table.read(folder, EarlierResult::promise).stream()
                        .flatMap(Optional::stream)
                        .toList()
                : List.of();
    }

    private static Optional<EarlierPromise> promise(CSVRecord row) {
        String day = row.get("promise_80");
        return day.isEmpty()
                ? Optional.empty()
                : Optional.of(new EarlierPromise(FormulaGuard.read(row.get("ticket")), (int)
                        LocalDate.parse(day).toEpochDay()));
    }

    /** Returns of how many repair types {@code revision.csv} proposed to change the hours. */
    public int changes() throws IOException {
        List<Boolean> changed = SmallTables.revision(null)
                .read(folder, row -> !row.get("proposed_hours").equals(row.get("book_hours")));
        return (int) changed.stream().filter(is -> is).count();
    }
}
