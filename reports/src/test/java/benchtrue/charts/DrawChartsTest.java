package benchtrue.charts;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.InventedShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawChartsTest {
    @TempDir
    private Path folder;

    @Test
    void everyPictureIsThereToLookAtAndToPrint() throws IOException {
        new DrawCharts().write(InventedShop.review(), folder);
        List<String> names;
        try (Stream<Path> files = Files.list(folder.resolve("charts"))) {
            names = files.map(file -> file.getFileName().toString()).sorted().toList();
        }
        assertThat(names)
                .contains("quoted-against-actual.svg", "money-lost.svg", "hours-by-kind.svg", "waiting-by-reason.svg")
                .contains("jobs-type-000.svg");
        for (String name : names) {
            if (name.endsWith(".png")) {
                assertThat(names).contains(name.replace(".png", ".svg"));
                assertThat(ImageIO.read(folder.resolve("charts").resolve(name).toFile())
                                .getWidth())
                        .isGreaterThan(700);
            }
        }
    }

    @Test
    void aKeyInCapitalsNamesAFileThatCanBeRead() {
        assertThat(JobHistory.FileName.of("NECK RESET", 16)).isEqualTo("neck-reset-17");
        assertThat(JobHistory.FileName.of("neck-reset", 16)).isEqualTo("neck-reset");
    }
}
