package benchtrue.findings;

import benchtrue.shop.Money;
import java.time.LocalDate;
import java.util.Locale;

/** Figures as they stand in a sentence: no finer than the evidence bears, every number with its unit. */
final class Figures {
    /** ISO 4217 for "no currency": the shop named none. */
    private static final String NO_CURRENCY = "XXX";

    private final String unit;

    Figures(String currency) {
        unit = currency.equals(NO_CURRENCY) ? "" : " " + currency;
    }

    /** Returns a ratio to two decimals. */
    static String ratio(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    /** Returns a share as whole percent. */
    static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    /** Returns a number of things. */
    static String count(int number, String one, String many) {
        return String.format(Locale.ROOT, "%,d %s", number, number == 1 ? one : many);
    }

    /** Returns the month of a day, such as 2026-03. */
    static String month(int day) {
        return LocalDate.ofEpochDay(day).toString().substring(0, 7);
    }

    /** Returns money to two significant digits, without its sign. */
    String about(long tenThousandths) {
        return digits(tenThousandths) + unit;
    }

    /** Returns a range of money to two significant digits. */
    String range(long from, long to) {
        return signed(from) + " to " + signed(to) + unit;
    }

    /** Returns an hourly price. */
    String rate(long tenThousandths) {
        double units = Money.units(tenThousandths);
        String pattern = units == StrictMath.rint(units) ? "%,.0f" : "%,.2f";
        return String.format(Locale.ROOT, pattern, units) + unit;
    }

    private static String signed(long tenThousandths) {
        String digits = digits(tenThousandths);
        return tenThousandths < 0 && !digits.equals("0") ? "-" + digits : digits;
    }

    private static String digits(long tenThousandths) {
        double units = StrictMath.abs(Money.units(tenThousandths));
        double step = units < 10 ? 1 : StrictMath.pow(10, StrictMath.floor(StrictMath.log10(units)) - 1);
        return String.format(Locale.ROOT, "%,.0f", StrictMath.rint(units / step) * step);
    }
}
