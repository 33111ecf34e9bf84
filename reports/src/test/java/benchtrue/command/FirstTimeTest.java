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
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a folder of exports that nobody has mapped to the first review: map, one rename, nightly. */
class FirstTimeTest {
    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private void run(String... arguments) {
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        int code = new Program(new PrintWriter(out), new PrintWriter(err), false, clock, Map.of()).run(arguments);
        assertThat(code).as(err.toString()).isZero();
    }

    private void nightly(Path shop) {
        run("nightly", "--shop", shop.toString(), "--as-of", "2026-10-31", "--quiet");
    }

    @Test
    void twoSystemsInAnotherLanguageGiveTheSameFiguresAsTheShopsOwnFiles() throws IOException {
        Path canonical = folder.resolve("canonical");
        WriteSample.write(SampleOptions.standard(canonical).withTickets(400).with(Tidiness.TIDY));
        Files.writeString(canonical.resolve(ReadSettings.FILE), "currency = \"EUR\"\n");
        Path german = folder.resolve("german");
        GermanShop.write(canonical, german);

        run("map", "--shop", german.toString());
        assertThat(out.toString())
                .contains("exports/L\u00f6hne.csv: technicians")
                .doesNotContain("Still to be said");
        assertThat(Files.readString(german.resolve(WriteDraft.FILE))).doesNotContain("Erna");
        Files.move(german.resolve(WriteDraft.FILE), german.resolve(ReadSettings.FILE));
        nightly(german);
        nightly(canonical);

        for (String table : List.of("lines", "findings", "revision", "open-lines", "backtest")) {
            assertThat(german.resolve("out/2026-10-31/" + table + ".csv"))
                    .as(table)
                    .hasSameBinaryContentAs(canonical.resolve("out/2026-10-31/" + table + ".csv"));
        }
        assertThat(german.resolve("out/2026-10-31/set-aside/time-log.csv")).doesNotExist();
        assertThat(balance(german)).isEqualTo(balance(canonical)).contains("on lines");
    }

    /** Returns the balance of the hours as the record of the run has it. */
    private static String balance(Path shop) throws IOException {
        Matcher hours = Pattern.compile("\"name\": \"hours\",.*?\\n    }", Pattern.DOTALL)
                .matcher(Files.readString(shop.resolve("out/2026-10-31/run.json")));
        return hours.find() ? hours.group() : "";
    }
}
