package benchtrue;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.charts.DrawCharts;
import benchtrue.nightly.Review;
import benchtrue.page.WritePage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bare machine: no font, no font configuration, an empty home folder. */
class BareMachineTest {
    @TempDir
    private Path folder;

    /** Writes the invented shop's pictures and page into the folder it is given. */
    static final class Draw {
        private Draw() {}

        public static void main(String[] folder) throws IOException {
            write(Path.of(folder[0]));
        }
    }

    private static void write(Path folder) throws IOException {
        Review review = InventedShop.review();
        new DrawCharts().write(review, folder);
        new WritePage().write(review, folder);
    }

    private void draw(Path to, String fontConfiguration) throws IOException, InterruptedException {
        Path home = Files.createDirectories(folder.resolve("home"));
        Path log = folder.resolve("log");
        ProcessBuilder java = new ProcessBuilder(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-Duser.home=" + home,
                "-Duser.language=de",
                "-Duser.timezone=Pacific/Auckland",
                "-Dfile.encoding=ISO-8859-1",
                "-cp",
                System.getProperty("java.class.path"),
                Draw.class.getName(),
                to.toString()));
        Map<String, String> environment = java.environment();
        environment.clear();
        environment.put("HOME", home.toString());
        // As the launcher has it: the build may stand in a folder with a letter such as ü.
        environment.put("LC_ALL", "C.UTF-8");
        environment.put("FONTCONFIG_FILE", fontConfiguration);
        Process process =
                java.redirectErrorStream(true).redirectOutput(log.toFile()).start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(Files.readString(log)).isZero();
    }

    @Test
    void picturesAndPageAreTheSameOnAMachineWithoutFonts() throws IOException, InterruptedException {
        Path noFonts = folder.resolve("fonts.conf");
        Files.writeString(
                noFonts,
                "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"fonts.dtd\"><fontconfig></fontconfig>",
                StandardCharsets.UTF_8);
        draw(folder.resolve("bare"), noFonts.toString());
        draw(folder.resolve("nothing"), "/nowhere");
        Path here = folder.resolve("here");
        write(here);
        try (Stream<Path> files = Files.walk(here).filter(Files::isRegularFile)) {
            for (Path file : files.toList()) {
                String name = here.relativize(file).toString();
                assertThat(folder.resolve("bare").resolve(name)).hasSameBinaryContentAs(file);
                assertThat(folder.resolve("nothing").resolve(name)).hasSameBinaryContentAs(file);
            }
        }
    }
}
