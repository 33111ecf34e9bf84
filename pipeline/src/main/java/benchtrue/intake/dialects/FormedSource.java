package benchtrue.intake.dialects;

import benchtrue.format.Spelling;
import benchtrue.intake.cells.DateSystem;
import benchtrue.intake.cells.NumberText;
import benchtrue.intake.columns.ColumnNames;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.Made;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.columns.Shape;
import benchtrue.intake.files.Cells;
import benchtrue.intake.files.DigestedFile;
import benchtrue.intake.files.Records;
import benchtrue.settings.DateOrder;
import benchtrue.settings.DecimalSign;
import benchtrue.settings.FileRule;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Notice;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A file opened as the rows of its table: without rows that only repeat or name others, and in one row an entry.
 *
 * @param raw the file as it is
 * @param forms which of its rows repeat or name others
 * @param order of the dates that wide headers count from
 */
record FormedSource(Source raw, ExportFile file, RowForms forms, Supplier<DateOrder> order) implements Source {
    private static final int SHOWN = 5;

    /** Looks through a file whole. */
    static FormedSource of(ExportFile file, Source raw) throws IOException {
        try (DigestedFile bytes = new DigestedFile(file.path(), file.name());
                Records records = raw.openWide(bytes, file.name())) {
            List<String> header = records.next() ? Cells.of(records) : List.of();
            requireSources(header, records, file);
            RowForms forms =
                    new RowForms(new RowCells(header, file), file.rule().flatMap(FileRule::totalsRow));
            AnchorDates anchors = new AnchorDates(header, file);
            List<ColumnNames> beside = file.beside().stream()
                    .map(other -> new ColumnNames(other.table(), other.mapping()))
                    .filter(other -> !other.complete(header))
                    .toList();
            while (records.next()) {
                List<String> wide = Cells.of(records);
                List<String> row = file.isSheet() ? fitted(wide, header.size()) : wide;
                if (beside.stream().anyMatch(other -> other.complete(wide))) {
                    forms.endAt(records.line());
                    break;
                }
                forms.take(row, records.line());
                anchors.take(row);
            }
            return new FormedSource(raw, file, forms.end(), anchors::order);
        }
    }

    /** Returns a sheet's row with as many cells as its header. */
    private static List<String> fitted(List<String> row, int size) {
        List<String> fitted = new ArrayList<>(row.subList(0, Math.min(size, row.size())));
        fitted.addAll(Collections.nCopies(size - fitted.size(), ""));
        return fitted;
    }

    private static void requireSources(List<String> header, Records records, ExportFile file) {
        Shape shape = file.mapping().shape();
        List<String> plain = header.stream().map(Mapping::plain).toList();
        Stream.concat(shape.made().stream(), shape.anchor().stream())
                .flatMap(name -> Made.sources(name).stream())
                .filter(name -> !plain.contains(Mapping.plain(name)))
                .findFirst()
                .ifPresent(name -> {
                    throw refused(
                            file,
                            "line " + records.line() + ": found no column \"" + Problem.shown(name)
                                    + "\", expected it by the rule on line "
                                    + file.rule().orElseThrow().line() + " of " + ReadSettings.FILE
                                    + Spelling.nearest(name, header)
                                            .map(near -> " (the nearest there is \"" + Problem.shown(near) + "\")")
                                            .orElse("")
                                    + ". Correct the rule.");
                });
        if (shape.unpivot().isPresent() && shape.wide(header).length == 0) {
            throw refused(
                    file,
                    "line " + records.line() + ": found none of the columns that [files.unpivot] on line "
                            + shape.unpivot().get().line() + " of " + ReadSettings.FILE
                            + " names, expected at least one. Correct the rule.");
        }
    }

    private static Refusal refused(ExportFile file, String what) {
        return new Refusal(ExitCode.UNUSABLE_FILE, file.name() + ", " + what);
    }

    @Override
    public Records open(InputStream bytes, String name) throws IOException {
        Records records = raw.open(bytes, name);
        Shape shape = file.mapping().shape();
        if (shape.isPlain()) {
            return new TrimmedRecords(records, 0, forms);
        }
        String plain = file.fileName().replaceAll("\\.[^.]*$", "");
        WideHeader days =
                shape.unpivot().map(said -> new WideHeader(said, order)).orElse(null);
        return new ShapedRecords(
                records, shape, forms, new RowsPlace(file.sheet().orElse(""), plain, title(), days));
    }

    @Override
    public DecimalSign decimals(NumberText.Sign sign, DialectEvidence evidence) {
        return raw.decimals(sign, evidence);
    }

    @Override
    public DateSystem serials() {
        return raw.serials();
    }

    @Override
    public String title() {
        return raw.title();
    }

    @Override
    public List<String> reasons() {
        List<String> reasons = new ArrayList<>(raw.reasons());
        if (!forms.leftOut().isEmpty()) {
            int more = forms.leftOut().size() - shown().size();
            reasons.add("rows that only repeat or name others left out: " + String.join(", ", shown())
                    + (more > 0 ? " and " + more + " more" : ""));
        }
        return reasons;
    }

    private List<String> shown() {
        return forms.leftOut().entrySet().stream()
                .limit(SHOWN)
                .map(row -> "line " + row.getKey() + " (" + row.getValue() + ")")
                .toList();
    }

    @Override
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(raw.notices());
        if (!forms.leftOut().isEmpty()) {
            notices.add(new Notice(
                    "totals-row",
                    "Totals, subtotals and headings among the rows were read past: they repeat or name what stands beside"
                            + " them.",
                    forms.leftOut().size(),
                    shown().stream().map(row -> file.name() + " " + row).toList()));
        }
        return notices;
    }
}
