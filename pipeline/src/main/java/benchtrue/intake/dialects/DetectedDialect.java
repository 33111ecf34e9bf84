package benchtrue.intake.dialects;

import benchtrue.format.Words;
import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.cells.DateText;
import benchtrue.intake.cells.NumberText;
import benchtrue.intake.cells.WrittenCells;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.files.Records;
import benchtrue.settings.DateOrder;
import benchtrue.settings.DecimalSign;
import benchtrue.settings.FileRule;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Notice;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The dialect of one file, told from all of it and from the settings. */
final class DetectedDialect implements Dialect {
    private final ExportFile file;
    private final FormedSource source;
    private final DialectEvidence evidence;
    private final CellFormat cells;

    DetectedDialect(ExportFile file, FormedSource source, DialectEvidence evidence) {
        this.file = file;
        this.source = source;
        this.evidence = evidence;
        cells = new WrittenCells(this::dates, this::decimals, source.serials());
    }

    @Override
    public Records open(InputStream bytes, String name) throws IOException {
        return new TrimmedRecords(
                source.open(bytes, name), evidence != null && evidence.hasSurplusCell() ? 1 : 0, source.forms());
    }

    @Override
    public PointedMinutes pointed(ExportFile asked) {
        return evidence == null ? new PointedMinutes() : evidence.pointed();
    }

    @Override
    public CellFormat cells() {
        return cells;
    }

    @Override
    public Optional<TextFile> text() {
        return source.raw() instanceof TextFile text ? Optional.of(text) : Optional.empty();
    }

    private DateOrder dates() {
        Optional<DateOrder> said = file.rule().flatMap(FileRule::dates);
        DateOrder told = said.orElse(evidence.dates());
        if (told == null) {
            throw openDates();
        }
        return told;
    }

    private DecimalSign decimals(NumberText.Sign sign) {
        Optional<DecimalSign> said = file.rule().flatMap(FileRule::decimal);
        DecimalSign told = said.orElse(source.decimals(sign, evidence));
        if (told == null) {
            throw openNumbers();
        }
        return told;
    }

    private Refusal openDates() {
        DialectEvidence.Place open = evidence.openDate();
        if (open == null) {
            return refused(
                    "found some dates that can only have the day first and some that can only have the month first");
        }
        String day = DateText.canonical(open.text(), () -> DateOrder.DAY_MONTH_YEAR, source.serials());
        String month = DateText.canonical(open.text(), () -> DateOrder.MONTH_DAY_YEAR, source.serials());
        return refused(", line " + open.line() + ", column " + open.column() + ": found \"" + Problem.shown(open.text())
                + "\", which is " + day + " if the day stands first and " + month + " if the month does; "
                + (evidence.count(DateOrder.DAY_MONTH_YEAR) == 0
                        ? "too few dates of the file tell which"
                        : "too few dates of the file tell which, or some the one and some the other")
                + ". Say which in shop.toml: " + rule("dates = \"day-month-year\"")
                + " (or dates = \"month-day-year\").");
    }

    private Refusal openNumbers() {
        DialectEvidence.Place open = evidence.openNumber();
        if (open == null) {
            return refused(
                    ": found a number that can be read in two ways in a row that came back from this file, and too few"
                            + " numbers of the file tell which. Say which in shop.toml: " + rule("decimal = \".\"")
                            + " (or decimal = \",\").");
        }
        String point = NumberText.canonical(open.text(), sign -> DecimalSign.POINT);
        String comma = NumberText.canonical(open.text(), sign -> DecimalSign.COMMA);
        return refused(", line " + open.line() + ", column " + open.column() + ": found \"" + Problem.shown(open.text())
                + "\", which is " + point + " with a decimal point and " + comma
                + " with a decimal comma; too few numbers of the file tell which. Say which in shop.toml: "
                + rule("decimal = \".\"") + " (or decimal = \",\").");
    }

    private String rule(String key) {
        return rule(file, key);
    }

    /** Returns the rule for a file that says one thing. */
    static String rule(ExportFile file, String key) {
        return "[[files]] name = \"" + file.fileName() + "\", table = \""
                + file.table().title() + "\", " + key;
    }

    private Refusal refused(String what) {
        return new Refusal(ExitCode.UNUSABLE_FILE, file.name() + what);
    }

    @Override
    public boolean tells() {
        return evidence != null && (evidence.dates() != null || evidence.decimals() != null);
    }

    @Override
    public List<String> told() {
        List<String> told = new ArrayList<>();
        told.addAll(source.reasons());
        if (evidence != null) {
            tellRows(told);
        }
        return told;
    }

    private void tellRows(List<String> told) {
        if (evidence.hasSurplusCell()) {
            told.add("an empty cell at the end of each row (most rows have one more than the header)");
        }
        DateOrder order = file.rule().flatMap(FileRule::dates).orElse(evidence.dates());
        if (order != null) {
            told.add("dates " + Words.of(order) + " ("
                    + why(
                            file.rule().flatMap(FileRule::dates).isPresent(),
                            evidence.count(order) + " of its dates can be read in no other")
                    + ")");
        }
        DecimalSign sign = file.rule().flatMap(FileRule::decimal).orElse(evidence.decimals());
        if (sign != null) {
            told.add("decimal " + Words.of(sign) + " ("
                    + why(
                            file.rule().flatMap(FileRule::decimal).isPresent(),
                            evidence.count(sign) + " of its numbers can be read with no other")
                    + ")");
        }
    }

    private static String why(boolean said, String otherwise) {
        return said ? "shop.toml says so" : otherwise;
    }

    @Override
    public List<Notice> notices() {
        return source.notices();
    }
}
