package benchtrue.tables;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

/** Days as cells in ISO 8601. A table names the same days again and again, so the last ones are kept. */
final class DayCells {
    /** A power of two; more days than a shop's files reach back. */
    private static final int KEPT = 1 << 13;

    private final int[] days = new int[KEPT];
    private final byte[][] cells = new byte[KEPT][];

    byte[] of(int day) {
        int place = day & KEPT - 1;
        if (days[place] != day || cells[place] == null) {
            days[place] = day;
            cells[place] = LocalDate.ofEpochDay(day).toString().getBytes(StandardCharsets.US_ASCII);
        }
        return cells[place];
    }
}
