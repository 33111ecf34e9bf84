package benchtrue.shop;

import java.util.Arrays;

/** A growing column of bytes. Not thread-safe; for building, never passed between stages. */
public final class Bytes {
    private static final int ROOM = 16;
    private byte[] values;
    private int size;

    /** Begins an empty column. */
    public Bytes() {
        this(ROOM);
    }

    /** Begins an empty column with room for so many values that are sure to come. */
    public Bytes(int room) {
        values = new byte[Math.max(room, ROOM)];
    }

    /** Appends a value. */
    public void add(byte value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size + (size >> 1));
        }
        values[size++] = value;
    }

    /** Returns the value at a place. */
    public byte get(int place) {
        return values[place];
    }

    /** Returns how many values there are. */
    public int size() {
        return size;
    }
}
