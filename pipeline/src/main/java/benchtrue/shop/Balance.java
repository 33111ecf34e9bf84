package benchtrue.shop;

import java.util.List;

/**
 * What was read, and where all of it went.
 *
 * @param name what is balanced, such as {@code hours} or {@code rows of time-log.csv}
 * @param unit {@code seconds}, {@code ten-thousandths} or {@code rows}
 * @param terms where it went
 */
public record Balance(String name, String unit, long read, List<Term> terms) {
    /** The place that the next stage takes apart. */
    public static final String IN_LEDGER = "in the ledger";

    public Balance {
        terms = List.copyOf(terms);
    }

    /** Returns whether the terms add up to what was read, exactly. */
    public boolean holds() {
        return read == terms.stream().mapToLong(Term::amount).reduce(0, Math::addExact);
    }

    /**
     * One place where some of it went.
     *
     * @param name the place in plain words
     * @param amount in the balance's unit
     */
    public record Term(String name, long amount) {}
}
