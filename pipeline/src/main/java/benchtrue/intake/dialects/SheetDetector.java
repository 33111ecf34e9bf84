package benchtrue.intake.dialects;

import benchtrue.intake.cells.DateSystem;
import benchtrue.intake.columns.ColumnNames;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.files.Cells;
import benchtrue.intake.files.SheetRecords;
import benchtrue.intake.files.Workbook;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** Tells which sheet of a workbook holds a table, and on which row its header stands, by the names of the columns. */
public final class SheetDetector {
    private static final int MOST_TITLE_ROWS = 60;

    private SheetDetector() {}

    /** A row that may be the header. */
    private record Candidate(int sheet, int row, int columns) {}

    /**
     * Tells the sheet of a file.
     *
     * @throws Refusal where none or several could be meant, or the file is no workbook
     */
    static SheetSource of(ExportFile file) throws IOException {
        ColumnNames names = new ColumnNames(file.table(), file.mapping());
        try (Workbook workbook = Workbook.open(file.path(), file.name())) {
            Optional<String> said = file.sheet();
            List<Candidate> whole = new ArrayList<>();
            Candidate best = new Candidate(-1, 1, -1);
            for (int sheet = 0; sheet < workbook.sheets().size(); sheet++) {
                if (isRead(workbook.sheets().get(sheet), said)) {
                    Candidate found = header(workbook, sheet, names, file);
                    best = found.columns() > best.columns() ? found : best;
                    if (found.columns() == Integer.MAX_VALUE) {
                        whole.add(found);
                    }
                }
            }
            requireOne(whole, best, workbook, file);
            return source(workbook, best, said, file);
        }
    }

    /** Tells the sheet and the header's row of a workbook of which no table is known, by the names that look like columns. */
    public static SheetSource unknown(ExportFile file, ToIntFunction<List<String>> familiar) throws IOException {
        try (Workbook workbook = Workbook.open(file.path(), file.name())) {
            Candidate best = new Candidate(-1, 1, -1);
            for (int sheet = 0; sheet < workbook.sheets().size(); sheet++) {
                if (isRead(workbook.sheets().get(sheet), file.sheet())) {
                    Candidate found = header(workbook, sheet, familiar);
                    best = found.columns() > best.columns() ? found : best;
                }
            }
            requireOne(List.of(), best, workbook, file);
            return source(workbook, best, Optional.empty(), file);
        }
    }

    /** Returns the row that looks most like a header, or the first that can be nothing else. */
    private static Candidate header(Workbook workbook, int sheet, ToIntFunction<List<String>> familiar)
            throws IOException {
        Candidate best = new Candidate(-1, 1, -1);
        try (SheetRecords records = workbook.records(workbook.sheets().get(sheet))) {
            for (int rows = 0; rows < MOST_TITLE_ROWS && records.next(); rows++) {
                List<String> cells = Cells.of(records);
                int columns = familiar.applyAsInt(cells);
                records.forgetWidth();
                best = columns > best.columns() ? new Candidate(sheet, records.line(), columns) : best;
                if (StackedTables.isHeader(cells, familiar)) {
                    return new Candidate(sheet, records.line(), columns);
                }
            }
        }
        return best;
    }

    private static boolean isRead(Workbook.Sheet sheet, Optional<String> said) {
        return said.isPresent()
                ? sheet.name().strip().equalsIgnoreCase(said.get().strip())
                : sheet.visibility() == Workbook.Visibility.VISIBLE;
    }

    private static Candidate header(Workbook workbook, int sheet, ColumnNames names, ExportFile file)
            throws IOException {
        int said = file.rule().map(rule -> rule.headerLine().orElse(0)).orElse(0);
        try (SheetRecords records = workbook.records(workbook.sheets().get(sheet))) {
            return best(records, sheet, said, names, file);
        }
    }

    private static Candidate best(SheetRecords records, int sheet, int said, ColumnNames names, ExportFile file)
            throws IOException {
        Map<Integer, List<String>> above = new LinkedHashMap<>();
        Candidate best = new Candidate(sheet, Math.max(1, said), 0);
        int most = file.beside().isEmpty() ? MOST_TITLE_ROWS : Integer.MAX_VALUE;
        for (int rows = 0; rows < most && records.next(); rows++) {
            List<String> cells = Cells.of(records);
            records.forgetWidth();
            int columns = names.complete(cells) ? Integer.MAX_VALUE : names.count(cells);
            if ((said == 0 || said == records.line()) && columns > best.columns()) {
                best = new Candidate(sheet, records.line(), columns);
            }
            if (columns == Integer.MAX_VALUE && (said == 0 || said == records.line())) {
                above.forEach((row, found) -> {
                    if (said == 0 && file.beside().isEmpty() && names.isRow(found, cells)) {
                        throw DialectDetector.rowAbove(file, "row " + row, "row " + records.line());
                    }
                });
                return best;
            }
            if (rows < MOST_TITLE_ROWS) {
                above.put(records.line(), cells);
            }
        }
        return best;
    }

    private static void requireOne(List<Candidate> whole, Candidate best, Workbook workbook, ExportFile file) {
        if (best.sheet() < 0) {
            throw noSheet(file, workbook);
        }
        if (whole.size() > 1) {
            List<Workbook.Sheet> sheets = whole.stream()
                    .map(candidate -> workbook.sheets().get(candidate.sheet()))
                    .toList();
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file.name() + ": found " + sheets.size() + " sheets with the columns of "
                            + file.table().title()
                            + ", " + names(sheets) + ", expected one. Say which in shop.toml: [[files]] name = \""
                            + file.fileName() + "\", table = \""
                            + file.table().title() + "\", sheet = \""
                            + Problem.shown(sheets.get(0).name())
                            + "\", or sheet = \"*\" where all of them hold rows.");
        }
    }

    /** Returns the refusal of a workbook without the sheet that is to be read. */
    public static Refusal noSheet(ExportFile file, Workbook workbook) {
        List<String> said = file.rule().map(rule -> rule.shape().sheets()).orElse(List.of());
        return new Refusal(
                ExitCode.UNUSABLE_FILE,
                file.name() + ": found the sheets " + names(workbook.sheets()) + ", expected "
                        + (said.isEmpty()
                                ? "one that is not hidden. Show the sheet of the table, or name it in shop.toml:"
                                        + " sheet = \"...\"."
                                : "\"" + String.join("\", \"", said)
                                        + "\", as shop.toml says. Correct sheet = \"...\" there."));
    }

    /** Returns whether a sheet has the columns of a rule, or so many of them that their lack is to be told. */
    public static boolean holds(Workbook workbook, Workbook.Sheet sheet, ExportFile file) throws IOException {
        ColumnNames names = new ColumnNames(file.table(), file.mapping());
        Candidate found = header(workbook, workbook.sheets().indexOf(sheet), names, file);
        return 2 * (long) found.columns() > names.mapped();
    }

    private static String names(List<Workbook.Sheet> sheets) {
        return String.join(
                ", ",
                sheets.stream()
                        .limit(10)
                        .map(sheet -> "\"" + Problem.shown(sheet.name()) + "\"")
                        .toList());
    }

    private static SheetSource source(Workbook workbook, Candidate best, Optional<String> said, ExportFile file)
            throws IOException {
        List<String> hidden = new ArrayList<>();
        for (int sheet = 0; sheet < workbook.sheets().size(); sheet++) {
            if (sheet != best.sheet() && workbook.sheets().get(sheet).visibility() == Workbook.Visibility.HIDDEN) {
                hidden.add(workbook.sheets().get(sheet).name());
            }
        }
        List<String> reasons = new ArrayList<>();
        reasons.add(
                "sheet \"" + Problem.shown(workbook.sheets().get(best.sheet()).name()) + "\" ("
                        + (said.isPresent() ? "shop.toml says so" : "the only one with the columns") + ")");
        if (best.row() > 1) {
            reasons.add("column names in row " + best.row() + " (the rows before hold none)");
        }
        if (workbook.dates() == DateSystem.FROM_1904) {
            reasons.add("dates counted from 1904 (the workbook says so)");
        }
        return new SheetSource(
                file.path(),
                best.sheet(),
                best.row(),
                title(workbook, best),
                workbook.dates(),
                reasons,
                hidden,
                file.name());
    }

    private static String title(Workbook workbook, Candidate best) throws IOException {
        List<String> above = new ArrayList<>();
        try (SheetRecords records = workbook.records(workbook.sheets().get(best.sheet()))) {
            while (above.size() < MOST_TITLE_ROWS && records.next() && records.line() < best.row()) {
                above.add(String.join(" ", Cells.of(records)).strip());
                records.forgetWidth();
            }
        }
        return String.join(" ", above);
    }
}
