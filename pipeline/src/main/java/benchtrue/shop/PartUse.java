package benchtrue.shop;

/**
 * One part, material or piece of outside work drawn.
 *
 * @param ticket index of the ticket, or {@link Absent#INDEX} for shop supplies
 * @param line index of the line, or {@link Absent#INDEX}
 * @param part code of the part
 * @param quantity in ten-thousandths
 * @param unitCost cost of one
 * @param unitCharge charge for one, or {@link Absent#AMOUNT}
 * @param usedOn day drawn
 * @param kind what it is
 */
public record PartUse(
        int ticket, int line, int part, long quantity, long unitCost, long unitCharge, int usedOn, PartKind kind) {
    /** Returns quantity times unit cost, half-even to the ten-thousandth. */
    public long cost() {
        return Decimal.times(quantity, unitCost);
    }

    /** Returns quantity times unit charge, half-even to the ten-thousandth; absent where no charge is recorded. */
    public long charge() {
        return Absent.has(unitCharge) ? Decimal.times(quantity, unitCharge) : Absent.AMOUNT;
    }
}
