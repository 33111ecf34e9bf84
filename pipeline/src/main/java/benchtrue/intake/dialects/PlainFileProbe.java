package benchtrue.intake.dialects;

import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.ColumnNames;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.Shape;
import benchtrue.intake.columns.SourceColumn;
import benchtrue.intake.files.TextLine;
import benchtrue.intake.files.Utf8Letters;
import benchtrue.settings.FileRule;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Looks at a file's beginning and end: most are written as the data contract writes, and need no more. What may differ in
 * the middle is met when it is read.
 */
public final class PlainFileProbe {
    private static final int BEGINNING = 1 << 15;
    /** Files of other systems may have subtotals anywhere. */
    private static final int MAPPED = 1 << 22;

    private static final int END = 1 << 12;
    private static final int FIRST_ROWS = 100;

    private PlainFileProbe() {}

    /** Returns whether a file looks as the data contract writes it. */
    static boolean isPlain(ExportFile file) throws IOException {
        if (file.rule().filter(PlainFileProbe::saysHow).isPresent()) {
            return false;
        }
        try (FileChannel channel = FileChannel.open(file.path())) {
            int length = length(file);
            byte[] beginning = block(channel, 0, length);
            boolean whole = channel.size() <= length;
            long from = Math.max(0, channel.size() - END);
            byte[] end = whole ? beginning : block(channel, from, END);
            return isText(beginning) && isPlain(text(beginning), text(end), whole || from == 0, file);
        }
    }

    private static boolean saysHow(FileRule rule) {
        return rule.encoding().isPresent()
                || rule.delimiter().isPresent()
                || rule.quote().isPresent()
                || rule.decimal().isPresent()
                || rule.dates().isPresent()
                || rule.headerLine().isPresent()
                || rule.totalsRow().isPresent()
                || !Shape.of(Optional.of(rule)).isPlain();
    }

    private static byte[] block(FileChannel channel, long from, int length) throws IOException {
        ByteBuffer block = ByteBuffer.allocate((int) Math.max(0, Math.min(length, channel.size() - from)));
        long at = from;
        while (block.hasRemaining()) {
            int read = channel.read(block, at);
            if (read < 0) {
                break;
            }
            at += read;
        }
        byte[] bytes = new byte[block.position()];
        block.flip().get(bytes);
        return bytes;
    }

    private static boolean isText(byte[] bytes) {
        Utf8Letters letters = new Utf8Letters();
        letters.take(bytes, bytes.length);
        for (byte letter : bytes) {
            if (letter == 0) {
                return false;
            }
        }
        return letters.broken() == 0;
    }

    private static String text(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static boolean isPlain(String beginning, String end, boolean endIsWhole, ExportFile file) {
        ColumnNames names = new ColumnNames(file.table(), file.mapping());
        List<String> lines = TextLine.lines(beginning);
        List<String> header = TextLine.cells(lines.get(0), ',', '"');
        if (!names.complete(header)) {
            return false;
        }
        if (names.column(header.get(0)) instanceof SourceColumn) {
            return true;
        }
        List<String> last = TextLine.lines(end.stripTrailing());
        boolean lastIsWhole = endIsWhole || last.size() > 1;
        return !haveSurplus(lines, header.size())
                && !haveForms(endIsWhole ? lines : lines.subList(0, lines.size() - 1), header, names)
                && !(lastIsWhole && mayBeTotal(TextLine.cells(last.get(last.size() - 1), ',', '"'), header, names));
    }

    /** Returns whether most of the first rows end with an empty cell more than the header. */
    private static boolean haveSurplus(List<String> lines, int size) {
        int last = Math.min(lines.size(), FIRST_ROWS);
        long surplus = lines.subList(1, last).stream()
                .map(line -> TextLine.cells(line, ',', '"'))
                .filter(row -> row.size() == size + 1 && row.get(size).isEmpty())
                .count();
        return 3 * surplus > last - 1;
    }

    /** Returns what the hours at a plain file's beginning tell of what stands behind their sign. */
    static PointedMinutes pointed(ExportFile file) {
        PointedMinutes pointed = new PointedMinutes();
        try (FileChannel channel = FileChannel.open(file.path())) {
            List<String> lines = TextLine.lines(text(block(channel, 0, length(file))));
            takeHours(lines, new ColumnNames(file.table(), file.mapping()), pointed);
        } catch (IOException failed) {
            throw DialectDetector.unread(file, failed);
        }
        return pointed;
    }

    private static void takeHours(List<String> lines, ColumnNames names, PointedMinutes pointed) {
        List<String> header = TextLine.cells(lines.get(0), ',', '"');
        List<Integer> hours = IntStream.range(0, header.size())
                .filter(cell -> names.column(header.get(cell)) != null
                        && DialectEvidence.isHours(names.column(header.get(cell))))
                .boxed()
                .toList();
        for (String line : hours.isEmpty() ? List.<String>of() : lines.subList(1, lines.size())) {
            List<String> row = TextLine.cells(line, ',', '"');
            hours.stream().filter(cell -> cell < row.size()).forEach(cell -> pointed.take(row.get(cell), 1));
        }
    }

    private static int length(ExportFile file) {
        return file.rule().isPresent() ? MAPPED : BEGINNING;
    }

    private static boolean mayBeTotal(List<String> row, List<String> header, ColumnNames names) {
        for (int cell = 0; cell < Math.min(row.size(), header.size()); cell++) {
            Column column = names.column(header.get(cell));
            if (row.get(cell).isEmpty() && column != null && column.cell().need() != Need.OPTIONAL) {
                return true;
            }
        }
        return row.stream().anyMatch(TotalWords::isPhrase);
    }

    /** Returns whether a row among the first is a subtotal or a heading, or looks like one. */
    private static boolean haveForms(List<String> lines, List<String> header, ColumnNames names) {
        return lines.subList(1, lines.size()).stream()
                .filter(line -> !line.isBlank())
                .map(line -> TextLine.cells(line, ',', '"'))
                .anyMatch(row -> row.stream().anyMatch(TotalWords::isPhrase)
                        || header.size() > 3
                                && row.stream().filter(cell -> !cell.isBlank()).count() <= 2
                                && mayBeTotal(row, header, names));
    }

    /** Returns a file's beginning. */
    public static byte[] beginning(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file)) {
            return block(channel, 0, BEGINNING);
        }
    }
}
