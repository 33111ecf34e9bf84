package benchtrue.intake.columns;

import benchtrue.intake.TableRows;
import java.util.List;

/**
 * A file that was read.
 *
 * @param name path within the shop folder with forward slashes, such as {@code exports/time-log-2026-10.csv}
 * @param table the table its rows belong to
 * @param sha256 digest of its bytes in lower-case hexadecimal
 * @param bytes its size
 * @param firstRow first of its rows in {@link TableRows}
 * @param rows how many rows it holds
 * @param day the day its name tells, or {@link benchtrue.shop.Absent#DAY}
 * @param told in what it is written otherwise than the data contract says, each with the reason
 */
public record InputFile(
        String name, Table table, String sha256, long bytes, int firstRow, int rows, int day, List<String> told) {
    public InputFile {
        told = List.copyOf(told);
    }
}
