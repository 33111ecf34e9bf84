package benchtrue.format;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Figures as a person of the shop's region reads them. Words stay English; what was not recorded reads "not known", never
 * zero. Ties round to the even digit. The same on every JDK and machine.
 */
public final class Figures {
    /** What stands where a figure was not recorded. */
    public static final String UNKNOWN = "not known";

    private static final String MINUS = "\u2212";
    private static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
    private static final Map<String, String> SIGNS = Map.of("EUR", "\u20ac", "GBP", "\u00a3", "USD", "$");
    private static final Set<String> NO_MINOR_UNIT = Set.of(
            "BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "UYI", "VND", "VUV", "XAF",
            "XOF", "XPF");
    private static final Set<String> THREE_DIGITS = Set.of("BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND");

    private final LocaleStyle style;
    private final String currency;

    private Figures(LocaleStyle style, String currency) {
        this.style = style;
        this.currency = currency;
    }

    /** Returns the figures of a BCP 47 tag and an ISO 4217 code; {@code XXX} writes amounts without a currency. */
    public static Figures of(String locale, String currency) {
        return new Figures(LocaleStyle.of(locale), currency);
    }

    /** Returns a whole number. */
    public String count(long count) {
        return decimal(BigDecimal.valueOf(count));
    }

    /** Returns a number of things with its word. */
    public String count(long count, String one, String many) {
        return count(count) + " " + (count == 1 ? one : many);
    }

    /** Returns a ratio of hours: two decimals. */
    public String ratio(double value) {
        return number(value, 2);
    }

    public String number(double value, int decimals) {
        return Double.isFinite(value) ? decimal(rounded(value, decimals)) : UNKNOWN;
    }

    /** Returns hours: two decimals below ten, one below a hundred, else none. */
    public String hours(double hours) {
        if (!Double.isFinite(hours)) {
            return UNKNOWN;
        }
        double size = Math.abs(hours);
        int decimals = size < 9.995 ? 2 : size < 99.95 ? 1 : 0;
        return decimal(rounded(hours, decimals)) + LocaleStyle.SPACE + "h";
    }

    public String hours(long seconds) {
        return Absent.has(seconds) ? hours(Hours.of(seconds)) : UNKNOWN;
    }

    /** Returns seconds as hours of a quote or a book: two decimals, since a quarter of an hour counts. */
    public String quote(long seconds) {
        return Absent.has(seconds) ? decimal(rounded(Hours.of(seconds), 2)) + LocaleStyle.SPACE + "h" : UNKNOWN;
    }

    /** Returns a share as whole per cent. */
    public String percent(double share) {
        return Double.isFinite(share) ? decimal(rounded(100 * share, 0)) + LocaleStyle.SPACE + "%" : UNKNOWN;
    }

    /** Returns ten-thousandths as whole units of the currency, for amounts a year. */
    public String money(long tenThousandths) {
        return Absent.has(tenThousandths) ? signed(scaled(tenThousandths, 0)) : UNKNOWN;
    }

    /** Returns ten-thousandths as a price, with the currency's minor unit unless it is a whole amount. */
    public String price(long tenThousandths) {
        if (!Absent.has(tenThousandths)) {
            return UNKNOWN;
        }
        return signed(scaled(tenThousandths, tenThousandths % Money.UNIT == 0 ? 0 : minorDigits()));
    }

    /** Returns an hourly rate that is an average: whole units from 20 on, since cents of it mean nothing. */
    public String rate(long tenThousandths) {
        return Absent.has(tenThousandths) && Math.abs(tenThousandths) >= 20 * Money.UNIT
                ? money(tenThousandths)
                : price(tenThousandths);
    }

    /** Returns money to two digits, for estimates without a range. */
    public String aboutMoney(long tenThousandths) {
        if (!Absent.has(tenThousandths)) {
            return UNKNOWN;
        }
        return "about " + signed(toStep(tenThousandths, step(Math.abs(tenThousandths))));
    }

    /** Returns a range of money rounded to what its width bears: two digits of the width. */
    public String moneyRange(long lower, long upper) {
        if (!Absent.has(lower) || !Absent.has(upper)) {
            return UNKNOWN;
        }
        BigDecimal step = step(Math.subtractExact(upper, lower));
        String low = signed(toStep(lower, step));
        String high = signed(toStep(upper, step));
        return low.equals(high) ? "about " + low : low + " to " + high;
    }

    /** Returns a day counted from 1970-01-01. */
    public String day(int day) {
        if (!Absent.has(day)) {
            return UNKNOWN;
        }
        LocalDate date = LocalDate.ofEpochDay(day);
        return style.date()
                .replace("yyyy", padded(date.getYear(), 4))
                .replace("mon", "\u0001")
                .replace("mm", padded(date.getMonthValue(), 2))
                .replace("dd", padded(date.getDayOfMonth(), 2))
                .replace("m", padded(date.getMonthValue(), 1))
                .replace("d", padded(date.getDayOfMonth(), 1))
                .replace("\u0001", MONTHS.get(date.getMonthValue() - 1));
    }

    /** Returns the month of a day counted from 1970-01-01. */
    public String monthOf(int day) {
        return Absent.has(day) ? month((int) LocalDate.ofEpochDay(day).getLong(ChronoField.PROLEPTIC_MONTH)) : UNKNOWN;
    }

    /** Returns a month counted as {@code year * 12 + month - 1}. */
    public String month(int month) {
        return Absent.has(month)
                ? MONTHS.get(Math.floorMod(month, 12)) + LocaleStyle.SPACE + padded(Math.floorDiv(month, 12), 4)
                : UNKNOWN;
    }

    private static String padded(int number, int digits) {
        String text = Integer.toString(number);
        return "0".repeat(Math.max(0, digits - text.length())) + text;
    }

    private static BigDecimal rounded(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
    }

    private static BigDecimal scaled(long tenThousandths, int digits) {
        return BigDecimal.valueOf(tenThousandths, 4).setScale(digits, RoundingMode.HALF_EVEN);
    }

    private static BigDecimal step(long width) {
        BigDecimal units = BigDecimal.valueOf(Math.max(width, 1), 4);
        int magnitude = units.precision() - units.scale() - 1;
        return BigDecimal.ONE.scaleByPowerOfTen(Math.max(0, magnitude - 1));
    }

    private static BigDecimal toStep(long tenThousandths, BigDecimal step) {
        return BigDecimal.valueOf(tenThousandths, 4)
                .divide(step, 0, RoundingMode.HALF_EVEN)
                .multiply(step)
                .setScale(0, RoundingMode.HALF_EVEN);
    }

    private int minorDigits() {
        return NO_MINOR_UNIT.contains(currency) ? 0 : THREE_DIGITS.contains(currency) ? 3 : 2;
    }

    private String signed(BigDecimal amount) {
        String digits = decimal(amount.abs());
        String minus = amount.signum() < 0 ? MINUS : "";
        if (currency.equals("XXX")) {
            return minus + digits;
        }
        String sign = SIGNS.getOrDefault(currency, currency);
        String space = sign.length() > 1 ? LocaleStyle.SPACE : "";
        return minus
                + switch (style.currency()) {
                    case BEFORE -> sign + space + digits;
                    case BEFORE_WITH_SPACE -> sign + LocaleStyle.SPACE + digits;
                    case AFTER -> digits + LocaleStyle.SPACE + sign;
                };
    }

    private String decimal(BigDecimal value) {
        String plain = value.abs().toPlainString();
        int point = plain.indexOf('.');
        String whole = point < 0 ? plain : plain.substring(0, point);
        String rest = point < 0 ? "" : style.decimal() + plain.substring(point + 1);
        return (value.signum() < 0 ? MINUS : "") + grouped(whole) + rest;
    }

    private String grouped(String whole) {
        if (whole.length() < style.groupFrom()) {
            return whole;
        }
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < whole.length(); i++) {
            if (i > 0 && (whole.length() - i) % 3 == 0) {
                text.append(style.group());
            }
            text.append(whole.charAt(i));
        }
        return text.toString();
    }
}
