package benchtrue.intake.cells;

import benchtrue.intake.columns.Column;
import benchtrue.settings.DateOrder;
import benchtrue.settings.DecimalSign;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cells as shops' systems write them. What only the whole file can tell is asked where a cell leaves it open. */
public final class WrittenCells implements CellFormat {
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
    public WrittenCells(
            Supplier<DateOrder> dates, Function<NumberText.Sign, DecimalSign> decimals, DateSystem serials) {
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

    /** Reads a calendar month: {@code 2026-03}, {@code 03/2026}, {@code Mar 2026}, {@code 202603}, or any day of it. */
    public static final class MonthText {
        private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-/. ]?(\\d{1,2})");
        private static final Pattern MONTH_FIRST = Pattern.compile("(\\d{1,2})[-/. ](\\d{4})");
        private static final Pattern NAMED = Pattern.compile("(\\p{L}{3,10})\\.?[- /]?(\\d{4}|\\d{2})");

        private MonthText() {}

        /** Returns the month as 2026-03, or the text as it stands where it is none. */
        public static String canonical(String text, Supplier<DateOrder> order, DateSystem serials) {
            String plain = text.strip();
            Matcher found = YEAR_FIRST.matcher(plain);
            if (found.matches() && !(plain.length() == 5 && plain.indexOf('-') < 0)) {
                return found.group(1) + "-" + two(found.group(2));
            }
            found = MONTH_FIRST.matcher(plain);
            if (found.matches()) {
                return found.group(2) + "-" + two(found.group(1));
            }
            found = NAMED.matcher(plain);
            if (found.matches() && DateText.month(found.group(1)) > 0) {
                return DateText.fullYear(found.group(2)) + "-" + two(String.valueOf(DateText.month(found.group(1))));
            }
            return DateText.read(plain, order, serials)
                    .map(day -> day.toString().substring(0, 7))
                    .orElse(text);
        }

        private static String two(String number) {
            return (number.length() < 2 ? "0" : "") + number;
        }
    }
}
