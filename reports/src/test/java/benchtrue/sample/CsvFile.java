package benchtrue.sample;

import benchtrue.shop.FileOut;
import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;

/** A CSV file being written. */
final class CsvFile implements Closeable {
    private final Writer out;

    CsvFile(Path file, String header) throws IOException {
        Files.createDirectories(file.getParent());
        out = FileOut.text(file);
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
