package benchtrue.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.Date;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Packs a workbook with one fixed time on every part, so that the same review gives the same bytes. */
final class FixedArchive {
    /** The first day after the earliest that the archive format can hold, which would be written in the local zone. */
    private static final LocalDateTime FIXED = LocalDateTime.of(1980, 1, 2, 0, 0);

    private FixedArchive() {}

    /** Writes the workbook to a file; what stands beside it meanwhile is gone afterwards, also on failure. */
    static void write(Workbook workbook, Path file) throws IOException {
        Path loose = file.resolveSibling(file.getFileName() + ".part");
        try {
            try (OutputStream bytes = Files.newOutputStream(loose)) {
                workbook.write(bytes);
            }
            pack(loose, file);
        } finally {
            Files.deleteIfExists(loose);
        }
    }

    private static void pack(Path loose, Path file) throws IOException {
        try (ZipFile parts = new ZipFile(loose.toFile());
                OutputStream bytes = Files.newOutputStream(file);
                ZipOutputStream archive = new ZipOutputStream(bytes)) {
            for (ZipEntry part : Collections.list(parts.entries())) {
                ZipEntry fixed = new ZipEntry(part.getName());
                fixed.setTimeLocal(FIXED);
                archive.putNextEntry(fixed);
                try (InputStream content = parts.getInputStream(part)) {
                    content.transferTo(archive);
                }
                archive.closeEntry();
            }
        }
    }

    /** The archive tells the as-of date, never the clock. */
    static void date(XSSFWorkbook workbook, int asOf) {
        Instant day = LocalDate.ofEpochDay(asOf).atStartOfDay(ZoneOffset.UTC).toInstant();
        POIXMLProperties.CoreProperties properties = workbook.getProperties().getCoreProperties();
        properties.setCreated(Optional.of(Date.from(day)));
        properties.setModified(Optional.of(Date.from(day)));
        properties.setCreator("Benchtrue");
    }
}
