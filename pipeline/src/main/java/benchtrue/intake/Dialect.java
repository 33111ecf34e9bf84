package benchtrue.intake;

import java.io.IOException;
import java.io.InputStream;

/** How one file writes a table: its bytes as records, its cells as the data contract would write them. */
interface Dialect {
    /** The data contract's own: RFC 4180, UTF-8 with or without a byte order mark, ISO dates, decimal points. */
    Dialect CANONICAL = new Dialect() {
        @Override
        public Records open(InputStream bytes, String file) throws IOException {
            return new CsvRecords(bytes, file, ',');
        }

        @Override
        public CellFormat cells() {
            return CellFormat.CANONICAL;
        }
    };

    /**
     * Opens a file at its first byte.
     *
     * @param bytes the file, read once from beginning to end; the caller closes it
     * @param file its name for messages
     * @throws benchtrue.shop.Refusal where the bytes are no table
     */
    Records open(InputStream bytes, String file) throws IOException;

    /** Returns how its cells are written. */
    CellFormat cells();
}
