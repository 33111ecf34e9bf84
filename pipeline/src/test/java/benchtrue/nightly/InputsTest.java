package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InputsTest {
    @TempDir
    Path shop;

    @BeforeEach
    void aShopWithTwoFiles() throws IOException {
        Files.createDirectories(shop.resolve("exports/old"));
        Files.createDirectories(shop.resolve("out"));
        Files.writeString(shop.resolve("exports/old/tickets.csv"), "abc");
        Files.writeString(shop.resolve("shop.toml"), "");
        Files.writeString(shop.resolve("out/lines.csv"), "a result is no input");
    }

    @Test
    void everyInputIsDigestedInTheOrderOfItsName() {
        // SHA-256 of "abc": FIPS 180-4 example; of nothing: NIST CAVP.
        assertThat(Inputs.of(shop).files())
                .containsExactly(
                        new FileDigest(
                                "exports/old/tickets.csv",
                                3,
                                "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"),
                        new FileDigest(
                                "shop.toml", 0, "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"));
    }

    @Test
    void theSameFilesElsewhereHaveTheSameDigest(@TempDir Path elsewhere) throws IOException {
        Files.createDirectories(elsewhere.resolve("exports/old"));
        Files.writeString(elsewhere.resolve("exports/old/tickets.csv"), "abc");
        Files.writeString(elsewhere.resolve("shop.toml"), "");
        assertThat(Inputs.of(elsewhere).digest())
                .isEqualTo(Inputs.of(shop).digest())
                .hasSize(16);
        Files.writeString(elsewhere.resolve("shop.toml"), "seed = 2");
        assertThat(Inputs.of(elsewhere).digest()).isNotEqualTo(Inputs.of(shop).digest());
    }

    @Test
    void anExportWrittenDuringTheRunStopsIt() throws IOException {
        Inputs inputs = Inputs.of(shop);
        inputs.refuseIfChanged();
        Files.writeString(shop.resolve("exports/old/tickets.csv"), "abcd");
        assertRefused(inputs, "exports/old/tickets.csv was changed");
        Files.writeString(shop.resolve("exports/time-log.csv"), "new");
        assertRefused(inputs, "added or taken away");
    }

    private static void assertRefused(Inputs inputs, String words) {
        assertThatThrownBy(inputs::refuseIfChanged)
                .isInstanceOfSatisfying(
                        Refusal.class, r -> assertThat(r.exitCode()).isEqualTo(ExitCode.READ_FAILED))
                .hasMessageContaining(words);
    }
}
