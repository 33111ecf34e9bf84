package benchtrue.costing;

/**
 * Work or money given away in the 365 days up to the as-of date.
 *
 * @param what what was given, in plain words
 * @param toWhom who got it: the contract's word for a payer
 * @param times how often
 * @param seconds bench time, 0 where it is a discount alone
 * @param worth what it would have brought: the quote, else bench time at the posted rate
 */
public record Gift(String what, String toWhom, int times, long seconds, long worth) {
    static final String UNQUOTED = "work that was never quoted";
    static final String GOODWILL = "goodwill";
    static final String SETTLING = "free adjustment";
    static final String PUTTING_RIGHT = "putting earlier work right";
    static final String BELOW_THE_BOOK = "trade work below the book";
    static final String DISCOUNT = "billed below the quote";

    Gift plus(Gift other) {
        return new Gift(what, toWhom, times + other.times, seconds + other.seconds, worth + other.worth);
    }
}
