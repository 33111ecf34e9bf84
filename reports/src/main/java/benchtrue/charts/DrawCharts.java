package benchtrue.charts;

import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Draws the pictures of a review into {@code charts/}, each as SVG and as PNG. */
public final class DrawCharts implements Report {
    private static final double PIXELS = 1.5;

    @Override
    public void write(Review review, Path folder) throws IOException {
        Path charts = Files.createDirectories(folder.resolve("charts"));
        // Every picture ends before the first failure is told, so that nothing is written once the caller clears up.
        List<IOException> failures = Pictures.of(review).parallelStream()
                .flatMap(picture -> write(picture, charts).stream())
                .toList();
        if (!failures.isEmpty()) {
            throw failures.get(0);
        }
    }

    private static Optional<IOException> write(Picture picture, Path charts) {
        try {
            Files.write(charts.resolve(picture.name() + ".svg"), picture.svg().getBytes(StandardCharsets.UTF_8));
            try (OutputStream out = Files.newOutputStream(charts.resolve(picture.name() + ".png"))) {
                Png.write(picture.image(PIXELS), out);
            }
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(e);
        }
    }
}
