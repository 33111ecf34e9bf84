package benchtrue.intake;

import benchtrue.settings.DateOrder;
import benchtrue.settings.DecimalSign;
import java.util.function.Function;
import java.util.function.Supplier;

/** Cells as shops' systems write them. What only the whole file can tell is asked where a cell leaves it open. */
final class WrittenCells implements CellFormat {
    private final Supplier<DateOrder> dates;
    private final Function<NumberText.Sign, DecimalSign> decimals;
    private final DateSystem serials;

    /**
     * Takes what the file tells.
     *
     * @param dates order of dates in figures separated by slashes or hyphens
     * @param decimals decimal sign for what a number tells
     * @param serials from which day serial dates count
     */
    WrittenCells(Supplier<DateOrder> dates, Function<NumberText.Sign, DecimalSign> decimals, DateSystem serials) {
        this.serials = serials;
        this.dates = dates;
        this.decimals = decimals;
    }

    @Override
    public String canonical(Column column, String text) {
        return switch (column.cell().kind()) {
            case DAY -> DateText.canonical(text, dates, serials);
            case MONTH -> MonthText.canonical(text, dates, serials);
            case CLOCK -> ClockText.canonical(text);
            case HOURS, SIGNED_HOURS -> HoursText.canonical(text, decimals);
            case MONEY, SIGNED_MONEY, QUANTITY, COUNT -> NumberText.canonical(text, decimals);
            case TEXT, KEYS, WORDS, WORD, YEAR, PASSED -> text;
        };
    }
}
