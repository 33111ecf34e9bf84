package benchtrue.shop;

import java.util.Arrays;

/** A growing column of ints. Not thread-safe; for building, never passed between stages. */
public final class Ints {
    private static final int ROOM = 16;
    private int[] values;
    private int size;

    /** Begins an empty column. */
    public Ints() {
        this(ROOM);
    }

    /** Begins an empty column with room for so many values that are sure to come. */
    public Ints(int room) {
        values = new int[Math.max(room, ROOM)];
    }

    /** Appends a value. */
    public void add(int value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size + (size >> 1));
        }
        values[size++] = value;
    }

    public int get(int place) {
        return values[place];
    }

    /** Changes the value at a place. */
    public void set(int place, int value) {
        values[place] = value;
    }

    /** Returns how many values there are. */
    public int size() {
        return size;
    }

    /** Returns the values in an array of their own. */
    public int[] toArray() {
        return Arrays.copyOf(values, size);
    }
}
