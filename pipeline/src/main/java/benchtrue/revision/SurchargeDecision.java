package benchtrue.revision;

import benchtrue.shop.Surcharge;

/**
 * What the owner decided about one line with a condition.
 *
 * @param line as it is to stand in the next price book
 * @param choice what was chosen
 * @param title what the bench calls the repair
 * @param cell where the decision stands, so that a refusal can point at it
 */
public record SurchargeDecision(Surcharge line, Choice choice, String title, Decision.Cell cell) {
    /** Returns the fault that this decision can't be used. */
    CellFault fault(String found, String expected) {
        return new CellFault(cell.sheet(), cell.address(), title, found, expected);
    }

    /** What can be chosen. */
    public enum Choice {
        /** The drafted line is taken. */
        TAKE,
        /** The line at the owner's own hours. */
        OWN,
        /** The line leaves the book. */
        DROP
    }
}
