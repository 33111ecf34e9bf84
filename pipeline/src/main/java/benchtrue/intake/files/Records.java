package benchtrue.intake.files;

import java.io.Closeable;
import java.io.IOException;

/**
 * A file as records of text cells, one after the other: the seam between bytes and tables. The reader of text files and
 * the reader of sheets both look like this. A record's cells are slices of UTF-8, good until the next call of {@link #next}.
 */
public interface Records extends Closeable {
    /** Moves to the next record that holds anything; returns false at the end. */
    boolean next() throws IOException;

    /** Returns the line, or the sheet's row, on which the record begins, counted from 1. */
    int line();

    /** Returns the name of the column that the record was made of, where a row of the file holds several; else empty. */
    default String column() {
        return "";
    }

    /** Returns how many cells the record has. */
    int size();

    /** Returns the array that the cells are slices of. */
    byte[] bytes();

    /** Returns where a cell begins. */
    int start(int cell);

    /** Returns where a cell ends, exclusive. */
    int end(int cell);

    /** Gives back what it opened itself; bytes handed to it are their owner's. */
    @Override
    default void close() throws IOException {}
}
