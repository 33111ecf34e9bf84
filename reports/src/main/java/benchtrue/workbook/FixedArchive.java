package benchtrue.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Packs a workbook again with one fixed time on every part, so that the same review gives the same bytes. */
final class FixedArchive {
    /** The earliest time the archive format can hold. */
    private static final LocalDateTime FIXED = LocalDateTime.of(1980, 1, 1, 0, 0);

    private FixedArchive() {}

    static void write(byte[] workbook, Path file) throws IOException {
        try (ZipInputStream parts = new ZipInputStream(new ByteArrayInputStream(workbook));
                OutputStream bytes = Files.newOutputStream(file);
                ZipOutputStream archive = new ZipOutputStream(bytes)) {
            for (ZipEntry part = parts.getNextEntry(); part != null; part = parts.getNextEntry()) {
                ZipEntry fixed = new ZipEntry(part.getName());
                fixed.setTimeLocal(FIXED);
                archive.putNextEntry(fixed);
                parts.transferTo(archive);
                archive.closeEntry();
            }
        }
    }
}
