package benchtrue.reconcile;

import java.util.Arrays;

/** Rows with equal contents, found by hashing: one group for each different content, numbered as they come. */
final class RowGroups {
    private final Contents contents;
    private int[] slots = new int[1 << 10];
    private int[] member = new int[1 << 8];
    private int size;

    RowGroups(Contents contents) {
        this.contents = contents;
    }

    int size() {
        return size;
    }

    /** Returns the group of a row; a new one, numbered {@code size() - 1}, where no equal row was met. */
    int group(int row) {
        for (int slot = contents.hash(row) & (slots.length - 1); ; slot = (slot + 1) & (slots.length - 1)) {
            int group = slots[slot] - 1;
            if (group < 0) {
                return add(row, slot);
            }
            if (contents.equal(member[group], row)) {
                return group;
            }
        }
    }

    /** Returns the group of a row, or -1 where no equal row was met. */
    int find(int row) {
        for (int slot = contents.hash(row) & (slots.length - 1); ; slot = (slot + 1) & (slots.length - 1)) {
            int group = slots[slot] - 1;
            if (group < 0 || contents.equal(member[group], row)) {
                return group;
            }
        }
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
        if (size * 2 > slots.length) {
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
