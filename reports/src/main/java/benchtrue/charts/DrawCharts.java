package benchtrue.charts;

import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Draws the pictures of a review into {@code charts/}, each as SVG and as PNG. */
public final class DrawCharts implements Report {
    private static final double PIXELS = 1.5;

    @Override
    public void write(Review review, Path folder) throws IOException {
        Path charts = Files.createDirectories(folder.resolve("charts"));
        for (Picture picture : Pictures.of(review)) {
            Files.write(charts.resolve(picture.name() + ".svg"), picture.svg().getBytes(StandardCharsets.UTF_8));
            png(picture.image(PIXELS), charts.resolve(picture.name() + ".png"));
        }
    }

    private static void png(BufferedImage image, Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            if (!ImageIO.write(image, "png", out)) {
                throw new IOException("this Java can't write PNG files");
            }
        }
    }
}
