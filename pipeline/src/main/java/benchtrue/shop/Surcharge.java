package benchtrue.shop;

import java.util.List;

/**
 * A line of the price book with a condition: what a repair is quoted beside its standard hours wherever the condition holds.
 *
 * @param repairType key of the repair type
 * @param when a class of instrument, a trait, or {@code built-before-1960}
 * @param seconds hours beside the standard ones
 * @param labour price beside the standard one
 * @param title what the bench calls it
 */
public record Surcharge(String repairType, String when, long seconds, long labour, String title) {
    /** What a condition on the instrument's age begins with. */
    public static final String BUILT_BEFORE = "built-before-";

    /** Returns whether the condition holds for an instrument. */
    public boolean holds(String instrumentClass, List<String> traits, int builtYear) {
        return when.equals(instrumentClass) || traits.contains(when) || older(builtYear);
    }

    private boolean older(int builtYear) {
        return Absent.has(builtYear)
                && when.matches(BUILT_BEFORE + "[0-9]{4}")
                && builtYear < Integer.parseInt(when.substring(BUILT_BEFORE.length()));
    }

    /** Returns the line as a price list has it: a row of its own, below its repair. */
    public RepairType rowBelow(RepairType repair) {
        return new RepairType(
                repairType + " " + when,
                "+ " + title,
                repair.family(),
                seconds,
                labour,
                Absent.AMOUNT,
                List.of(),
                Absent.AMOUNT,
                0);
    }

    /** Returns whether another line is of the same repair and condition. */
    public boolean standsFor(Surcharge other) {
        return repairType.equals(other.repairType) && when.equals(other.when);
    }
}
