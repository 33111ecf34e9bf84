package benchtrue.charts;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.InventedShop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bare machine: no font, no font configuration, an empty home folder. */
class NoFontsTest {
    @TempDir
    private Path folder;

    /** Draws the invented shop's pictures into the folder it is given. */
    static final class Draw {
        private Draw() {}

        public static void main(String[] folder) throws IOException {
            new DrawCharts().write(InventedShop.review(), Path.of(folder[0]));
        }
    }

    private void draw(Path to, String fontConfiguration) throws IOException, InterruptedException {
        Path home = Files.createDirectories(folder.resolve("home"));
        Path log = folder.resolve("log");
        ProcessBuilder java = new ProcessBuilder(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-Duser.home=" + home,
                "-Duser.language=de",
                "-cp",
                System.getProperty("java.class.path"),
                Draw.class.getName(),
                to.toString()));
        Map<String, String> environment = java.environment();
        environment.clear();
        environment.put("HOME", home.toString());
        environment.put("FONTCONFIG_FILE", fontConfiguration);
        Process process =
                java.redirectErrorStream(true).redirectOutput(log.toFile()).start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(Files.readString(log)).isZero();
    }

    @Test
    void picturesAreTheSameOnAMachineWithoutFonts() throws IOException, InterruptedException {
        Path noFonts = folder.resolve("fonts.conf");
        Files.writeString(
                noFonts,
                "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"fonts.dtd\"><fontconfig></fontconfig>",
                StandardCharsets.UTF_8);
        draw(folder.resolve("bare"), noFonts.toString());
        draw(folder.resolve("nothing"), "/nowhere");
        new DrawCharts().write(InventedShop.review(), folder.resolve("here"));
        try (var files = Files.list(folder.resolve("here/charts"))) {
            for (Path file : files.toList()) {
                assertThat(folder.resolve("bare/charts").resolve(file.getFileName()))
                        .hasSameBinaryContentAs(file);
                assertThat(folder.resolve("nothing/charts").resolve(file.getFileName()))
                        .hasSameBinaryContentAs(file);
            }
        }
    }
}
