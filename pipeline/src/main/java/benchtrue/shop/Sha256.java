package benchtrue.shop;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), in hexadecimal. */
public final class Sha256 {
    private Sha256() {}

    /** Returns a digest that has taken nothing yet. */
    public static MessageDigest begin() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }

    /** Returns the digits of all that a digest has taken, which begins anew. */
    public static String digits(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }

    public static String of(byte[] bytes) {
        MessageDigest digest = begin();
        digest.update(bytes);
        return digits(digest);
    }
}
