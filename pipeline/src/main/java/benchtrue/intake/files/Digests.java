package benchtrue.intake.files;

import benchtrue.shop.Sha256;
import java.nio.ByteBuffer;
import java.security.MessageDigest;

/** Digests of records. */
public final class Digests {
    private static final byte UNIT_SEPARATOR = 0x1F;

    private Digests() {}

    /** Returns 64 bits that tell a record from any other; never 0. */
    public static long ofRecord(Records record) {
        MessageDigest digest = Sha256.begin();
        for (int cell = 0; cell < record.size(); cell++) {
            digest.update(record.bytes(), record.start(cell), record.end(cell) - record.start(cell));
            digest.update(UNIT_SEPARATOR);
        }
        return ByteBuffer.wrap(digest.digest()).getLong() | 1;
    }
}
