package benchtrue.shop;

/** All parts drawn as columns, in the order of ticket. */
public final class PartUses {
    private static final PartKind[] PART_KINDS = PartKind.values();

    private final Ints ticket = new Ints();
    private final Ints line = new Ints();
    private final Ints part = new Ints();
    private final Longs quantity = new Longs();
    private final Longs unitCost = new Longs();
    private final Longs unitCharge = new Longs();
    private final Ints usedOn = new Ints();
    private final Bytes kind = new Bytes();

    private PartUses() {}

    /** Returns how many rows there are. */
    public int size() {
        return ticket.size();
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
        return ticket.get(row);
    }

    /** Returns {@link PartUse#line} of a row. */
    public int line(int row) {
        return line.get(row);
    }

    /** Returns {@link PartUse#part} of a row. */
    public int part(int row) {
        return part.get(row);
    }

    /** Returns {@link PartUse#quantity} of a row. */
    public long quantity(int row) {
        return quantity.get(row);
    }

    /** Returns {@link PartUse#unitCost} of a row. */
    public long unitCost(int row) {
        return unitCost.get(row);
    }

    /** Returns {@link PartUse#unitCharge} of a row. */
    public long unitCharge(int row) {
        return unitCharge.get(row);
    }

    /** Returns {@link PartUse#usedOn} of a row. */
    public int usedOn(int row) {
        return usedOn.get(row);
    }

    /** Returns {@link PartUse#kind} of a row. */
    public PartKind kind(int row) {
        return PART_KINDS[kind.get(row)];
    }

    /** Takes rows in the order of their keys, until they are built. */
    public static final class Builder {
        private final PartUses rows = new PartUses();

        /** Appends a row and returns this builder. */
        public Builder add(PartUse row) {
            rows.ticket.add(row.ticket());
            rows.line.add(row.line());
            rows.part.add(row.part());
            rows.quantity.add(row.quantity());
            rows.unitCost.add(row.unitCost());
            rows.unitCharge.add(row.unitCharge());
            rows.usedOn.add(row.usedOn());
            rows.kind.add((byte) row.kind().ordinal());
            return this;
        }

        /** Returns the rows as columns. */
        public PartUses build() {
            return rows;
        }
    }
}
