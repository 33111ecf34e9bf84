package benchtrue.reconcile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

class DamagedFilesTest {
    /** As the program itself runs: what a library writes on a damaged sheet reaches nobody. */
    private static final String WITHOUT_A_LOG = "-Dorg.apache.logging.log4j.simplelog.level=OFF";

    @TempDir
    Path folder;

    @Test
    @Timeout(300)
    void aShopWithADamagedFileBalancesOrIsToldWhichFile() throws IOException {
        assertThat(new MutationLoop(folder, 1).run(0, 2_000)).isBetween(100, 1_900);
    }

    /** In parts: {@code -Dbenchtrue.damaged.from=25000 -Dbenchtrue.damaged.files=25000}. */
    @Test
    @Tag("proof")
    @DisabledIfSystemProperty(named = "mutations.minutes", matches = "\\d+")
    void aHundredThousandDamagedFilesAreReadIn512Megabytes() throws IOException, InterruptedException {
        loop(System.getProperty("benchtrue.damaged.files", "100000"));
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
                        WITHOUT_A_LOG,
                        "-cp",
                        System.getProperty("java.class.path"),
                        MutationLoop.class.getName(),
                        folder.toString(),
                        System.getProperty("benchtrue.damaged.from", "0"),
                        length)
                .redirectErrorStream(true)
                .start();
        List<String> said = new ArrayList<>();
        try (BufferedReader lines = loop.inputReader(StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                System.out.println(line);
                said.add(line);
            }
        } finally {
            loop.destroy();
        }
        assertThat(loop.waitFor()).as(String.join("\n", said)).isZero();
        assertThat(said).last().asString().contains("the others balance");
    }
}
