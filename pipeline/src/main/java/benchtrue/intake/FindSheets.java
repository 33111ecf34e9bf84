package benchtrue.intake;

import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.MappedTable;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.dialects.SheetDetector;
import benchtrue.intake.files.Workbook;
import benchtrue.settings.FileRule;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds what is read from one file: a table, several, or one from several sheets. */
final class FindSheets {
    private final Path path;
    private final String file;
    private final List<MappedTable> rules;
    private final List<ExportFile> found = new ArrayList<>();
    private final List<String> left = new ArrayList<>();

    private FindSheets(Path path, String file, List<MappedTable> rules) {
        this.path = path;
        this.file = file;
        this.rules = rules;
    }

    /**
     * Looks into a file.
     *
     * @param file path within the shop folder
     * @param rules that fit it, or its own table
     */
    static FindSheets of(Path path, String file, List<MappedTable> rules) {
        FindSheets find = new FindSheets(path, file, rules);
        Map<String, String> taken = new LinkedHashMap<>();
        for (MappedTable rule : rules) {
            List<String> sheets = find.said(rule);
            if (sheets.isEmpty() || !find.export(rule, Optional.empty()).isSheet()) {
                find.found.add(find.export(rule, Optional.empty()));
            }
        }
        if (find.found.size() < rules.size()) {
            find.lookInside(taken);
        }
        return find;
    }

    private List<String> said(MappedTable rule) {
        return rule.mapping().rule().map(said -> said.shape().sheets()).orElse(List.of());
    }

    private ExportFile export(MappedTable rule, Optional<String> sheet) {
        List<MappedTable> beside = rules.stream()
                .filter(other ->
                        other != rule && (sheet.isEmpty() || said(other).isEmpty() || names(other, sheet.get())))
                .toList();
        int day = FileDay.of(file.substring(file.indexOf('/') + 1)
                + sheet.map(name -> " " + name).orElse(""));
        int effective = rule.mapping()
                .rule()
                .flatMap(said -> said.shape().effective())
                .map(said -> (int) said.toEpochDay())
                .orElse(day);
        return new ExportFile(path, file, sheet, rule.table(), effective, rule.mapping(), beside);
    }

    private boolean names(MappedTable rule, String sheet) {
        return said(rule).stream().anyMatch(pattern -> FileRule.fits(pattern, sheet.strip()));
    }

    private void lookInside(Map<String, String> taken) {
        try (Workbook workbook = Workbook.open(path, file)) {
            for (Workbook.Sheet sheet : workbook.sheets()) {
                boolean read = false;
                for (MappedTable rule : rules) {
                    if (takes(rule, sheet, workbook)) {
                        read = true;
                        requireOnce(taken, rule, sheet.name());
                        found.add(export(rule, Optional.of(sheet.name())));
                    }
                }
                if (!read && sheet.visibility() == Workbook.Visibility.VISIBLE) {
                    left.add(file + " sheet \"" + Problem.shown(sheet.name()) + "\"");
                }
            }
            requireFound(workbook);
        } catch (IOException failed) {
            throw new Refusal(
                    ExitCode.READ_FAILED, file + ": reading failed part-way: " + failed.getMessage() + ".", failed);
        }
    }

    /** A sheet that is named outright is read; one that a pattern fits, where it has the columns or many of them. */
    private boolean takes(MappedTable rule, Workbook.Sheet sheet, Workbook workbook) throws IOException {
        boolean outright =
                said(rule).stream().anyMatch(name -> Mapping.plain(name).equals(Mapping.plain(sheet.name())));
        if (outright || !names(rule, sheet.name()) || sheet.visibility() == Workbook.Visibility.HIDDEN) {
            return outright;
        }
        return SheetDetector.holds(workbook, sheet, export(rule, Optional.of(sheet.name())));
    }

    private void requireOnce(Map<String, String> taken, MappedTable rule, String sheet) {
        int line = rule.mapping().rule().orElseThrow().line();
        String earlier = taken.put(rule.table().title() + " " + sheet, String.valueOf(line));
        if (earlier != null) {
            throw new Refusal(
                    ExitCode.SETTINGS,
                    ReadSettings.FILE + ", lines " + earlier + " and " + line + ": found two rules for the table "
                            + rule.table().title() + " on sheet \"" + Problem.shown(sheet) + "\" of " + file
                            + ", expected one.");
        }
    }

    private void requireFound(Workbook workbook) {
        for (MappedTable rule : rules) {
            boolean none = !said(rule).isEmpty()
                    && found.stream().noneMatch(export -> export.mapping().equals(rule.mapping()));
            if (none) {
                throw SheetDetector.noSheet(export(rule, Optional.empty()), workbook);
            }
        }
    }

    /** Returns what is to be read. */
    List<ExportFile> found() {
        return found;
    }

    /** Returns visible sheets that no rule takes. */
    List<String> left() {
        return left;
    }
}
