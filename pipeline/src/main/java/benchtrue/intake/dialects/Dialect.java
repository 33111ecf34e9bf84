package benchtrue.intake.dialects;

import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.cells.DateSystem;
import benchtrue.intake.cells.NumberText;
import benchtrue.intake.cells.WrittenCells;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.files.CsvRecords;
import benchtrue.intake.files.Records;
import benchtrue.settings.DecimalSign;
import benchtrue.shop.Notice;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;

/** How one file writes a table: its bytes as records, its cells as the data contract would write them. */
public interface Dialect {
    /**
     * The data contract's own: RFC 4180, UTF-8 with or without a byte order mark, ISO dates, decimal points; and whatever
     * can be read in one way only.
     */
    Dialect PLAIN = new Dialect() {
        private final CellFormat cells = new WrittenCells(
                () -> {
                    throw new LookAgain();
                },
                sign -> {
                    if (sign == NumberText.Sign.POINT || sign == NumberText.Sign.OPEN_POINT) {
                        return DecimalSign.POINT;
                    }
                    throw new LookAgain();
                },
                DateSystem.FROM_1900);

        @Override
        public Records open(InputStream bytes, String file) throws IOException {
            return CsvRecords.open(bytes, file);
        }

        @Override
        public PointedMinutes pointed(ExportFile file) {
            return PlainFileProbe.pointed(file);
        }

        @Override
        public CellFormat cells() {
            return cells;
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

    /** Returns how a text file was told to be written; empty for a sheet, and where it was not looked at whole. */
    default Optional<TextFile> text() {
        return Optional.empty();
    }

    /** Returns what its hours tell of what stands behind their sign. */
    PointedMinutes pointed(ExportFile file);

    /** Returns how its cells are written. */
    CellFormat cells();

    /** Returns whether anything in the file told the order of its dates or the sign before its decimals. */
    default boolean tells() {
        return false;
    }

    /** Returns in what it differs from the data contract's own, each with the reason; empty where in nothing. */
    default List<String> told() {
        return List.of();
    }

    /** Returns what the owner should know of a file written this way. */
    default List<Notice> notices() {
        return List.of();
    }
}
