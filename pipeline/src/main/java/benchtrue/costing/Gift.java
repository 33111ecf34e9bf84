package benchtrue.costing;

import java.util.Comparator;
import java.util.List;

/**
 * Work or money given away in the 365 days up to the as-of date.
 *
 * @param what what was given, in plain words
 * @param toWhom who got it: the contract's word for a payer
 * @param times how often
 * @param seconds bench time, 0 where it is a discount alone
 * @param worth what it would have brought: the quote, else bench time at the posted rate
 * @param rows each time, the largest worth first
 */
public record Gift(String what, String toWhom, int times, long seconds, long worth, List<Given> rows) {
    static final String UNQUOTED = "work that was never quoted";
    static final String GOODWILL = "goodwill";
    static final String SETTLING = "free adjustment";
    static final String PUTTING_RIGHT = "putting earlier work right";
    static final String BELOW_THE_BOOK = "trade work below the book";
    static final String DISCOUNT = "billed below the quote";

    public Gift {
        rows = List.copyOf(rows);
    }

    /** Returns the sum of what was given to one payer. */
    static Gift of(String what, String toWhom, List<Given> rows) {
        return new Gift(
                what,
                toWhom,
                rows.size(),
                rows.stream().mapToLong(Given::seconds).reduce(0, Math::addExact),
                rows.stream().mapToLong(Given::worth).reduce(0, Math::addExact),
                rows.stream()
                        .sorted(Comparator.comparingLong(Given::worth)
                                .reversed()
                                .thenComparingInt(Given::ticket))
                        .toList());
    }
}
