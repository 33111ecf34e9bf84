package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.UnderQuotedShop;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What was decided and sealed, and the places where more is to be kept, damaged: every command says so and changes nothing. */
class DamagedShopTest {
    private static final String AS_OF = "2026-07-01";
    private static final int KEY = 24;
    private static final int DECISION = 14;

    @TempDir
    Path folder;

    private final StringWriter err = new StringWriter();
    private Path shop;
    private Path decided;

    @BeforeEach
    void aShopWithADecidedDraft() throws IOException {
        shop = UnderQuotedShop.write(folder.resolve("shop"), 1.3);
        assertThat(run("nightly")).as(err.toString()).isZero();
        decided = folder.resolve("decided.xlsx");
        try (XSSFWorkbook draft = new XSSFWorkbook(
                        Files.newInputStream(shop.resolve("out/" + AS_OF + "/price-book-revision.xlsx")));
                OutputStream saved = Files.newOutputStream(decided)) {
            take(draft.getSheet("Decide"));
            draft.getCreationHelper().createFormulaEvaluator().evaluateAll();
            draft.write(saved);
        }
    }

    private static void take(Sheet sheet) {
        sheet.forEach(row -> {
            if (row.getCell(KEY) != null
                    && row.getCell(KEY).getStringCellValue().startsWith("job-")) {
                row.getCell(DECISION).setCellValue("take");
            }
        });
    }

    private int run(String command, String... more) {
        Clock clock = Clock.fixed(Instant.parse("2026-07-01T22:00:00Z"), ZoneOffset.UTC);
        String[] arguments = Stream.concat(
                        Stream.of(command, "--shop", shop.toString(), "--as-of", AS_OF), Stream.of(more))
                .toArray(String[]::new);
        PrintWriter silent = new PrintWriter(new StringWriter());
        return new Program(silent, new PrintWriter(err), false, clock, Map.of()).run(arguments);
    }

    private int adopt() {
        return run("adopt", decided.toString(), "--effective", "2026-08-01");
    }

    private int close() {
        return run("close", "--month", "2026-03");
    }

    private int withdraw() {
        return run("withdraw", "--effective", "2026-08-01", "--reason", "too early");
    }

    private Map<String, String> kept() throws IOException {
        Map<String, String> kept = new TreeMap<>();
        for (String name : List.of("price-book", "decisions", "close", "out/latest/run.json")) {
            if (Files.exists(shop.resolve(name))) {
                try (Stream<Path> files = Files.walk(shop.resolve(name).toRealPath())) {
                    for (Path file : files.filter(Files::isRegularFile).toList()) {
                        kept.put(name + "/" + file.getFileName(), Files.readString(file));
                    }
                }
            }
        }
        return kept;
    }

    @ParameterizedTest
    @ValueSource(strings = {"decisions/2026-08-01.json", "close/2026-03.csv"})
    void noCommandGoesOnWithADamagedRecord(String record) throws IOException {
        assertThat(adopt()).as(err.toString()).isZero();
        assertThat(close()).as(err.toString()).isZero();
        byte[] bytes = Files.readAllBytes(shop.resolve(record));
        bytes[bytes.length / 2] ^= 1;
        Files.write(shop.resolve(record), bytes);
        Map<String, String> before = kept();
        List<Integer> exits = new ArrayList<>(List.of(run("nightly")));
        if (record.startsWith("decisions")) {
            exits.addAll(List.of(adopt(), withdraw()));
        }
        assertThat(exits).as(err.toString()).containsOnly(65);
        assertThat(err.toString())
                .contains(record.substring(record.indexOf('/')))
                .doesNotContain("\tat ");
        assertThat(kept()).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({"decisions, 66", "price-book/2026-08-01.csv.partial/held, 73", "out/.adopted.partial, 0"})
    void whereABookCanNotBeWrittenNothingIsAdopted(String place, int exit) throws IOException {
        occupy(place);
        Map<String, String> before = kept();
        assertThat(adopt()).as(err.toString()).isEqualTo(exit);
        assertThat(err.toString()).doesNotContain("\tat ");
        if (exit != 0) {
            assertThat(shop.resolve("price-book/2026-08-01.csv")).doesNotExist();
            assertThat(err.toString()).contains(shop.toString());
            assertThat(kept()).containsAllEntriesOf(before);
        }
    }

    @Test
    void whereASealCanNotBeWrittenNoMonthIsSealed() throws IOException {
        occupy("close/2026-03.csv.partial/held");
        assertThat(close()).as(err.toString()).isEqualTo(73);
        assertThat(err.toString()).contains("2026-03.csv").doesNotContain("\tat ");
        assertThat(shop.resolve("close/2026-03.csv")).doesNotExist();
    }

    /** Puts a file where the program wants a folder, or the other way round: nobody may write there, not even root. */
    private void occupy(String place) throws IOException {
        Files.createDirectories(shop.resolve(place).getParent());
        Files.writeString(shop.resolve(place), "held");
    }
}
