package benchtrue.intake.dialects;

import benchtrue.intake.cells.DateSystem;
import benchtrue.intake.cells.NumberText;
import benchtrue.intake.files.Records;
import benchtrue.settings.DecimalSign;
import benchtrue.shop.Notice;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** A file opened as records at its header: text of some encoding and layout, or a sheet. */
public interface Source {
    /**
     * Opens the file at its header.
     *
     * @param bytes the file, read once from beginning to end
     * @param file its name for messages
     */
    Records open(InputStream bytes, String file) throws IOException;

    /** Opens the file at its header, each row as wide as it is: below, another table may have more columns. */
    default Records openWide(InputStream bytes, String file) throws IOException {
        return open(bytes, file);
    }

    /** Returns the decimal sign of a number for what it tells itself and what all numbers tell, or null where that is open. */
    DecimalSign decimals(NumberText.Sign sign, DialectEvidence evidence);

    /** Returns from which day serial dates count. */
    default DateSystem serials() {
        return DateSystem.FROM_1900;
    }

    /** Returns what stands above the column names. */
    default String title() {
        return "";
    }

    /** Returns what was told of the file, each with the reason. */
    List<String> reasons();

    /** Returns what the owner should know. */
    default List<Notice> notices() {
        return List.of();
    }
}
