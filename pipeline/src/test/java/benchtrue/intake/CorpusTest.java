package benchtrue.intake;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
import benchtrue.intake.cells.ClockText;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.InputFile;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.Notice;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Files as shops' systems, spreadsheets, accidents and ill will write them, each with what is read from it, or the words that
 * refuse it, beside it in a file of the same name and {@code .expected}. A file is named by its case, the table it is read as,
 * and its kind; rules for it stand in {@code .toml}. {@code -Dcorpus.update=true} writes what is read now: read it before it
 * is committed.
 */
class CorpusTest {
    @TempDir
    Path folder;

    private static Path corpus() throws URISyntaxException {
        return Path.of(CorpusTest.class.getResource("corpus").toURI());
    }

    private static List<Path> list() throws IOException, URISyntaxException {
        try (Stream<Path> found = Files.list(corpus())) {
            return found.sorted().toList();
        }
    }

    private static boolean isCase(Path file) {
        String name = file.toString();
        return !name.endsWith(".expected") && !name.endsWith(".toml");
    }

    static Stream<Path> cases() throws IOException, URISyntaxException {
        return list().stream().filter(CorpusTest::isCase);
    }

    private static Path beside(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aFileIsReadAsItsWritersMeantItOrRefusedInTheRightWords(Path file) throws IOException {
        String[] name = file.getFileName().toString().split("\\.");
        String export = name[1] + "." + name[2];
        ShopFolder shop = new ShopFolder(folder).bytes("exports/" + export, Files.readAllBytes(file));
        if (Files.exists(beside(file, ".toml"))) {
            shop.bytes("shop.toml", Files.readAllBytes(beside(file, ".toml")));
        }
        String found = String.join("\n", read(shop, "exports/" + export)) + "\n";
        if (Boolean.getBoolean("corpus.update")) {
            Path source = Path.of("src/test/resources/benchtrue/intake/corpus", file.getFileName() + ".expected");
            Files.writeString(source, found);
        }
        assertThat(beside(file, ".expected")).as("what is expected of " + file).exists();
        assertThat(found).isEqualTo(Files.readString(beside(file, ".expected")));
    }

    @Test
    void everyExpectationHasItsFile() throws IOException, URISyntaxException {
        assertThat(list()).hasSizeGreaterThan(120);
        for (Path file : list()) {
            String name = file.toString();
            if (!isCase(file)) {
                assertThat(Path.of(name.substring(0, name.lastIndexOf('.')))).exists();
            }
        }
    }

    private List<String> read(ShopFolder shop, String export) {
        List<String> lines = new ArrayList<>();
        try {
            Exports exports = new ReadExports().read(shop.path(), new ReadSettings().read(shop.path()));
            InputFile file = exports.files().stream()
                    .filter(read -> read.file().equals(export))
                    .findFirst()
                    .orElseThrow();
            file.told().forEach(told -> lines.add("told " + told));
            exports.notices().forEach(notice -> lines.add(words(notice)));
            TableRows rows = exports.rows(file.table());
            for (int row = file.firstRow(); row < file.firstRow() + file.rows(); row++) {
                lines.add(words(rows, row));
            }
        } catch (Refusal refusal) {
            lines.add("refused " + refusal.exitCode().number() + " "
                    + refusal.getMessage().replace(shop.path().toString(), "SHOP"));
        }
        return lines;
    }

    private static String words(Notice notice) {
        return "notice " + notice.code() + " " + notice.count() + " " + notice.examples();
    }

    private static String words(TableRows rows, int row) {
        List<String> cells = new ArrayList<>();
        for (Column column : rows.table().columns()) {
            String text = rows.text(column, row);
            if (!text.isEmpty()) {
                cells.add(column.header() + "=" + shown(value(rows, column, row)));
            }
        }
        String line = "line " + rows.line(row) + " " + String.join(" | ", cells);
        return rows.readable(row) ? line : line + " SET ASIDE " + shown(String.join("; ", rows.problems(row)));
    }

    private static String value(TableRows rows, Column column, int row) {
        long value = rows.value(column, row);
        if (column.cell().kind().isText() || !Absent.has(value)) {
            return "\"" + rows.text(column, row) + "\"";
        }
        return switch (column.cell().kind()) {
            case DAY -> LocalDate.ofEpochDay(value).toString();
            case MONTH -> value / 12 + "-" + (value % 12 + 1);
            case HOURS, SIGNED_HOURS -> Hours.text(value) + " h";
            case CLOCK -> ClockText.clock(value);
            case MONEY, SIGNED_MONEY, QUANTITY -> Money.text(value);
            case WORD -> column.cell().words().get((int) value);
            default -> Long.toString(value);
        };
    }

    /** Makes a text fit for a line: control characters by their number, long runs cut. */
    private static String shown(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints()
                .limit(200)
                .forEach(letter -> shown.append(
                        Character.isISOControl(letter)
                                ? "\\u" + String.format(Locale.ROOT, "%04x", letter)
                                : Character.toString(letter)));
        return shown.toString();
    }
}
