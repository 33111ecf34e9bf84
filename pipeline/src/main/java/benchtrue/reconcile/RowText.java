package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Kind;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** A row's original text in the canonical columns. */
final class RowText {
    private static final byte UNIT_SEPARATOR = 0x1F;
    private static final int DIGEST_BYTES = 8;

    private RowText() {}

    /** Returns the columns whose text is kept. */
    static List<Column> columns(TableRows rows) {
        return rows.table().columns().stream()
                .filter(column -> column.cell().kind() != Kind.PASSED)
                .toList();
    }

    /** Returns sixteen hexadecimal digits that tell a row's text from any other. */
    static String digest(TableRows rows, int row) {
        if (rows.raggedDigest(row) != 0) {
            return HexFormat.of().toHexDigits(rows.raggedDigest(row));
        }
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(rows.table().title().getBytes(StandardCharsets.UTF_8));
            for (Column column : columns(rows)) {
                digest.update(UNIT_SEPARATOR);
                digest.update(rows.text(column, row).getBytes(StandardCharsets.UTF_8));
            }
            return HexFormat.of().formatHex(digest.digest(), 0, DIGEST_BYTES);
        } catch (NoSuchAlgorithmException everyJdkHasIt) {
            throw new IllegalStateException(everyJdkHasIt);
        }
    }
}
