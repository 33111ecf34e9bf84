package benchtrue.intake.columns;

import benchtrue.intake.TableRows;
import java.util.List;

/**
 * A file that was read.
 *
 * @param name path within the shop folder with forward slashes, such as {@code exports/time-log-2026-10.csv}, and the
 *     sheet where one was named
 * @param table the table its rows belong to
 * @param sha256 digest of its bytes in lower-case hexadecimal
 * @param bytes its size
 * @param firstRow first of its rows in {@link TableRows}
 * @param rows how many rows it holds
 * @param day the day its name tells, or {@link benchtrue.shop.Absent#DAY}
 * @param told in what it is written otherwise than the data contract says, each with the reason
 * @param file the path alone
 * @param keys how often a key may stand in it
 */
public record InputFile(
        String name,
        Table table,
        String sha256,
        long bytes,
        int firstRow,
        int rows,
        int day,
        List<String> told,
        String file,
        Keys keys) {
    /** How often a key may stand in a file. */
    public enum Keys {
        ONCE,
        /** A ticket's columns stand on each of its lines: the first counts. */
        ON_EACH_LINE
    }

    public InputFile {
        told = List.copyOf(told);
    }
}
