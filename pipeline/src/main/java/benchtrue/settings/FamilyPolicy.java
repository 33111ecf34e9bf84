package benchtrue.settings;

import benchtrue.format.Words;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How one family of repairs is proposed and priced where that differs from the rest of the shop; what is empty or
 * {@link Absent#AMOUNT} follows the shop.
 *
 * @param family as the price book has it
 * @param rule which figure of the predictive distribution is taken
 * @param coverage share of jobs that should fit the quote
 * @param rate price of a bench hour, in ten-thousandths
 * @param priceRounding prices are rounded to a multiple of this, in ten-thousandths
 * @param line where its section stands in {@code shop.toml}
 */
public record FamilyPolicy(
        String family, Optional<Policy.Rule> rule, OptionalDouble coverage, long rate, long priceRounding, int line) {

    /** Returns the shop's policy with what this family has of its own. */
    Policy within(Policy shop) {
        return new Policy(
                rule.orElse(shop.rule()),
                coverage.orElse(shop.coverage()),
                shop.largestStep(),
                Absent.firstOf(priceRounding, shop.priceRounding()),
                shop.fallBack(),
                shop.families());
    }

    /** Returns what was set, by its key. */
    SortedMap<String, Object> byKey() {
        SortedMap<String, Object> values = new TreeMap<>();
        rule.ifPresent(found -> values.put(SettingsKey.FAMILY_RULE.within(), Words.of(found)));
        coverage.ifPresent(found -> values.put(SettingsKey.FAMILY_COVERAGE.within(), found));
        if (Absent.has(rate)) {
            values.put(SettingsKey.FAMILY_RATE.within(), Money.text(rate));
        }
        if (Absent.has(priceRounding)) {
            values.put(SettingsKey.FAMILY_PRICE_ROUNDING.within(), Money.text(priceRounding));
        }
        return values;
    }
}
