package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ShopFolder;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    private void settingsThatChange(String file, String before, String after) throws IOException {
        ShopFolder folder = new ShopFolder(shop);
        Files.createDirectories(shop.resolve(file).getParent());
        Files.writeString(shop.resolve(file), before);
        Progress changing = new Progress() {
            @Override
            public void begins(int number, int of, String what) {
                folder.bytes(file, after.getBytes(StandardCharsets.UTF_8));
            }

            @Override
            public void tells(String what) {
                // nothing to hear
            }
        };
        Night night = new Night(List.of(), changing, Clock.systemUTC(), "test");
        assertThatThrownBy(() -> night.run(shop, Settings.DEFAULTS, ShopFolder.AS_OF))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.READ_FAILED))
                .hasMessageContainingAll(file, "changed while the night ran");
        assertThat(shop.resolve("out/latest")).doesNotExist();
    }

    @Test
    void settingsThatChangeWhileTheNightRunsAreNotTheOnesItRanWith() throws IOException {
        settingsThatChange("shop.toml", "seed = 1\n", "seed = 2\n");
    }

    @Test
    void aDecisionThatChangesWhileTheNightRunsIsNotCountedHalf() throws IOException {
        String decided = "{\"effective\": \"2026-09-01\", \"decided_on\": \"2026-08-20\", \"draft_sha256\": \"d\","
                + " \"decisions\": []}";
        settingsThatChange("decisions/2026-09-01.json", decided, decided + "\n");
    }

    @Test
    void theSettingsDigestedAreThoseBeforeTheNight() throws IOException {
        new ShopFolder(shop).file("shop.toml", "seed = 1");
        List<FileDigest> beside = Inputs.beside(shop);
        assertThat(Inputs.of(shop, List.of(), beside).files()).isEqualTo(beside).hasSize(1);
        new ShopFolder(shop).without("shop.toml");
        assertThatThrownBy(() -> Inputs.of(shop, List.of(), beside))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("shop.toml: found that the file changed");
    }

    @ParameterizedTest
    @ValueSource(strings = {DecisionFiles.FOLDER, Seals.FOLDER})
    void decisionsOrSealsOnADiskThatIsAwayAreNotTakenForNone(String name) throws IOException {
        new ShopFolder(shop);
        Path folder = shop.resolve(name);
        Night night = new Night(List.of(), Progress.UNHEARD, Clock.systemUTC(), "test");
        Files.createSymbolicLink(folder, shop.resolve("away"));
        notTakenForNone(night, folder);
        Files.delete(folder);
        Files.writeString(folder, "a file where a folder should be");
        notTakenForNone(night, folder);
    }

    private void notTakenForNone(Night night, Path folder) {
        assertThatThrownBy(() -> night.run(shop, Settings.DEFAULTS, ShopFolder.AS_OF))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.MISSING))
                .hasMessageContainingAll(folder.toString(), "a link that leads nowhere");
        assertThat(shop.resolve("out/latest")).doesNotExist();
    }
}
