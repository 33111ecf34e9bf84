package benchtrue.reconcile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import benchtrue.ShapedShop;
import benchtrue.ShopFolder;
import benchtrue.intake.InAnyDialect;
import benchtrue.intake.ReadExports;
import benchtrue.mapping.Draft;
import benchtrue.mapping.DraftMapping;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.Balance;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever the shop's systems write, and however its tables lie, the ledger is the same. */
class AnyDialectTest {
    /** Words of the one refusal that the data contract names for dialects: dates that can be read in two ways. */
    private static final String OPEN_DATES = "if the day stands first";

    @TempDir
    Path folder;

    @Test
    void anUntidyShopInAnyDialectHasTheSameLedgerOrItsDatesAreOpen() throws IOException {
        same(LongStream.rangeClosed(1, 15));
    }

    @Test
    @Tag("proof")
    void aThousandUntidyShopsInAnyDialectHaveTheSameLedgerOrTheirDatesAreOpen() throws IOException {
        same(LongStream.rangeClosed(1_000, 2_000));
    }

    @Test
    void aTidyShopInAnyShapeHasTheSameLedger() throws IOException {
        sameInShapes(LongStream.rangeClosed(1, 10));
    }

    @Test
    @Tag("proof")
    void threeHundredTidyShopsInAnyShapeHaveTheSameLedger() throws IOException {
        sameInShapes(LongStream.rangeClosed(1_000, 1_299));
    }

    /** Each is read with the draft as it is, whatever it asks. */
    private void sameInShapes(LongStream seeds) throws IOException {
        for (long seed : seeds.toArray()) {
            Path plain = folder.resolve("tidy-" + seed);
            TidyShop.write(plain, seed);
            Path shaped = folder.resolve("shaped-" + seed);
            String shape = new ShapedShop(plain, shaped).drawn(new Random(seed));
            Draft draft = new DraftMapping().draft(shaped, Settings.DEFAULTS, "");
            Files.writeString(shaped.resolve(ReadSettings.FILE), draft.text());
            String how = "seed " + seed + ", " + shape + ", asked " + draft.questions() + "\n" + draft.text();
            assertThatCode(() -> reconciled(shaped)).as(how).doesNotThrowAnyException();
            Reconciled found = reconciled(shaped);
            assertThat(LedgerText.of(found.ledger()))
                    .as(how)
                    .isEqualTo(LedgerText.of(reconciled(plain).ledger()));
            assertThat(found.balances()).as("seed %d", seed).allMatch(Balance::holds);
        }
    }

    private void same(LongStream seeds) throws IOException {
        long open = 0;
        long all = 0;
        for (long seed : seeds.toArray()) {
            Path plain = folder.resolve("plain-" + seed);
            new DirtyShop(plain, seed, 40);
            tidy(plain, seed);
            Path written = folder.resolve("written-" + seed);
            InAnyDialect.write(plain, written, seed);
            open += isSame(plain, written, seed) ? 0 : 1;
            all++;
        }
        assertThat(open).as("shops whose dates are open, of %d", all).isLessThan(all / 2);
    }

    private static boolean isSame(Path plain, Path written, long seed) {
        Reconciled expected = reconciled(plain);
        Reconciled found;
        try {
            found = reconciled(written);
        } catch (Refusal refusal) {
            assertThat(refusal.getMessage()).as("seed %d", seed).contains(OPEN_DATES);
            return false;
        }
        assertThat(found.ledger())
                .as("seed %d", seed)
                .usingRecursiveComparison()
                // Rows that can't be used are compared as rows: a damaged one may be damaged otherwise in another
                // dialect.
                .ignoringFields("completeness")
                .isEqualTo(expected.ledger());
        assertThat(found.balances()).as("seed %d", seed).allMatch(Balance::holds);
        return true;
    }

    private static Reconciled reconciled(Path shop) {
        Settings settings = new ReadSettings().read(shop);
        return new Reconcile().reconcile(new ReadExports().read(shop, settings), settings, ShopFolder.AS_OF);
    }

    /**
     * Takes out what no canonical file has: numbers with a decimal comma; and, of every other shop, what a sheet can't hold:
     * rows of another length and control characters.
     */
    private static void tidy(Path shop, long seed) throws IOException {
        for (String place : List.of("exports", "price-book")) {
            try (Stream<Path> files = Files.list(shop.resolve(place))) {
                for (Path file : files.toList()) {
                    String text = Files.readString(file).replace("\"1,5\"", "about two");
                    Files.write(file, (seed % 2 == 0 ? text : squared(text)).getBytes(StandardCharsets.UTF_8));
                }
            }
        }
    }

    private static String squared(String text) {
        String[] lines = text.replaceAll("\"([^\"\\r\\n]*)\\n\"", "$1")
                .replace("\u0001", "")
                .split("\r\n");
        StringBuilder kept = new StringBuilder();
        for (String line : lines) {
            boolean whole = cells(line) == cells(lines[0]);
            kept.append(whole ? line + "\r\n" : "");
        }
        return kept.toString();
    }

    private static long cells(String line) {
        return line.replaceAll("\"(?:[^\"]|\"\")*\"", "")
                .chars()
                .filter(letter -> letter == ',')
                .count();
    }
}
