package benchtrue.shop;

import java.util.Collection;

/**
 * All parts drawn, in the order of ticket.
 *
 * <p>An accessor with the name of a part of {@link PartUse} returns that part of a row.
 */
public final class PartUses {
    private final PartUse[] rows;

    public PartUses(Collection<PartUse> rows) {
        this.rows = rows.toArray(PartUse[]::new);
    }

    public int size() {
        return rows.length;
    }

    public PartUse get(int row) {
        return rows[row];
    }

    public int ticket(int row) {
        return rows[row].ticket();
    }

    public int line(int row) {
        return rows[row].line();
    }

    public int part(int row) {
        return rows[row].part();
    }

    public long quantity(int row) {
        return rows[row].quantity();
    }

    public long unitCharge(int row) {
        return rows[row].unitCharge();
    }

    public int usedOn(int row) {
        return rows[row].usedOn();
    }
}
