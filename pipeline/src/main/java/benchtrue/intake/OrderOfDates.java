package benchtrue.intake;

import benchtrue.intake.cells.DateText;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What dates in figures tell of the order in which they stand.
 *
 * @param open whether some can be read with the day or the month first
 * @param dayFirst whether one can only be read with the day first
 * @param monthFirst whether one can only be read with the month first
 */
public record OrderOfDates(boolean open, boolean dayFirst, boolean monthFirst) {
    /** Returns what texts tell, of which some are dates. */
    public static OrderOfDates of(Stream<String> texts) {
        Set<DateText.Order> told = EnumSet.noneOf(DateText.Order.class);
        texts.map(DateText::tells).forEach(told::add);
        return new OrderOfDates(
                told.contains(DateText.Order.OPEN),
                told.contains(DateText.Order.DAY_FIRST),
                told.contains(DateText.Order.MONTH_FIRST));
    }
}
