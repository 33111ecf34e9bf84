package benchtrue.revision;

import benchtrue.settings.Policy;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import benchtrue.shop.RepairType;

/** The price that goes with proposed hours: hours x rate, rounded, never below the least charge. */
final class Price {
    private Price() {}

    /**
     * Returns today's price where the hours stay; longer hours never cost less than today, shorter never more.
     *
     * @param shopRate price of a bench hour where the repair's family has none of its own
     */
    static long of(RepairType type, long seconds, long shopRate, Policy policy) {
        if (seconds == type.bookSeconds()) {
            return type.bookLabour();
        }
        long price = ofHours(type.family(), seconds, shopRate, policy);
        long sameWay =
                seconds > type.bookSeconds() ? Math.max(price, type.bookLabour()) : Math.min(price, type.bookLabour());
        return Math.max(sameWay, Absent.firstOf(type.leastLabour(), 0));
    }

    /** Returns what hours of a family's work cost, by its rate and rounding. */
    static long ofHours(String family, long seconds, long shopRate, Policy policy) {
        return rounded(
                Money.perHour(policy.rate(family, shopRate), seconds),
                policy.of(family).priceRounding());
    }

    /** Returns the nearest multiple; half-way goes up. */
    private static long rounded(long price, long multiple) {
        return Math.floorDiv(price + multiple / 2, multiple) * multiple;
    }
}
