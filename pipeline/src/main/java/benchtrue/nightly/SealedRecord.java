package benchtrue.nightly;

import benchtrue.shop.Sha256;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A record as JSON whose last field, {@code sha256}, is the digest of the same text without that field. A record from before
 * there were seals has none and is read as it is; with another name beside those known it is none of them.
 */
final class SealedRecord {
    private static final String SEAL = "sha256";
    private static final Pattern SEALED = Pattern.compile("(?s)(.*),\n  \"" + SEAL + "\": \"([0-9a-f]{64})\"\n}\n");

    private SealedRecord() {}

    static String text(Map<String, Object> record) {
        Map<String, Object> sealed = new LinkedHashMap<>(record);
        sealed.put(SEAL, digest(Json.text(record)));
        return Json.text(sealed);
    }

    /**
     * Returns the record that a text holds.
     *
     * @param names that it may have
     * @throws IOException where the text is not as it was written
     */
    static JsonObject read(String text, Set<String> names) throws IOException {
        JsonObject record = Json.read(text);
        if (!record.has(SEAL)) {
            record.expectNamesOf(names);
            return record;
        }
        Matcher sealed = SEALED.matcher(text);
        if (!sealed.matches() || !sealed.group(2).equals(digest(sealed.group(1) + "\n}\n"))) {
            throw new IOException("found a seal that is not that of what stands above it");
        }
        return record;
    }

    private static String digest(String text) {
        return Sha256.of(text.getBytes(StandardCharsets.UTF_8));
    }
}
