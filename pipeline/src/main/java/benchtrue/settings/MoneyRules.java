package benchtrue.settings;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;

/**
 * How the shop reckons its costs (methods, section 7).
 *
 * @param overtimePremium what an overtime hour costs above the wage, as a share of it; 0 where none is paid
 * @param overtimeAfterSeconds logged time of a technician in a week from Monday, beyond which the premium is paid
 * @param targetMargin share of revenue that should be left after all costs
 * @param leastLoggedShare share of paid time in the log below which the review opens with it
 * @param overheadRate overhead that a bench hour carries, as the shop set it, or {@link Absent#AMOUNT}: then last year's
 */
public record MoneyRules(
        double overtimePremium,
        long overtimeAfterSeconds,
        double targetMargin,
        double leastLoggedShare,
        long overheadRate) {
    /** The rules of a shop that set none. */
    public static final MoneyRules DEFAULTS = new MoneyRules(0, 40 * Hours.SECONDS, 0.20, 0.80, Absent.AMOUNT);
}
