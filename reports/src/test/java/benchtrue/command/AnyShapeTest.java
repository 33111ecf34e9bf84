package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.mapping.WriteDraft;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Tidiness;
import benchtrue.sample.WriteSample;
import benchtrue.settings.ReadSettings;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From files in any shape that nobody has mapped to the first review: map, one rename, nightly. */
class AnyShapeTest {

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    /** Writes a tidy shop's files in another shape. */
    private interface Shape {
        void write(ShapedShop shop) throws IOException;
    }

    private void run(String... arguments) {
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        int code = new Program(new PrintWriter(out), new PrintWriter(err), false, clock, Map.of()).run(arguments);
        assertThat(code).as(err.toString()).isZero();
    }

    private void nightly(Path shop) {
        run("nightly", "--shop", shop.toString(), "--as-of", "2026-10-31", "--quiet");
    }

    @Test
    void aWorkbookOfFiveSheetsWithWeeksAndSubtotalsIsReviewed() throws IOException {
        reviewed(ShapedShop::workbook);
    }

    @Test
    void aFileOfTicketsAndLinesAndASheetAMonthAreReviewed() throws IOException {
        reviewed(ShapedShop::joined);
    }

    @Test
    void ticketsInTextsAndNamesInTwoColumnsAreReviewed() throws IOException {
        reviewed(ShapedShop::texts);
    }

    private void reviewed(Shape shape) throws IOException {
        Path plain = folder.resolve("plain");
        WriteSample.write(SampleOptions.standard(plain).withTickets(400).with(Tidiness.TIDY));
        Path shaped = folder.resolve("shaped");
        shape.write(new ShapedShop(plain, shaped));

        run("map", "--shop", shaped.toString());
        assertThat(questions()).as(out.toString()).isLessThanOrEqualTo(8);
        Files.move(shaped.resolve(WriteDraft.FILE), shaped.resolve(ReadSettings.FILE));
        nightly(shaped);
        nightly(plain);

        long read = read(shaped, "read");
        assertThat(read)
                .as("hours of the log in seconds")
                .isBetween(read(plain, "read") * 98 / 100, read(plain, "read") * 102 / 100);
        assertThat(read(shaped, "set aside")).as("of %d s", read).isLessThan(read / 20);
        assertThat(under(shaped)).as("of " + under(plain)).isNotEmpty().containsAll(worst(plain));
    }

    private long questions() {
        String[] parts = out.toString().split("Still to be said:");
        return parts.length < 2
                ? 0
                : parts[1].lines().filter(line -> line.startsWith("  ")).count();
    }

    private static long read(Path shop, String term) throws IOException {
        Matcher hours = Pattern.compile("\"name\": \"hours\",.*?\"" + term + "\": (\\d+)", Pattern.DOTALL)
                .matcher(Files.readString(shop.resolve("out/2026-10-31/run.json")));
        assertThat(hours.find()).isTrue();
        return Long.parseLong(hours.group(1));
    }

    private static Set<String> under(Path shop) throws IOException {
        Set<String> under = new TreeSet<>();
        for (List<String> row : findings(shop)) {
            if (row.contains("under-quoted") || row.contains("under")) {
                under.add(row.get(0));
            }
        }
        return under;
    }

    private static List<List<String>> findings(Path shop) throws IOException {
        return Files.readAllLines(shop.resolve("out/2026-10-31/findings.csv")).stream()
                .map(line -> Arrays.asList(line.split(",")))
                .toList();
    }

    /** Returns the repairs that are surely quoted far too low. */
    private static Set<String> worst(Path shop) throws IOException {
        Set<String> under = under(shop);
        Set<String> worst = new TreeSet<>();
        for (List<String> row : findings(shop)) {
            if (under.contains(row.get(0)) && Double.parseDouble(row.get(8)) > 1.2) {
                worst.add(row.get(0));
            }
        }
        return worst;
    }
}
