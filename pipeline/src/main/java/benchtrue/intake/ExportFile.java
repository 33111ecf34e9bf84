package benchtrue.intake;

import java.nio.file.Path;

/**
 * A file to be read.
 *
 * @param path where it lies
 * @param name path within the shop folder with forward slashes
 * @param table the table its name begins with
 * @param day the day its name tells, or {@link benchtrue.shop.Absent#DAY}
 */
record ExportFile(Path path, String name, Table table, int day) {}
