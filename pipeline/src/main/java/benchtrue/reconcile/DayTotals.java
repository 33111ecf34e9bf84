package benchtrue.reconcile;

import benchtrue.shop.Ints;
import java.util.Arrays;

/** Adds up seconds by technician and day, in the order the days are first met. */
final class DayTotals {
    private long[] keys = new long[64];
    private long[] totals = new long[64];
    private final Ints firstRows = new Ints();
    private int[] slots = new int[128];

    void add(int technician, int day, long seconds, int row) {
        long key = (long) technician << 32 | day & 0xFFFFFFFFL;
        int slot = slot(key);
        if (slots[slot] == 0) {
            insert(key, slot, row);
            slot = slot(key);
        }
        int place = slots[slot] - 1;
        totals[place] += seconds;
        firstRows.set(place, Math.min(firstRows.get(place), row));
    }

    int size() {
        return firstRows.size();
    }

    long seconds(int place) {
        return totals[place];
    }

    /** Returns the first row of a day. */
    int firstRow(int place) {
        return firstRows.get(place);
    }

    private void insert(long key, int slot, int row) {
        if (size() == keys.length) {
            keys = Arrays.copyOf(keys, 2 * size());
            totals = Arrays.copyOf(totals, 2 * size());
        }
        keys[size()] = key;
        firstRows.add(row);
        slots[slot] = size();
        if (2 * size() > slots.length) {
            slots = new int[2 * slots.length];
            for (int place = 0; place < size(); place++) {
                slots[slot(keys[place])] = place + 1;
            }
        }
    }

    private int slot(long key) {
        long mixed = key * 0x9E3779B97F4A7C15L;
        int slot = (int) (mixed >>> 32) & (slots.length - 1);
        while (slots[slot] > 0 && keys[slots[slot] - 1] != key) {
            slot = (slot + 1) & (slots.length - 1);
        }
        return slot;
    }
}
