package benchtrue.intake.files;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Tells files of another kind under a table's name by their first bytes, so that the message can say what they are. */
public final class KnownKinds {
    private static final Map<String, String> KINDS = new LinkedHashMap<>();

    static {
        KINDS.put("PK\u0003\u0004", "a zip archive or a workbook");
        KINDS.put("\u00D0\u00CF\u0011\u00E0", "a workbook of the old kind, or one with a password");
        KINDS.put("\u001F\u008B", "a compressed file");
        KINDS.put("%PDF", "a PDF");
        KINDS.put("\u0089PNG", "a picture");
        KINDS.put("\u00FF\u00D8\u00FF", "a picture");
        KINDS.put("<", "a web page or XML");
        KINDS.put("{", "JSON");
    }

    private KnownKinds() {}

    /** Refuses a file whose first bytes are known to be no table. */
    public static void requireTable(byte[] bytes, int from, int to, String file) {
        String start = new String(bytes, from, Math.min(8, to - from), StandardCharsets.ISO_8859_1);
        KINDS.forEach((magic, kind) -> {
            if (start.startsWith(magic)) {
                throw new Refusal(
                        ExitCode.UNUSABLE_FILE,
                        file + ", line 1: found " + kind + ", expected a table as text. Export it again as CSV.");
            }
        });
    }
}
