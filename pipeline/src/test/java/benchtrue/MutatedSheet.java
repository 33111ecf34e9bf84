package benchtrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Damages a part within a workbook, so that the damage is not only one of the archive around it. */
public final class MutatedSheet {
    private MutatedSheet() {}

    /** Returns the workbook with one part mutated, or the mutated bytes where it is no archive any more. */
    public static byte[] of(byte[] workbook, Random random) throws IOException {
        Map<String, byte[]> parts;
        try {
            parts = parts(workbook);
        } catch (IOException | IllegalArgumentException noArchive) {
            return MutatedBytes.of(workbook, random);
        }
        if (parts.isEmpty()) {
            return MutatedBytes.of(workbook, random);
        }
        String[] names = parts.keySet().toArray(String[]::new);
        String chosen = random.nextBoolean() ? names[names.length - 1] : names[random.nextInt(names.length)];
        parts.put(chosen, MutatedBytes.of(parts.get(chosen), random));
        return zipped(parts);
    }

    /** Returns the workbook with one part's text changed. */
    public static byte[] with(byte[] workbook, String part, UnaryOperator<String> change) throws IOException {
        Map<String, byte[]> parts = parts(workbook);
        parts.computeIfPresent(
                part,
                (name, bytes) ->
                        change.apply(new String(bytes, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8));
        return zipped(parts);
    }

    private static Map<String, byte[]> parts(byte[] workbook) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(workbook))) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                parts.put(part.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }

    private static byte[] zipped(Map<String, byte[]> parts) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
            }
        }
        return bytes.toByteArray();
    }
}
