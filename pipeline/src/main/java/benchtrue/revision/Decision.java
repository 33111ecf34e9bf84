package benchtrue.revision;

/**
 * What the owner decided about one repair type.
 *
 * @param repairType its key
 * @param choice what was chosen
 * @param seconds hours in the next price book
 * @param labour labour price in the next price book
 * @param reason why; needed for {@link Choice#KEEP}
 * @param until day until which it is not asked again, or {@link benchtrue.shop.Absent#DAY}
 * @param cell where the decision stands, so that a refusal can point at it
 */
public record Decision(
        String repairType, Choice choice, long seconds, long labour, String reason, int until, String cell) {
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
