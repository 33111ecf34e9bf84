package benchtrue;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.charts.DrawCharts;
import benchtrue.nightly.Night;
import benchtrue.nightly.Progress;
import benchtrue.nightly.Published;
import benchtrue.settings.ReadSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The README shows the sample's pictures as they are today. To renew them:
 * {@code mvn -pl reports -am test -Dtest=ReadmePicturesTest -Dsurefire.failIfNoSpecifiedTests=false -Dpictures.update=true},
 * then look at each.
 */
class ReadmePicturesTest {
    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final Path SHOWN = ROOT.resolve("reports/pictures");
    private static final List<String> NAMES =
            List.of("quoted-against-actual.svg", "money-lost.svg", "jobs-neck-reset.svg", "every-repair.svg");

    @TempDir
    private Path folder;

    private Path night() throws IOException {
        Path sample = ROOT.resolve("sample-exports");
        try (Stream<Path> files = Files.walk(sample)) {
            for (Path file :
                    files.filter(f -> !f.startsWith(sample.resolve("out"))).toList()) {
                Path to = folder.resolve(sample.relativize(file).toString());
                if (Files.isRegularFile(file)) {
                    Files.createDirectories(to.getParent());
                    Files.copy(file, to, StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
        Clock still = Clock.fixed(Instant.EPOCH, ZoneOffset.UTC);
        Published published = new Night(List.of(new DrawCharts()), Progress.UNHEARD, still, "test")
                .run(folder, new ReadSettings().read(folder), ShopBuilder.day("2026-10-31"));
        return published.folder().resolve("charts");
    }

    @Test
    void theReadmeShowsTheSamplesPicturesAsTheyAreToday() throws IOException {
        Path charts = night();
        for (String name : NAMES) {
            if (Boolean.getBoolean("pictures.update")) {
                Files.createDirectories(SHOWN);
                Files.copy(charts.resolve(name), SHOWN.resolve(name), StandardCopyOption.REPLACE_EXISTING);
            }
            assertThat(SHOWN.resolve(name)).hasSameTextualContentAs(charts.resolve(name));
            assertThat(Files.readString(ROOT.resolve("README.md"))).contains("reports/pictures/" + name);
        }
    }
}
