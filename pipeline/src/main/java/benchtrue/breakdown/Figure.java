package benchtrue.breakdown;

import benchtrue.format.Figures;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;

/**
 * One figure of a breakdown.
 *
 * @param form what it counts
 * @param amount a count, seconds or ten-thousandths; {@link Absent#AMOUNT} where not known, or where the form is a ratio or range
 * @param low the ratio or average, or the lower end of the range; NaN where not known
 * @param high upper end of the range
 * @param instead what is said where nothing can be told; empty where something can
 */
public record Figure(Form form, long amount, double low, double high, String instead) {
    /** What a figure counts. */
    public enum Form {
        COUNT,
        HOURS,
        MONEY,
        RATE,
        RATIO,
        RANGE,
        DAYS
    }

    /** What stands where a group has no job. */
    static final Figure NONE = new Figure(Form.COUNT, Absent.AMOUNT, Double.NaN, Double.NaN, "");

    static Figure of(Form form, long amount) {
        return new Figure(form, amount, Double.NaN, Double.NaN, Figures.UNKNOWN);
    }

    static Figure of(Form form, double ratio) {
        return new Figure(form, Absent.AMOUNT, ratio, Double.NaN, Figures.UNKNOWN);
    }

    /** Returns the figure as a number: hours, units of the currency, a ratio, or the lower end of a range; NaN where not known. */
    public double value() {
        return switch (form) {
            case COUNT -> Absent.has(amount) ? amount : Double.NaN;
            case HOURS -> Absent.has(amount) ? Hours.of(amount) : Double.NaN;
            case MONEY, RATE -> Absent.has(amount) ? Money.units(amount) : Double.NaN;
            case RATIO, RANGE, DAYS -> low;
        };
    }

    /** Returns the figure as the shop reads it. */
    public String text(Figures figures) {
        if (Double.isNaN(value())) {
            return instead;
        }
        return switch (form) {
            case COUNT -> figures.count(amount);
            case HOURS -> figures.quote(amount);
            case MONEY -> figures.price(amount);
            case RATE -> figures.rate(amount);
            case RATIO -> figures.ratio(low);
            case RANGE -> figures.ratio(low) + " to " + figures.ratio(high);
            case DAYS -> figures.number(low, 1);
        };
    }
}
