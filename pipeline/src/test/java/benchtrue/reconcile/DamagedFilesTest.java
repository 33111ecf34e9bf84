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
import org.junit.jupiter.api.io.TempDir;

class DamagedFilesTest {
    /** As the program itself runs: what a library writes on a damaged sheet reaches nobody. */
    private static final String WITHOUT_A_LOG = "-Dorg.apache.logging.log4j.simplelog.level=OFF";

    @TempDir
    Path folder;

    @Test
    void aShopWithADamagedFileBalancesOrIsToldWhichFile() throws IOException {
        assertThat(new MutationLoop(folder, 1).run(0, 2_000)).isBetween(100, 1_900);
    }

    /** In parts: {@code -Dbenchtrue.damaged.from=25000 -Dbenchtrue.damaged.files=25000}. */
    @Test
    @Tag("proof")
    void aHundredThousandDamagedFilesAreReadIn512Megabytes() throws IOException, InterruptedException {
        loop(System.getProperty("benchtrue.damaged.files", "100000"));
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
