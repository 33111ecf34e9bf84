package benchtrue.nightly;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;

/**
 * Every file that a run read, in the order of their names.
 *
 * @param files their digests, of the bytes as they were read
 */
record Inputs(List<FileDigest> files) {
    private static final int DIGITS = 16;

    Inputs {
        files = files.stream().sorted(Comparator.comparing(FileDigest::file)).toList();
    }

    /** Returns sixteen hexadecimal digits that stand for all names and contents. */
    String digest() {
        MessageDigest all = FileDigest.digester();
        for (FileDigest file : files) {
            all.update((file.sha256() + "  " + file.file() + "\n").getBytes(StandardCharsets.UTF_8));
        }
        return HexFormat.of().formatHex(all.digest()).substring(0, DIGITS);
    }
}
