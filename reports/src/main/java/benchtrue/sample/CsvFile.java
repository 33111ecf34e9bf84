package benchtrue.sample;

import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A CSV file being written. */
final class CsvFile implements Closeable {
    private final BufferedWriter out;

    CsvFile(Path file, String header) throws IOException {
        Files.createDirectories(file.getParent());
        out = new BufferedWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8), 1 << 16);
        out.write(header + "\r\n");
    }

    void write(String row) throws IOException {
        out.write(row);
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
