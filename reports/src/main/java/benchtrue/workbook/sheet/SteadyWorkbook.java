package benchtrue.workbook.sheet;

import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.util.TempFile;
import org.apache.poi.util.TempFileCreationStrategy;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.streaming.SheetDataWriter;

/**
 * A workbook that is written row by row and of which the same review gives the same bytes. Rows wait in files beside the
 * result, so that what is the shop's never lies elsewhere on the disk.
 */
public final class SteadyWorkbook extends SXSSFWorkbook {
    private static final int ROWS_IN_MEMORY = 50;

    /** Of 1 to 9: the archive's own choice, 6, takes more than three times as long to save another sixth of the file. */
    private static final int PACKED = 2;

    /** Near the earliest day that the archive format can hold; at noon, since every zone has one that day. */
    private static final LocalDateTime FIXED = LocalDateTime.of(1980, 1, 2, 12, 0);

    private final Path file;

    /** Takes the file that {@link #save} makes and the day that it tells, in days since 1970-01-01. */
    public SteadyWorkbook(Path file, int asOf) {
        super(null, ROWS_IN_MEMORY);
        this.file = file;
        setZip64Mode(Zip64Mode.AsNeeded);
        Date day = Date.from(Instant.from(LocalDate.ofEpochDay(asOf).atStartOfDay(ZoneOffset.UTC)));
        POIXMLProperties.CoreProperties properties =
                getXSSFWorkbook().getProperties().getCoreProperties();
        properties.setCreated(Optional.of(day));
        properties.setModified(Optional.of(day));
        properties.setCreator("Benchtrue");
        String words =
                file.getFileName().toString().replaceFirst("\\.xlsx$", "").replace('-', ' ');
        properties.setTitle("Benchtrue: " + words + " of " + LocalDate.ofEpochDay(asOf));
    }

    /** Writes the file; no sheet can be changed afterwards. */
    public void save() throws IOException {
        try (OutputStream bytes = Files.newOutputStream(file)) {
            writeAvoidingTempFiles(bytes);
        }
    }

    @Override
    protected SheetDataWriter createSheetDataWriter() throws IOException {
        TempFile.setThreadLocalTempFileCreationStrategy(new Beside(file));
        try {
            return new SteadyRows();
        } finally {
            TempFile.setThreadLocalTempFileCreationStrategy(null);
        }
    }

    private record Beside(Path file) implements TempFileCreationStrategy {
        @Override
        public File createTempFile(String prefix, String suffix) throws IOException {
            return Files.createTempFile(file.getParent(), prefix, suffix).toFile();
        }

        @Override
        public File createTempDirectory(String prefix) throws IOException {
            return Files.createTempDirectory(file.getParent(), prefix).toFile();
        }
    }

    @Override
    protected ZipArchiveOutputStream createArchiveOutputStream(OutputStream bytes) {
        ZipArchiveOutputStream archive = new ZipArchiveOutputStream(bytes) {
            @Override
            public void putArchiveEntry(ZipArchiveEntry part) throws IOException {
                part.setTimeLocal(FIXED);
                super.putArchiveEntry(part);
            }
        };
        archive.setLevel(PACKED);
        return archive;
    }

    /** Writes the rows of one sheet into the file where they wait for the workbook; the same bytes as POI's own, sooner. */
    static final class SteadyRows extends SheetDataWriter {
        SteadyRows() throws IOException {}

        /** POI calls it no longer meant for others, but has no other place where its writer can be chosen. */
        @Override
        @SuppressWarnings("deprecation")
        public Writer createWriter(File rows) throws IOException {
            return new RowsOut(new FileOutputStream(rows));
        }

        /** POI escapes letter by letter; few words have one to escape, and only formulas have many. */
        @Override
        protected void outputEscapedString(String text) throws IOException {
            if (isPrintable(text)) {
                _out.write(escaped(text));
            } else {
                super.outputEscapedString(text);
            }
        }

        private static boolean isPrintable(String text) {
            for (int i = 0; i < text.length(); i++) {
                char letter = text.charAt(i);
                if (letter < ' ' || letter > '~') {
                    return false;
                }
            }
            return true;
        }

        private static String escaped(String text) {
            return text.replace("&", "&amp;")
                    .replace("<", "&lt;")
                    .replace(">", "&gt;")
                    .replace("\"", "&quot;");
        }
    }
}
