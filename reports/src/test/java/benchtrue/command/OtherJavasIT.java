package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import benchtrue.nightly.VerifyResult;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.WriteSample;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The archive, unpacked into an empty folder, on a Java without a compiler and on the newest long-term one. */
@Tag("proof")
class OtherJavasIT {
    private static final Path JAVAS = Path.of("/usr/lib/jvm");
    private static final List<String> SAME_EVERYWHERE = List.of(".csv", ".svg", ".html", ".txt");

    /** What a runtime without tools for developers holds. */
    private static final String RUNTIME = "java.se,jdk.charsets,jdk.localedata,jdk.unsupported,jdk.zipfs";

    @TempDir
    Path folder;

    private Installed installed;
    private Path shop;

    @BeforeEach
    void theSampleBesideTheUnpackedArchive() throws IOException {
        installed = Installed.in(Files.createDirectories(folder.resolve("installed")));
        shop = folder.resolve("shop");
        WriteSample.write(SampleOptions.standard(shop));
    }

    private Map<String, String> environment(Path java) {
        return Map.of(
                "PATH",
                "/usr/bin:/bin",
                "JAVA_HOME",
                java.toString(),
                "BENCHTRUE_CACHE",
                folder.resolve("cache").toString());
    }

    /** Runs a night twice, the second from the archive of classes that the first left; returns the result. */
    private Path nights(Path java) throws Exception {
        String stages = "";
        for (int night = 0; night < 2; night++) {
            Installed.Ended ended =
                    installed.run(environment(java), "nightly", "--shop", shop.toString(), "--as-of", "2026-10-31");
            assertThat(ended.code()).as(ended.err()).isZero();
            assertThat(ended.err().lines()).allMatch(line -> line.startsWith("benchtrue: "));
            stages = night == 0 ? ended.err() : stages;
            assertThat(ended.err()).isEqualTo(stages);
        }
        assertThat(new VerifyResult().verify(shop.resolve("out/latest"))).isEmpty();
        return shop.resolve("out/latest").toRealPath();
    }

    private Path runtimeWithoutCompiler() throws Exception {
        Path runtime = folder.resolve("runtime");
        Installed.Ended ended = Installed.run(
                folder,
                Map.of(),
                List.of(
                        Path.of(System.getProperty("java.home"), "bin", "jlink").toString(),
                        "--add-modules",
                        RUNTIME,
                        "--output",
                        runtime.toString()));
        assertThat(ended.code()).as(ended.out() + ended.err()).isZero();
        return runtime;
    }

    private static Path newest() throws IOException {
        assumeTrue(Files.isDirectory(JAVAS), "Javas are installed under " + JAVAS);
        try (Stream<Path> javas = Files.list(JAVAS)) {
            Path found = javas.filter(java -> java.getFileName().toString().matches(".*-25-.*"))
                    .findFirst()
                    .orElse(null);
            assumeTrue(found != null, "Java 25 is installed under " + JAVAS);
            return found;
        }
    }

    @Test
    void theSampleRunsOnARuntimeWithoutACompiler() throws Exception {
        Path runtime = runtimeWithoutCompiler();
        assertThat(runtime.resolve("bin/javac")).doesNotExist();
        assertThat(nights(runtime).resolve("review.html")).isNotEmptyFile();
    }

    @Test
    void theNewestLongTermJavaWritesTheSameTablesPageAndPictures() throws Exception {
        Path newest = newest();
        Path here = nights(Path.of(System.getProperty("java.home")));
        assertThat(folder.resolve("cache")).isDirectoryContaining("glob:**/start-*.jsa");
        Path kept = Files.move(here, folder.resolve("here"));
        Path there = nights(newest);
        try (Stream<Path> files = Files.walk(kept).filter(Files::isRegularFile)) {
            List<Path> same = files.filter(file -> SAME_EVERYWHERE.stream().anyMatch(file.toString()::endsWith))
                    .toList();
            assertThat(same).hasSizeGreaterThan(20);
            for (Path file : same) {
                assertThat(there.resolve(kept.relativize(file))).hasSameBinaryContentAs(file);
            }
        }
    }
}
