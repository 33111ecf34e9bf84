package benchtrue.shop;

import java.util.Arrays;

/** A growing column of longs. Not thread-safe; for building, never passed between stages. */
public final class Longs {
    private long[] values = new long[16];
    private int size;

    /** Appends a value. */
    public void add(long value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size + (size >> 1));
        }
        values[size++] = value;
    }

    /** Returns the value at a place. */
    public long get(int place) {
        return values[place];
    }

    /** Returns how many values there are. */
    public int size() {
        return size;
    }

    /** Returns the values in an array of their own. */
    public long[] toArray() {
        return Arrays.copyOf(values, size);
    }
}
