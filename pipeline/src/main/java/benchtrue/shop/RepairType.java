package benchtrue.shop;

import java.util.List;

/**
 * One repair type at its standard hours and price: a row of a price book.
 *
 * @param repairType the shop's own key
 * @param title what the bench calls it
 * @param family setup, fretwork, structural, finish, electronics, fitting, ...
 * @param bookSeconds standard hours
 * @param bookLabour standard labour price
 * @param leastSeconds shortest safe hours, or {@link Absent#AMOUNT}
 * @param hazards words such as {@code flammable-finish}
 * @param leastLabour minimum charge, or {@link Absent#AMOUNT}
 * @param freeWeeks weeks of free adjustment after the job, 0 where none is promised
 */
public record RepairType(
        String repairType,
        String title,
        String family,
        long bookSeconds,
        long bookLabour,
        long leastSeconds,
        List<String> hazards,
        long leastLabour,
        int freeWeeks) {
    public RepairType {
        hazards = List.copyOf(hazards);
    }

    /** Returns the same repair at other standard hours and another price. */
    public RepairType at(long seconds, long labour) {
        return new RepairType(
                repairType, title, family, seconds, labour, leastSeconds, hazards, leastLabour, freeWeeks);
    }

    /** Returns whether another row has the same standard hours and price. */
    public boolean quotesAs(RepairType other) {
        return bookSeconds == other.bookSeconds && bookLabour == other.bookLabour;
    }
}
