package benchtrue.intake.dialects;

import benchtrue.intake.columns.ColumnNames;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.files.DigestedFile;
import benchtrue.intake.files.Encoding;
import benchtrue.intake.files.KnownKinds;
import benchtrue.intake.files.Records;
import benchtrue.intake.files.TextLayout;
import benchtrue.intake.files.TextLine;
import benchtrue.settings.FileRule;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;

/** Tells how a file is written, from as little of it as will do. */
public final class DialectDetector {
    private DialectDetector() {}

    /** Returns the dialect that a file's beginning and end show. */
    static Dialect of(ExportFile file) {
        try {
            return !file.isSheet() && PlainFileProbe.isPlain(file) ? Dialect.PLAIN : whole(file);
        } catch (IOException failed) {
            throw unread(file, failed);
        }
    }

    /** Returns the dialect that the whole file shows. */
    public static Dialect ofWhole(ExportFile file) {
        try {
            return whole(file);
        } catch (IOException failed) {
            throw unread(file, failed);
        }
    }

    /** Returns whether the letters of a file are not those that it was read with. */
    public static boolean isForeign(ExportFile file) {
        try {
            return !Encoding.of(file.path(), file.rule().flatMap(FileRule::encoding))
                    .charset()
                    .equals(StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw unread(file, failed);
        }
    }

    static Refusal unread(ExportFile file, IOException failed) {
        return new Refusal(
                ExitCode.READ_FAILED,
                file.name() + ": reading failed part-way: " + failed.getMessage()
                        + ". Look whether the file can be opened and run again.",
                failed);
    }

    private static Dialect whole(ExportFile file) throws IOException {
        FormedSource source = FormedSource.of(file, file.isSheet() ? SheetDetector.of(file) : text(file));
        try (DigestedFile bytes = new DigestedFile(file.path(), file.name());
                Records records = source.open(bytes, file.name())) {
            return new DetectedDialect(file, source, evidence(file, records));
        }
    }

    private static TextFile text(ExportFile file) throws IOException {
        byte[] beginning = PlainFileProbe.beginning(file.path());
        KnownKinds.requireTable(beginning, 0, beginning.length, file.name());
        Encoding encoding = Encoding.of(file.path(), file.rule().flatMap(FileRule::encoding));
        ColumnNames names = new ColumnNames(file.table(), file.mapping());
        List<String> lines = lines(beginning, encoding, Files.size(file.path()));
        TextLayout layout = LayoutDetector.of(lines, file.rule(), names::count);
        boolean told = file.rule()
                .flatMap(rule -> rule.headerLine().stream().boxed().findFirst())
                .isPresent();
        if (file.beside().isEmpty() && !told) {
            requireNoRowAbove(lines, layout, names, file);
        }
        return new TextFile(
                encoding, layout, String.join(" ", lines.subList(0, Math.min(lines.size(), layout.headerLine() - 1))));
    }

    private static void requireNoRowAbove(List<String> lines, TextLayout layout, ColumnNames names, ExportFile file) {
        List<String> header = cells(lines, layout, layout.headerLine());
        for (int line = 1; line < layout.headerLine(); line++) {
            if (names.isRow(cells(lines, layout, line), header)) {
                throw rowAbove(file, "line " + line, "line " + layout.headerLine());
            }
        }
    }

    private static List<String> cells(List<String> lines, TextLayout layout, int line) {
        return line > lines.size()
                ? List.of()
                : TextLine.cells(lines.get(line - 1), layout.delimiter(), layout.quote());
    }

    /** Returns the refusal of a table whose header stands below a row, which would be lost. */
    static Refusal rowAbove(ExportFile file, String row, String header) {
        return new Refusal(
                ExitCode.UNUSABLE_FILE,
                file.name() + ", " + row + ": found a row above the column names, which stand on " + header
                        + ", expected them first. Export the file again unsorted; or, if that is no row, say where they"
                        + " stand in shop.toml: header_line = ...");
    }

    /** Returns what all rows tell, or null for a file without a header. */
    private static DialectEvidence evidence(ExportFile file, Records records) throws IOException {
        if (!records.next()) {
            return null;
        }
        DialectEvidence evidence = new DialectEvidence(Header.read(records, file.table(), file.mapping(), file.name()));
        while (records.next()) {
            evidence.take(records);
        }
        return evidence;
    }

    public static List<String> lines(byte[] beginning, Encoding encoding, long size) {
        Charset charset = encoding.charset();
        String text = new String(beginning, encoding.mark(), beginning.length - encoding.mark(), charset);
        List<String> lines = TextLine.lines(text);
        boolean cut = size > beginning.length && lines.size() > 1;
        List<String> whole = cut ? lines.subList(0, lines.size() - 1) : lines;
        return whole.subList(0, Math.min(whole.size(), 200));
    }
}
