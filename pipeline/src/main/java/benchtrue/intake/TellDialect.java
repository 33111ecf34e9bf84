package benchtrue.intake;

import benchtrue.settings.FileRule;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;

/** Tells how a file is written, from as little of it as will do. */
final class TellDialect {
    private TellDialect() {}

    /** Returns the dialect that a file's beginning and end show. */
    static Dialect of(ExportFile file) {
        try {
            return !file.isSheet() && FirstLook.isPlain(file) ? Dialect.PLAIN : whole(file);
        } catch (IOException failed) {
            throw unread(file, failed);
        }
    }

    /** Returns the dialect that the whole file shows. */
    static Dialect ofWhole(ExportFile file) {
        try {
            return whole(file);
        } catch (IOException failed) {
            throw unread(file, failed);
        }
    }

    /** Returns whether the letters of a file are not those that it was read with. */
    static boolean isForeign(ExportFile file) {
        try {
            return !Encoding.of(file.path(), file.rule().flatMap(FileRule::encoding))
                    .charset()
                    .equals(StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw unread(file, failed);
        }
    }

    private static Refusal unread(ExportFile file, IOException failed) {
        return new Refusal(
                ExitCode.READ_FAILED,
                file.name() + ": reading failed part-way: " + failed.getMessage()
                        + ". Look whether the file can be opened and run again.",
                failed);
    }

    private static Dialect whole(ExportFile file) throws IOException {
        Source source = file.isSheet() ? SheetSource.of(file) : text(file);
        try (DigestedFile bytes = new DigestedFile(file.path(), file.name());
                Records records = source.open(bytes, file.name())) {
            return new StudiedFile(file, source, evidence(file, records));
        }
    }

    private static TextFile text(ExportFile file) throws IOException {
        byte[] beginning = FirstLook.beginning(file.path());
        KnownKinds.requireTable(beginning, 0, beginning.length, file.name());
        Encoding encoding = Encoding.of(file.path(), file.rule().flatMap(FileRule::encoding));
        ColumnNames names = new ColumnNames(file.table(), file.mapping());
        Layout layout = TellLayout.of(
                lines(beginning, encoding, Files.size(file.path())), file.rule(), names::count);
        return new TextFile(encoding, layout);
    }

    /** Returns what all rows tell, or null for a file without a header. */
    private static Evidence evidence(ExportFile file, Records records) throws IOException {
        if (!records.next()) {
            return null;
        }
        Evidence evidence = new Evidence(Header.read(records, file.table(), file.mapping(), file.name()));
        while (records.next()) {
            evidence.take(records);
        }
        return evidence;
    }

    private static List<String> lines(byte[] beginning, Encoding encoding, long size) {
        Charset charset = encoding.charset();
        String text = new String(beginning, encoding.mark(), beginning.length - encoding.mark(), charset);
        List<String> lines = TextLine.lines(text);
        boolean cut = size > beginning.length && lines.size() > 1;
        List<String> whole = cut ? lines.subList(0, lines.size() - 1) : lines;
        return whole.subList(0, Math.min(whole.size(), 200));
    }
}
