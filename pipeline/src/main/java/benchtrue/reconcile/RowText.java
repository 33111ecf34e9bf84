package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Kind;
import benchtrue.shop.Sha256;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;

/** A row's original text in the canonical columns. */
final class RowText {
    private static final byte UNIT_SEPARATOR = 0x1F;
    private static final int DIGITS = 16;

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
        MessageDigest digest = Sha256.begin();
        digest.update(rows.table().title().getBytes(StandardCharsets.UTF_8));
        for (Column column : columns(rows)) {
            digest.update(UNIT_SEPARATOR);
            digest.update(rows.text(column, row).getBytes(StandardCharsets.UTF_8));
        }
        return Sha256.digits(digest).substring(0, DIGITS);
    }
}
