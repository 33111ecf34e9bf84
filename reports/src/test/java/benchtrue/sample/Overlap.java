package benchtrue.sample;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;

/**
 * The exports of one table: one file in a tidy shop, an older and a newer one that overlap in an untidy shop. Rows of
 * visits that begin in the half year before the older export, or that have changed since, stand in both.
 */
final class Overlap implements Closeable {
    private static final int OVERLAP_DAYS = 184;

    private final CsvFile older;
    private final CsvFile newer;
    private final Tally tally;
    private final String table;

    Overlap(World world, String table, String header, Tally tally) throws IOException {
        Path exports = world.options().folder().resolve("exports");
        boolean two = world.options().untidy() && world.history().start() < History.OLDER_EXPORT;
        this.table = table;
        this.tally = tally;
        this.older = two ? new CsvFile(exports.resolve(name(table, History.OLDER_EXPORT)), header) : null;
        String one = world.options().untidy() ? name(table, History.AS_OF) : table + ".csv";
        this.newer = new CsvFile(exports.resolve(one), header);
    }

    private static String name(String table, int day) {
        return table + "-" + LocalDate.ofEpochDay(day) + ".csv";
    }

    /** Returns whether rows of a visit that begins on a day stand in the older export. */
    boolean inOlder(int opened) {
        return older != null && opened <= History.OLDER_EXPORT;
    }

    /** Writes a row that stands in the newer export only. */
    void write(String row) throws IOException {
        newer.write(row);
    }

    /** Writes a row as the older export had it and, where it overlaps or has changed, as the newer one has it. */
    void write(int opened, String then, String now) throws IOException {
        older.write(then);
        boolean same = then.equals(now);
        if (opened > History.OLDER_EXPORT - OVERLAP_DAYS || !same) {
            newer.write(now);
            tally.add((same ? "repeated " : "superseded ") + table);
        }
    }

    /** Returns whether a visit's rows stand in both exports even where nothing changed. */
    boolean inBoth(int opened) {
        return inOlder(opened) && opened > History.OLDER_EXPORT - OVERLAP_DAYS;
    }

    @Override
    public void close() throws IOException {
        if (older != null) {
            older.close();
        }
        newer.close();
    }
}
