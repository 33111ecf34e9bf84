package benchtrue.intake.files;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** SHA-256 (FIPS 180-4). */
public final class Digests {
    private static final byte UNIT_SEPARATOR = 0x1F;

    private Digests() {}

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyJdkHasIt) {
            throw new IllegalStateException(everyJdkHasIt);
        }
    }

    /** Returns 64 bits that tell a record from any other; never 0. */
    public static long ofRecord(Records record) {
        MessageDigest digest = sha256();
        for (int cell = 0; cell < record.size(); cell++) {
            digest.update(record.bytes(), record.start(cell), record.end(cell) - record.start(cell));
            digest.update(UNIT_SEPARATOR);
        }
        return ByteBuffer.wrap(digest.digest()).getLong() | 1;
    }
}
