package benchtrue.shop;

/** All parts drawn as columns, in the order of ticket. */
public final class PartUses {
    private static final PartKind[] PART_KINDS = PartKind.values();
    private final int[] ticket;
    private final int[] line;
    private final int[] part;
    private final long[] quantity;
    private final long[] unitCost;
    private final long[] unitCharge;
    private final int[] usedOn;
    private final byte[] kind;

    private PartUses(Builder rows) {
        ticket = rows.ticket.toArray();
        line = rows.line.toArray();
        part = rows.part.toArray();
        quantity = rows.quantity.toArray();
        unitCost = rows.unitCost.toArray();
        unitCharge = rows.unitCharge.toArray();
        usedOn = rows.usedOn.toArray();
        kind = rows.kind.toArray();
    }

    /** Returns how many rows there are. */
    public int size() {
        return ticket.length;
    }

    /** Returns a row as a value; for reading a few, not for loops over millions. */
    public PartUse get(int row) {
        return new PartUse(
                ticket(row),
                line(row),
                part(row),
                quantity(row),
                unitCost(row),
                unitCharge(row),
                usedOn(row),
                kind(row));
    }

    /** Returns {@link PartUse#ticket} of a row. */
    public int ticket(int row) {
        return ticket[row];
    }

    /** Returns {@link PartUse#line} of a row. */
    public int line(int row) {
        return line[row];
    }

    /** Returns {@link PartUse#part} of a row. */
    public int part(int row) {
        return part[row];
    }

    /** Returns {@link PartUse#quantity} of a row. */
    public long quantity(int row) {
        return quantity[row];
    }

    /** Returns {@link PartUse#unitCost} of a row. */
    public long unitCost(int row) {
        return unitCost[row];
    }

    /** Returns {@link PartUse#unitCharge} of a row. */
    public long unitCharge(int row) {
        return unitCharge[row];
    }

    /** Returns {@link PartUse#usedOn} of a row. */
    public int usedOn(int row) {
        return usedOn[row];
    }

    /** Returns {@link PartUse#kind} of a row. */
    public PartKind kind(int row) {
        return PART_KINDS[kind[row]];
    }

    /** Takes rows in the order of their keys. */
    public static final class Builder {
        private final Ints ticket = new Ints();
        private final Ints line = new Ints();
        private final Ints part = new Ints();
        private final Longs quantity = new Longs();
        private final Longs unitCost = new Longs();
        private final Longs unitCharge = new Longs();
        private final Ints usedOn = new Ints();
        private final Bytes kind = new Bytes();

        /** Appends a row and returns this builder. */
        public Builder add(PartUse row) {
            ticket.add(row.ticket());
            line.add(row.line());
            part.add(row.part());
            quantity.add(row.quantity());
            unitCost.add(row.unitCost());
            unitCharge.add(row.unitCharge());
            usedOn.add(row.usedOn());
            kind.add((byte) row.kind().ordinal());
            return this;
        }

        /** Returns how many rows were taken. */
        public int size() {
            return ticket.size();
        }

        /** Returns the rows as columns. */
        public PartUses build() {
            return new PartUses(this);
        }
    }
}
