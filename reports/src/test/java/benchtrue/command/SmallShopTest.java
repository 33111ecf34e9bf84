package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.command.TwoPeopleShop.Spelling;
import benchtrue.mapping.WriteDraft;
import benchtrue.settings.ReadSettings;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sixty tickets, a list of quotes and a time log are enough for a first review: map, one rename, nightly. */
class SmallShopTest {
    private static final Pattern HOURS_ON_LINES = Pattern.compile("hold; ([\\d,.]+)\\W*h read, ([\\d,.]+)\\W*h on");

    @TempDir
    Path shop;

    private String run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Clock clock = Clock.fixed(Instant.parse("2026-11-28T02:00:00Z"), ZoneOffset.UTC);
        int code = new Program(new PrintWriter(out), new PrintWriter(err), false, clock, Map.of()).run(arguments);
        assertThat(code).as(err.toString()).isZero();
        return out.toString();
    }

    @ParameterizedTest
    @CsvSource({"1,ONE", "2,ONE", "3,ONE", "4,ONE", "1,MANY", "2,MANY", "3,MANY"})
    void whatIsQuotedTooLowIsFoundAndWhatIsNotIsLeftAlone(long seed, Spelling spelling) throws IOException {
        double logged = TwoPeopleShop.write(shop, seed, spelling);
        String said = run("map", "--shop", shop.toString());
        Path draft = shop.resolve(WriteDraft.FILE);
        // Nothing is asked, so the list of answers is empty.
        assertThat(FixedAnswers.of().into(Files.readString(draft), said)).isNotEmpty();
        assertThat(draft)
                .content()
                .contains(
                        "# No tickets file: tickets come from quotes and time log",
                        "# No price book: what was usually quoted for each repair by then stands for it.",
                        "# no column says the line's key within its ticket: lines are numbered within the ticket");
        Files.move(draft, shop.resolve(ReadSettings.FILE));
        assertThat(run("check", "--shop", shop.toString(), "--as-of", "2026-11-27"))
                .contains(
                        "Every row can be used.",
                        "60 x There is no tickets file",
                        "it counts as finished once nobody has worked on it for",
                        "There is no price book: the usual quote");
        String night = run("nightly", "--shop", shop.toString(), "--as-of", "2026-11-27");
        Matcher hours = HOURS_ON_LINES.matcher(night);
        assertThat(hours.find()).as(night).isTrue();
        assertThat(Double.parseDouble(hours.group(2))).isCloseTo(logged, within(0.05 * logged));
        Map<String, String> verdicts = verdicts();
        assertThat(verdicts).containsEntry("Refret", "under-quoted").containsEntry("Neck reset", "under-quoted");
        verdicts.keySet().removeAll(Set.of("Refret", "Neck reset"));
        assertThat(verdicts.values()).as("%s", verdicts).doesNotContain("under-quoted", "over-quoted");
        assertThat(shop.resolve("out/2026-11-27/review.html"))
                .content()
                .contains("There is no price book: what was usually quoted for each repair stands for it.")
                .contains("There is no tickets file");
    }

    private Map<String, String> verdicts() throws IOException {
        Map<String, String> verdicts = new TreeMap<>();
        try (CSVParser rows = CSVParser.parse(
                shop.resolve("out/2026-11-27/findings.csv"),
                StandardCharsets.UTF_8,
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            for (CSVRecord row : rows) {
                verdicts.put(TwoPeopleShop.repair(row.get("repair_type")), row.get("verdict"));
            }
        }
        return verdicts;
    }
}
