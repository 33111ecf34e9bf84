package benchtrue.shop;

import java.util.Arrays;

/** A growing column of longs. Not thread-safe; for building, never passed between stages. */
public final class Longs {
    private static final int ROOM = 16;
    private long[] values;
    private int size;

    /** Begins an empty column. */
    public Longs() {
        this(ROOM);
    }

    /** Begins an empty column with room for so many values that are sure to come. */
    public Longs(int room) {
        values = new long[Math.max(room, ROOM)];
    }

    /** Appends a value. */
    public void add(long value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size + (size >> 1));
        }
        values[size++] = value;
    }

    public long get(int place) {
        return values[place];
    }

    /** Returns the values in an array of their own. */
    public long[] toArray() {
        return Arrays.copyOf(values, size);
    }
}
