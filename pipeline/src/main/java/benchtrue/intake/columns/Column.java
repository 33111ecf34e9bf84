package benchtrue.intake.columns;

import java.util.Locale;

/** A column of a canonical table; each table has one enum of them, in the contract's order. */
public interface Column {
    /** Returns the place of the column within its table. */
    int ordinal();

    /** Returns the name of the constant. */
    String name();

    /** Returns what stands in the column. */
    Cell cell();

    /** Returns the column's name in a file's header, such as {@code work_date}. */
    default String header() {
        return name().toLowerCase(Locale.ROOT);
    }
}
