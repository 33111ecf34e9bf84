package benchtrue.reconcile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

class DamagedFilesTest {
    @TempDir
    Path folder;

    @Test
    @Timeout(300)
    void aShopWithADamagedFileBalancesOrIsToldWhichFile() throws IOException {
        assertThat(new MutationLoop(folder).run(1, 2_000)).isBetween(100, 1_900);
    }

    @Test
    @Tag("proof")
    @Timeout(7_200)
    void aHundredThousandDamagedFilesAreReadIn512Megabytes() throws IOException, InterruptedException {
        loop("100000");
    }

    /** Looks for what nobody thought of, as long as there is time: {@code -Pproof -Dmutations.minutes=60}. */
    @Test
    @Tag("proof")
    @EnabledIfSystemProperty(named = "mutations.minutes", matches = "\\d+")
    void damagedFilesFindNothingForAsLongAsThereIsTime() throws IOException, InterruptedException {
        loop(System.getProperty("mutations.minutes") + "m");
    }

    private void loop(String length) throws IOException, InterruptedException {
        Process loop = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx512m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        MutationLoop.class.getName(),
                        folder.toString(),
                        "1000",
                        length)
                .redirectErrorStream(true)
                .start();
        String said = new String(loop.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(loop.waitFor()).as(said).isZero();
        assertThat(said).contains("the others balance");
    }
}
