package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InputsTest {
    @TempDir
    Path shop;

    private FileDigest digest(String name, String text) throws IOException {
        Path file = shop.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
        return FileDigest.of(shop, file);
    }

    @Test
    void aFileIsDigestedAsThePublishedExamplesAre() throws IOException {
        // SHA-256 of "abc": FIPS 180-4 example; of nothing: NIST CAVP.
        assertThat(digest("exports/tickets.csv", "abc"))
                .isEqualTo(new FileDigest(
                        "exports/tickets.csv", 3, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"));
        assertThat(digest("shop.toml", "").sha256())
                .isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    @Test
    void theDigestOfAllDependsOnNamesAndContentsNotOnTheOrderTheyWereReadIn() throws IOException {
        FileDigest tickets = digest("exports/tickets.csv", "abc");
        FileDigest settings = digest("shop.toml", "");
        String both = new Inputs(List.of(tickets, settings), new TreeMap<>()).digest();
        assertThat(new Inputs(List.of(settings, tickets), new TreeMap<>()).digest())
                .isEqualTo(both)
                .hasSize(16);
        assertThat(new Inputs(List.of(tickets, digest("shop.toml", "seed = 2")), new TreeMap<>()).digest())
                .isNotEqualTo(both);
        assertThat(new Inputs(List.of(settings, digest("exports/tickets2.csv", "abc")), new TreeMap<>()).digest())
                .isNotEqualTo(both);
    }
}
