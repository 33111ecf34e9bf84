package benchtrue.settings;

import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import java.util.List;
import java.util.Optional;

/**
 * How hours are proposed (methods, section 8).
 *
 * @param rule which figure of the predictive distribution is taken
 * @param coverage share of jobs that should fit the quote
 * @param largestStep largest change of a repair type's hours in one revision, as a share
 * @param priceRounding prices are rounded to a multiple of this, in ten-thousandths
 * @param fallBack what happens where a simpler method did better on past jobs
 * @param families families of repairs that have values of their own, in the order of their names
 */
public record Policy(
        Rule rule,
        double coverage,
        double largestStep,
        long priceRounding,
        FallBack fallBack,
        List<FamilyPolicy> families) {
    static final double LEAST_COVERAGE = 0.3;
    static final double MOST_COVERAGE = 0.95;
    static final long LEAST_ROUNDING = Money.UNIT / 100;
    static final long MOST_ROUNDING = 1_000 * Money.UNIT;

    /** The policy of a shop that set none. */
    public static final Policy DEFAULTS = new Policy(Rule.LARGER, 0.60, 0.25, 10_000, FallBack.WHEN_BEATEN);

    public Policy {
        families = List.copyOf(families);
    }

    /** Takes the policy of a shop where no family has values of its own. */
    public Policy(Rule rule, double coverage, double largestStep, long priceRounding, FallBack fallBack) {
        this(rule, coverage, largestStep, priceRounding, fallBack, List.of());
    }

    /** Returns the policy of a family of repairs: its own values, the shop's where it has none. */
    public Policy of(String family) {
        return own(family).map(found -> found.within(this)).orElse(this);
    }

    /** Returns what a bench hour of a family's repairs is priced at, where the shop's rate is {@code shopRate}. */
    public long rate(String family, long shopRate) {
        return own(family).map(found -> Absent.firstOf(found.rate(), shopRate)).orElse(shopRate);
    }

    /** Returns whether some family asks for another share of jobs that should fit. */
    public boolean someFamilyHasItsCoverage() {
        return families.stream().anyMatch(family -> family.coverage().isPresent());
    }

    private Optional<FamilyPolicy> own(String family) {
        return families.stream().filter(found -> found.family().equals(family)).findFirst();
    }

    /** Whether the proposal gives way to a simpler method that did better on past jobs. */
    public enum FallBack {
        /** It does. */
        WHEN_BEATEN,
        /** It stands; the review says what did better. */
        NEVER
    }

    /** Which figure is proposed. */
    public enum Rule {
        /** The larger of mean and quantile. */
        LARGER,
        /** The mean alone. */
        BREAK_EVEN,
        /** The quantile alone. */
        COVERAGE
    }
}
