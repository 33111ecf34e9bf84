package benchtrue.reconcile;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
import benchtrue.intake.ForeignBook;
import benchtrue.intake.InAnyDialect;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An adopted price book goes back into the quoting system as that system wrote its own. */
class BookOfAnotherSystemTest {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final int NEXT = (int) LocalDate.of(2027, 1, 1).toEpochDay();
    private static final String RULE = """
            [[files]]
            name = "2026-*.csv"
            table = "price-book"
            [files.columns]
            repair_type = "Leistungsnr."
            title = "Bezeichnung"
            family = "Gruppe"
            book_hours = "Richtzeit"
            book_labour = "Arbeitspreis"
            least_hours = "Mindestzeit"
            [files.values.family]
            "B\u00fcnde" = "fretwork"
            "Einstellung" = "setup"
            """;
    private static final String[] BOOK = {
        "Preisliste;;;;;;;",
        "Leistungsnr.;Bezeichnung;Kontonr.;Gruppe;Richtzeit;Arbeitspreis;Mindestzeit;Bemerkung f\u00fcr den Kunden",
        "refret;Neubundierung;0042;B\u00fcnde;12,00;1.200,00 \u20ac;9,00;\"ohne Sattel; mit \"\"Binding\"\" mehr\"",
        "setup;Einstellung;0043;Einstellung;1,50;150,00 \u20ac;;",
        "dress;\"Bundabrichten\"; 0044 ;B\u00fcnde;3,25;325,00 \u20ac;;"
    };

    @TempDir
    Path folder;

    private ShopFolder german(String... lines) {
        byte[] bytes = (String.join("\r\n", lines) + "\r\n").getBytes(WINDOWS);
        return new ShopFolder(folder)
                .without("price-book/2026-01-01.csv")
                .bytes("price-book/2026-01-01.csv", bytes)
                .file("shop.toml", RULE);
    }

    private static PriceBook inForce(ShopFolder shop) {
        return shop.reconciled().ledger().books().inForce(ShopFolder.AS_OF);
    }

    private static PriceBook at(PriceBook book, String key, String hours, String price) {
        Map<String, RepairType> types = new TreeMap<>(book.types());
        types.computeIfPresent(
                key,
                (found, type) -> type.at(
                        Hours.seconds(new java.math.BigDecimal(hours)), Money.of(new java.math.BigDecimal(price))));
        return new PriceBook(NEXT, types);
    }

    private Optional<Path> written(ShopFolder shop, PriceBook book) throws IOException {
        Path out = Files.createDirectories(folder.resolve("out"));
        return ForeignBook.write(shop.path(), new ReadSettings().read(shop.path()), book, out);
    }

    @Test
    void itIsWrittenInItsOwnColumnsWordsLettersAndNumbersAndUnchangedRowsStayByteForByte() throws IOException {
        ShopFolder shop = german(BOOK);
        PriceBook next = at(inForce(shop), "refret", "13.75", "1375");
        Path file = written(shop, next).orElseThrow();
        assertThat(file).hasFileName("2027-01-01.csv");
        String[] expected = BOOK.clone();
        expected[2] =
                "refret;Neubundierung;0042;B\u00fcnde;13,75;1.375,00 \u20ac;9,00;\"ohne Sattel; mit \"\"Binding\"\" mehr\"";
        assertThat(Files.readAllBytes(file)).isEqualTo((String.join("\r\n", expected) + "\r\n").getBytes(WINDOWS));
    }

    @Test
    void itReadsAsTheSameBookThroughTheSameRule() throws IOException {
        ShopFolder shop = german(BOOK);
        PriceBook next = at(at(inForce(shop), "dress", "4", "99.5"), "setup", "0.9", "1090");
        Path file = written(shop, next).orElseThrow();
        ShopFolder imported = shop.bytes("price-book/2026-10-31.csv", Files.readAllBytes(file));
        assertThat(inForce(imported).types()).isEqualTo(next.types());
    }

    @Test
    void aRepairThatTheFileLacksJoinsItAtItsEndAndOneThatIsGoneLeavesIt() throws IOException {
        ShopFolder shop = german(BOOK);
        Map<String, RepairType> types = new TreeMap<>(inForce(shop).types());
        RepairType setup = types.remove("setup");
        types.put("nut", new RepairType("nut", "Sattel", "fretwork", 5_400, 1_650_000, 3_600, List.of(), 0, 0));
        String text = Files.readString(written(shop, new PriceBook(NEXT, types)).orElseThrow(), WINDOWS);
        assertThat(text)
                .doesNotContain(setup.title() + ";0043")
                .endsWith("nut;Sattel;;B\u00fcnde;1,50;165,00 \u20ac;1,00;\r\n");
    }

    @Test
    void aTotalThatIsNoneAnyMoreIsLeftOut() throws IOException {
        List<String> lines = new ArrayList<>(List.of(BOOK));
        lines.add("Summe;;;;16,75;1.675,00 \u20ac;;");
        ShopFolder shop = german(lines.toArray(String[]::new));
        assertThat(Files.readString(written(shop, inForce(shop)).orElseThrow(), WINDOWS))
                .contains("Summe");
        PriceBook next = at(inForce(shop), "setup", "2", "200");
        assertThat(Files.readString(written(shop, next).orElseThrow(), WINDOWS)).doesNotContain("Summe");
    }

    @Test
    void theProgramsOwnBooksAreNotItsLikes() {
        ShopFolder shop = new ShopFolder(folder);
        assertThat(ForeignBook.newest(shop.path(), Settings.DEFAULTS)).isPresent();
        shop.file(
                "price-book/2026-01-01.csv",
                "repair_type,title,family,book_hours,book_labour,least_hours,hazards,least_labour,free_weeks",
                "refret,Refret,fretwork,12,1200,,,,");
        assertThat(ForeignBook.newest(shop.path(), Settings.DEFAULTS)).isEmpty();
    }

    @Test
    void anAdoptedBookIsReadAsItIsThoughTheNameOfTheRuleFitsIt() {
        ShopFolder shop = german(BOOK)
                .file(
                        "price-book/2026-09-01.csv",
                        "repair_type,title,family,book_hours,book_labour,least_hours,hazards,least_labour,free_weeks",
                        "refret,Neubundierung,fretwork,13.7500,1375.0000,9.0000,,,");
        assertThat(inForce(shop).type("refret").orElseThrow().bookSeconds()).isEqualTo(49_500);
    }

    @ParameterizedTest
    @CsvSource({
        "hours, 1:30, 2:45, 9.75, 9:45",
        "hours, 01:30, 12:45, 9.75, 09:45",
        "hours, 1h30, 2h45, 9.75, 9h45",
        "hours, 1.5 h, 2.75 h, 9.25, 9.25 h",
        "hours, 1.50, 2.75, 9.5, 9.50",
        "hours, 1.5, 2, 9.75, 9.75",
        "hours, PT1H30M, PT2H45M, 9.75, PT9H45M",
        "minutes, 90, 165, 9.75, 585",
        "hundredths, 150, 275, 9.75, 975"
    })
    void hoursAreWrittenAsTheColumnHasThem(String unit, String one, String two, String hours, String written)
            throws IOException {
        ShopFolder shop = new ShopFolder(folder)
                .file("shop.toml", "[[files]]\nname = \"2026*\"\ntable = \"price-book\"\nhours = \"" + unit + "\"")
                .file(
                        "price-book/2026-01-01.csv",
                        "repair_type,title,family,book_hours,book_labour",
                        "refret,Refret,fretwork," + two + ",$1,200.00".replace(",200", "200"),
                        "setup,Setup,setup," + one + ",$150.00");
        String text = Files.readString(
                written(shop, at(inForce(shop), "setup", hours, "1175.5")).orElseThrow());
        assertThat(text).endsWith("setup,Setup,setup," + written + ",$1175.50\r\n");
    }

    @Test
    void inAnyDialectItReadsAsTheSameBookAndUnchangedRowsStayByteForByte() throws IOException {
        int texts = 0;
        for (long seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            Path plain = Files.createDirectories(folder.resolve("plain" + seed));
            Path foreign = folder.resolve("foreign" + seed);
            ShopFolder shop = new ShopFolder(plain).file("price-book/2026-01-01.csv", rows(random));
            PriceBook book = inForce(shop);
            InAnyDialect.write(plain, foreign, seed);
            if (Files.exists(foreign.resolve("price-book/2026-01-01.xlsx"))) {
                continue;
            }
            texts++;
            PriceBook next = book;
            List<String> changed = new ArrayList<>();
            for (String key : book.types().keySet()) {
                if (random.nextInt(3) == 0) {
                    changed.add(key);
                    next = at(
                            next,
                            key,
                            (1 + random.nextInt(120)) / 4.0 + "",
                            random.nextInt(3_000) + "." + random.nextInt(10));
                }
            }
            Optional<Path> file = ForeignBook.write(foreign, Settings.DEFAULTS, next, foreign);
            assertThat(file).as("seed " + seed).isPresent();
            byte[] before = Files.readAllBytes(foreign.resolve("price-book/2026-01-01.csv"));
            byte[] after = Files.readAllBytes(file.get());
            assertThat(lines(after, changed)).as("seed " + seed).isEqualTo(lines(before, changed));
            assertThat(new ShopFolder(foreign)
                            .bytes("price-book/2026-01-01.csv", after)
                            .reconciled()
                            .ledger()
                            .books()
                            .inForce(ShopFolder.AS_OF)
                            .types())
                    .as("seed " + seed)
                    .isEqualTo(next.types());
        }
        assertThat(texts).isGreaterThan(30);
    }

    private static String[] rows(Random random) {
        List<String> lines = new ArrayList<>();
        lines.add("repair_type,shelf,title,family,book_hours,book_labour,least_labour,note");
        for (int row = 0; row < 12; row++) {
            lines.add(String.format(
                    Locale.ROOT,
                    "repair-%d,%d,\"Repair, \"\"%d\"\"\",family-%d,%s,%d.%d,%s,%s",
                    row,
                    random.nextInt(99),
                    row,
                    row % 3,
                    (1 + random.nextInt(80)) / 4.0,
                    random.nextInt(2_000),
                    random.nextInt(10),
                    random.nextInt(3) == 0 ? "" : "25.5",
                    random.nextInt(3) == 0 ? "\"a; b, c\"" : "n\u00fctzlich"));
        }
        return lines.toArray(String[]::new);
    }

    /** Rows that did not change, as their letters; one byte a letter, so that every byte counts. */
    private static List<String> lines(byte[] bytes, List<String> changed) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1).replace("\0", "");
        return text.lines()
                .filter(line -> !line.contains("Total"))
                .filter(line -> changed.stream().noneMatch(key -> line.matches(".*\\b" + key + "\\b.*")))
                .toList();
    }
}
