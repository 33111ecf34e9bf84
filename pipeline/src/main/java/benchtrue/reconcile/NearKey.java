package benchtrue.reconcile;

import java.util.Locale;
import java.util.regex.Pattern;

/** What is left of a key when everything is taken off that people mistype. */
final class NearKey {
    private static final Pattern LEADING_ZEROS = Pattern.compile("(?<![0-9])0+(?=[0-9])");
    private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{N}]");

    private NearKey() {}

    /** Returns a key without case, blanks, signs and leading zeros. */
    static String plain(String key) {
        String letters = SIGNS.matcher(key.toUpperCase(Locale.ROOT)).replaceAll("");
        return LEADING_ZEROS.matcher(letters).replaceAll("");
    }
}
