package benchtrue.revision;

/**
 * What the owner decided about one repair type.
 *
 * @param repairType its key
 * @param title what the bench calls it
 * @param choice what was chosen
 * @param secondsBefore hours in the price book that the draft stands against
 * @param labourBefore labour price in it
 * @param seconds hours in the next price book
 * @param labour labour price in the next price book
 * @param reason why; needed for {@link Choice#KEEP}
 * @param until day until which it is not asked again, or {@link benchtrue.shop.Absent#DAY}
 * @param cell where the decision stands, so that a refusal can point at it
 */
public record Decision(
        String repairType,
        String title,
        Choice choice,
        long secondsBefore,
        long labourBefore,
        long seconds,
        long labour,
        String reason,
        int until,
        Cell cell) {
    /**
     * A cell of a workbook.
     *
     * @param sheet name of its sheet
     * @param address such as J17
     */
    public record Cell(String sheet, String address) {}

    /** Returns the fault that this decision can't be used. */
    CellFault fault(String found, String expected) {
        return new CellFault(cell.sheet(), cell.address(), title, found, expected);
    }

    /** What can be chosen. */
    public enum Choice {
        /** Nothing was decided: today's hours and price stay. */
        OPEN,
        /** The proposal is taken. */
        TAKE,
        /** Today's hours and price stay, for a reason and until a date. */
        KEEP,
        /** The owner's own hours. */
        OWN
    }
}
