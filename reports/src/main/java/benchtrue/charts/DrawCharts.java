package benchtrue.charts;

import benchtrue.charts.drawing.ChartLayout;
import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/** Draws the pictures of a review into {@code charts/}, each as SVG and as PNG. */
public final class DrawCharts implements Report {
    private static final double PIXELS = 1.5;

    @Override
    public void write(Review review, Path folder) throws IOException {
        Path charts = Files.createDirectories(folder.resolve("charts"));
        // Every picture ends before the first failure is told, so that nothing is written once the caller clears up.
        List<Picture> pictures = new ArrayList<>(Pictures.of(review));
        pictures.addAll(Pictures.ofQuestions(review));
        List<IOException> failures = pictures.parallelStream()
                .flatMap(picture -> write(picture, charts).stream())
                .toList();
        if (!failures.isEmpty()) {
            throw failures.get(0);
        }
    }

    private static Optional<IOException> write(Picture picture, Path charts) {
        try {
            ChartLayout layout = picture.layout();
            Files.write(
                    charts.resolve(picture.name() + ".svg"),
                    layout.svg(picture.title()).getBytes(StandardCharsets.UTF_8));
            try (OutputStream out = Files.newOutputStream(charts.resolve(picture.name() + ".png"))) {
                Png.write(layout.image(PIXELS), out);
            }
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(e);
        }
    }

    /**
     * Writes pixels as PNG (ISO/IEC 15948), packed for speed: flat pictures shrink well anyway, and the JDK's own writer took
     * most of the time of a picture.
     */
    static final class Png {
        private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
        private static final byte[] EIGHT_BIT_COLOUR = {8, 2, 0, 0, 0};

        private Png() {}

        /** Writes an image of type {@link BufferedImage#TYPE_INT_RGB}. */
        static void write(BufferedImage image, OutputStream out) throws IOException {
            out.write(SIGNATURE);
            chunk(out, "IHDR", header(image));
            chunk(out, "IDAT", packed(image));
            chunk(out, "IEND", new byte[0]);
        }

        private static byte[] header(BufferedImage image) throws IOException {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            DataOutputStream header = new DataOutputStream(bytes);
            header.writeInt(image.getWidth());
            header.writeInt(image.getHeight());
            header.write(EIGHT_BIT_COLOUR);
            return bytes.toByteArray();
        }

        /** Rows of red, green, blue, each after a zero for "not filtered". */
        private static byte[] packed(BufferedImage image) throws IOException {
            int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
            int width = image.getWidth();
            byte[] row = new byte[1 + 3 * width];
            ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
            Deflater deflater = new Deflater(Deflater.BEST_SPEED);
            try (DeflaterOutputStream packing = new DeflaterOutputStream(bytes, deflater, 1 << 13)) {
                for (int start = 0; start < pixels.length; start += width) {
                    for (int x = 0; x < width; x++) {
                        int pixel = pixels[start + x];
                        row[3 * x + 1] = (byte) (pixel >> 16);
                        row[3 * x + 2] = (byte) (pixel >> 8);
                        row[3 * x + 3] = (byte) pixel;
                    }
                    packing.write(row);
                }
            } finally {
                deflater.end();
            }
            return bytes.toByteArray();
        }

        private static void chunk(OutputStream out, String type, byte[] data) throws IOException {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream(data.length + 12);
            DataOutputStream chunk = new DataOutputStream(bytes);
            chunk.writeInt(data.length);
            chunk.write(type.getBytes(StandardCharsets.US_ASCII));
            chunk.write(data);
            CRC32 sum = new CRC32();
            sum.update(bytes.toByteArray(), 4, data.length + 4);
            chunk.writeInt((int) sum.getValue());
            bytes.writeTo(out);
        }
    }
}
