package benchtrue.charts;

import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Draws the pictures of a review into {@code charts/}, each as SVG and as PNG. */
public final class DrawCharts implements Report {
    private static final double PIXELS = 1.5;

    @Override
    public void write(Review review, Path folder) throws IOException {
        Path charts = Files.createDirectories(folder.resolve("charts"));
        try {
            Pictures.of(review).parallelStream().forEach(picture -> write(picture, charts));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static void write(Picture picture, Path charts) {
        try {
            Files.write(charts.resolve(picture.name() + ".svg"), picture.svg().getBytes(StandardCharsets.UTF_8));
            try (OutputStream out = Files.newOutputStream(charts.resolve(picture.name() + ".png"))) {
                Png.write(picture.image(PIXELS), out);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
