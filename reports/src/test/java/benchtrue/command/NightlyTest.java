package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import benchtrue.sample.SampleOptions;
import benchtrue.sample.WriteSample;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole program on a small invented shop, good and bad. */
class NightlyTest {
    private static final int TICKETS = 400;

    @TempDir
    Path folder;

    private Path shop;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void anInventedShop() throws IOException {
        shop = folder.resolve("shop");
        WriteSample.write(SampleOptions.standard(shop).withTickets(TICKETS).withYears(2));
    }

    private int nightly(String... more) {
        return run("nightly", more);
    }

    private int run(String command, String... more) {
        return program(Stream.concat(Stream.of(command, "--shop", shop.toString()), Stream.of(more))
                .toArray(String[]::new));
    }

    private int program(String... arguments) {
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        return new Program(new PrintWriter(out), new PrintWriter(err), false, clock, Map.of()).run(arguments);
    }

    /** Returns the digest of every file below a folder, links followed. */
    private static Map<String, String> content(Path below) throws Exception {
        Map<String, String> content = new TreeMap<>();
        Path folder = below.toRealPath();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
                content.put(folder.relativize(file).toString(), HexFormat.of().formatHex(digest));
            }
        }
        return content;
    }

    private void assertRefused(int code, String... words) throws IOException {
        assertThat(nightly("--as-of", "2026-10-31")).as(err.toString()).isEqualTo(code);
        assertThat(err.toString()).contains(words);
        assertThat(out.toString()).isEmpty();
        Path results = shop.resolve("out");
        if (Files.exists(results)) {
            try (Stream<Path> left = Files.list(results)) {
                assertThat(left.map(file -> file.getFileName().toString())).isSubsetOf(".last", ".runs");
            }
            assertThat(results.resolve(".runs"))
                    .satisfiesAnyOf(
                            runs -> assertThat(runs).doesNotExist(),
                            runs -> assertThat(runs).isEmptyDirectory());
        }
    }

    private Path export(String table) throws IOException {
        try (Stream<Path> found = Files.list(shop.resolve("exports"))) {
            return found.filter(file -> file.getFileName().toString().startsWith(table))
                    .max(Comparator.naturalOrder())
                    .orElseThrow();
        }
    }

    @Test
    void aGoodNightIsPublishedAndSummedUpInTwentyFiveLines() throws IOException {
        assertThat(nightly()).as(err.toString()).isZero();
        Path results = shop.resolve("out/2026-10-31");
        assertThat(results.resolve("review.html")).isNotEmptyFile();
        assertThat(results.resolve("review.xlsx")).isNotEmptyFile();
        assertThat(results.resolve("charts/money-lost.svg")).isNotEmptyFile();
        assertThat(results.resolve("set-aside/time-log.csv")).isNotEmptyFile();
        assertThat(shop.resolve("out/latest/run.json")).isNotEmptyFile();
        assertThat(shop.resolve("out/.last/timings.json")).isNotEmptyFile();
        assertThat(out.toString().lines())
                .hasSizeLessThanOrEqualTo(25)
                .first()
                .asString()
                .isEqualTo("Benchtrue: reviewed to Oct 31, 2026.");
        assertThat(out.toString()).contains("balances hold").contains(results.toString());
        assertThat(err.toString().lines()).first().asString().isEqualTo("benchtrue: stage 1/8: Reading the exports");
    }

    @Test
    void twoRunsGiveTheSameBytesAlsoElsewhereInAnotherZoneAndLanguage() throws Exception {
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        Process foreign = Spawned.start(
                elsewhere,
                List.of("-Duser.language=de", "-Duser.timezone=Pacific/Auckland", "-XX:ActiveProcessorCount=1"),
                "nightly",
                "--shop",
                "../shop",
                "--as-of",
                "2026-10-31");
        assertThat(Spawned.end(foreign))
                .as(Files.readString(elsewhere.resolve("spawned.log")))
                .isZero();
        Map<String, String> first = content(shop.resolve("out/2026-10-31"));
        assertThat(nightly("--as-of", "2026-10-31", "--quiet")).isZero();
        assertThat(content(shop.resolve("out/2026-10-31"))).isEqualTo(first);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString())
                .as("what was not read is said even so")
                .startsWith("Of ")
                .hasLineCount(1);
    }

    @Test
    void aCheckSaysWhatIsWrongAndWhereAndWritesNothing() {
        assertThat(run("check", "--as-of", "2026-10-31")).as(err.toString()).isZero();
        assertThat(out.toString())
                .contains("Can't be used, and set aside:", " line 2: ", "Used, but doubtful:", "Next: mend ")
                .containsPattern("hours: [0-9,.]+.h = .*repeated");
        assertThat(shop.resolve("out")).doesNotExist();
        assertThat(shop.resolve(".lock")).doesNotExist();
    }

    @Test
    void aVerboseNightTellsEveryBalanceAndHowLongItTook() {
        assertThat(nightly("--verbose")).isZero();
        assertThat(out.toString()).contains("What was read, and where it went:", "  Writing the results: ");
    }

    @Test
    void aPublishedResultIsVerifiedAndAChangedOneIsNot() throws IOException {
        assertThat(nightly("--quiet")).isZero();
        String result = shop.resolve("out/latest").toString();
        assertThat(program("verify", result)).isZero();
        assertThat(out.toString()).contains("as the run wrote it");
        Files.writeString(shop.resolve("out/latest/digest.txt"), "changed");
        assertThat(program("verify", result)).isEqualTo(65);
        assertThat(err.toString()).contains("digest.txt was changed");
        assertThat(program("verify", shop.toString())).isEqualTo(66);
    }

    @Test
    void anEmptyShopFolderEndsWith66() throws IOException {
        shop = Files.createDirectories(folder.resolve("empty"));
        assertRefused(66, "exports", "found no such folder");
    }

    @Test
    void anEmptyInboxEndsWith66() throws IOException {
        shop = Files.createDirectories(folder.resolve("empty"));
        Files.createDirectories(shop.resolve("exports"));
        assertRefused(66, "exports", "found an empty folder");
    }

    @Test
    void aNeededTableThatIsMissingEndsWith66() throws IOException {
        try (Stream<Path> files = Files.list(shop.resolve("exports"))) {
            for (Path file : files.filter(f -> f.getFileName().toString().startsWith("quoted-lines"))
                    .toList()) {
                Files.delete(file);
            }
        }
        assertRefused(66, "found no file of the table quoted-lines");
    }

    @Test
    void aMissingColumnEndsWith65AndIsNamed() throws IOException {
        Path file = export("time-log");
        String text = Files.readString(file);
        Files.writeString(file, text.replaceFirst("work_date", "work_dat"));
        assertRefused(65, file.getFileName().toString(), "work_dat", "work_date");
        Files.writeString(file, text);
        assertThat(nightly("--quiet")).isZero();
        assertThat(err.toString()).contains("note: The run before this one, to 2026-10-31, ended with 65: ");
    }

    @Test
    void aFileThatIsNoTableEndsWith65() throws IOException {
        Path file = export("quoted-lines");
        byte[] noise = new byte[4_000];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (byte) (i * 31 % 251);
        }
        Files.write(file, noise);
        assertRefused(65, file.getFileName().toString());
    }

    @Test
    void aQuoteThatIsNeverClosedEndsWith65AndNamesTheLine() throws IOException {
        Path file = export("tickets");
        int lines = Files.readAllLines(file, StandardCharsets.UTF_8).size();
        Files.writeString(file, "\"never closed,2026-01-01\r\n", StandardOpenOption.APPEND);
        assertRefused(65, file.getFileName().toString(), "line " + (lines + 1));
    }

    @Test
    void wrongSettingsEndWith78() throws IOException {
        Files.writeString(shop.resolve("shop.toml"), "burden = 3\n");
        assertRefused(78, "shop.toml, line 1, column 1", "\"burden\" is 3");
    }

    @Test
    void aSecondRunAtTheSameTimeEndsWith75() throws IOException {
        try (FileChannel lock =
                FileChannel.open(shop.resolve(".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            lock.lock();
            assertRefused(75, "Another run is working on");
        }
        assertThat(nightly("--quiet")).isZero();
    }

    @Test
    void resultsThatCannotBeWrittenEndWith73() throws IOException, InterruptedException {
        Path results = Files.createDirectories(shop.resolve("out"));
        assumeTrue(immutable(results, "+i"), "a folder can be made immutable: needs root and chattr");
        try {
            assertRefused(73, "can't be written", results.toString());
        } finally {
            immutable(results, "-i");
        }
    }

    private static boolean immutable(Path folder, String change) throws InterruptedException {
        try {
            return new ProcessBuilder("chattr", change, folder.toString())
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException noSuchProgram) {
            return false;
        }
    }
}
