package benchtrue.revision;

import benchtrue.settings.Policy;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import benchtrue.shop.RepairType;

/** The price that goes with proposed hours: hours x shop rate, rounded, never below the least charge. */
final class Price {
    private Price() {}

    /** Returns today's price where the hours stay; longer hours never cost less than today, shorter never more. */
    static long of(RepairType type, long seconds, long shopRate, Policy policy) {
        if (seconds == type.bookSeconds()) {
            return type.bookLabour();
        }
        long price = rounded(Money.perHour(shopRate, seconds), policy.priceRounding());
        long sameWay =
                seconds > type.bookSeconds() ? Math.max(price, type.bookLabour()) : Math.min(price, type.bookLabour());
        return Math.max(sameWay, Absent.firstOf(type.leastLabour(), 0));
    }

    /** Returns the nearest multiple; half-way goes up. */
    static long rounded(long price, long multiple) {
        return Math.floorDiv(price + multiple / 2, multiple) * multiple;
    }
}
