package benchtrue.intake.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * In which encoding a file's letters are written.
 *
 * @param charset its name
 * @param mark bytes before the first letter that only name the encoding
 * @param reason how that was told, for a person
 */
public record Encoding(Charset charset, int mark, String reason) {
    static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
    private static final int LOOKED_AT = 4_096;

    /** Tells the encoding from the whole file, or takes the one that the settings name. */
    public static Encoding of(Path file, Optional<Charset> named) throws IOException {
        byte[] start;
        try (InputStream in = Files.newInputStream(file)) {
            start = in.readNBytes(LOOKED_AT);
        }
        Encoding marked = marked(start);
        if (named.isPresent()) {
            int mark = marked != null && isOf(named.get(), marked.charset) ? marked.mark : 0;
            return new Encoding(mark > 0 ? marked.charset : named.get(), mark, "shop.toml says so");
        }
        if (marked != null) {
            return marked;
        }
        Charset wide = wide(start);
        return wide != null ? new Encoding(wide, 0, "every other byte of its beginning is zero") : letters(file);
    }

    /** UTF-16 without a byte order is whichever order the mark says. */
    private static boolean isOf(Charset named, Charset marked) {
        return named.equals(marked)
                || named.equals(StandardCharsets.UTF_16)
                        && (marked.equals(StandardCharsets.UTF_16LE) || marked.equals(StandardCharsets.UTF_16BE));
    }

    private static Encoding marked(byte[] start) {
        if (begins(start, 0xEF, 0xBB, 0xBF)) {
            return new Encoding(StandardCharsets.UTF_8, 3, "it begins with the mark of that encoding");
        }
        if (begins(start, 0xFF, 0xFE)) {
            return new Encoding(StandardCharsets.UTF_16LE, 2, "it begins with the mark of that encoding");
        }
        return begins(start, 0xFE, 0xFF)
                ? new Encoding(StandardCharsets.UTF_16BE, 2, "it begins with the mark of that encoding")
                : null;
    }

    private static boolean begins(byte[] start, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= start.length || (start[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** Latin text in two bytes a letter has a zero in every other byte. */
    private static Charset wide(byte[] start) {
        int[] zeros = new int[2];
        for (int i = 0; i < start.length; i++) {
            zeros[i & 1] += start[i] == 0 ? 1 : 0;
        }
        int half = start.length / 2;
        if (half < 4) {
            return null;
        }
        if (zeros[1] * 10 > half * 6 && zeros[0] * 10 < half) {
            return StandardCharsets.UTF_16LE;
        }
        return zeros[0] * 10 > half * 6 && zeros[1] * 10 < half ? StandardCharsets.UTF_16BE : null;
    }

    /** A damaged file in UTF-8 has letters of it that are whole; one in windows-1252 has none but by chance. */
    private static Encoding letters(Path file) throws IOException {
        Utf8Letters letters = new Utf8Letters();
        byte[] block = new byte[1 << 16];
        try (InputStream in = Files.newInputStream(file)) {
            for (int read = in.read(block); read >= 0; read = in.read(block)) {
                letters.take(block, read);
            }
        }
        letters.end();
        if (letters.broken() == 0) {
            return new Encoding(StandardCharsets.UTF_8, 0, "every letter of it is valid there");
        }
        boolean isUtf8 = letters.whole() >= letters.broken() || letters.impossible() > 0;
        return isUtf8
                ? new Encoding(StandardCharsets.UTF_8, 0, "most letters beyond a to z are valid there")
                : new Encoding(WINDOWS_1252, 0, "its letters beyond a to z are not UTF-8");
    }
}
