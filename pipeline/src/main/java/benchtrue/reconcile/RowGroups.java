package benchtrue.reconcile;

import java.util.Arrays;

/**
 * Rows with equal contents: one group for each different content, numbered as they come. Found by hashing, or by the
 * content's own number where a single column decides.
 */
final class RowGroups {
    private final Contents contents;
    private final boolean numbered;
    private int[] slots;
    private int[] member = new int[1 << 8];
    private int size;

    RowGroups(Contents contents) {
        this.contents = contents;
        numbered = contents.distinct() > 0;
        slots = new int[numbered ? contents.distinct() : 1 << 10];
    }

    int size() {
        return size;
    }

    /** Returns the group of a row; a new one, numbered {@code size() - 1}, where no equal row was met. */
    int group(int row) {
        int slot = slot(row);
        return slots[slot] > 0 ? slots[slot] - 1 : add(row, slot);
    }

    /** Returns the group of a row, or -1 where no equal row was met. */
    int find(int row) {
        return slots[slot(row)] - 1;
    }

    private int slot(int row) {
        if (numbered) {
            return contents.number(row);
        }
        int slot = contents.hash(row) & (slots.length - 1);
        while (slots[slot] > 0 && !contents.equal(member[slots[slot] - 1], row)) {
            slot = (slot + 1) & (slots.length - 1);
        }
        return slot;
    }

    /** Returns the row that stands for a group. */
    int member(int group) {
        return member[group];
    }

    /** Lets an equal row stand for a group. */
    void stand(int group, int row) {
        member[group] = row;
    }

    private int add(int row, int slot) {
        if (size == member.length) {
            member = Arrays.copyOf(member, size * 2);
        }
        member[size++] = row;
        slots[slot] = size;
        if (!numbered && size * 2 > slots.length) {
            grow();
        }
        return size - 1;
    }

    private void grow() {
        slots = new int[slots.length * 2];
        for (int group = 0; group < size; group++) {
            int slot = contents.hash(member[group]) & (slots.length - 1);
            while (slots[slot] != 0) {
                slot = (slot + 1) & (slots.length - 1);
            }
            slots[slot] = group + 1;
        }
    }
}
