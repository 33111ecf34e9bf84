package benchtrue.reconcile;

import benchtrue.settings.FamilyPolicy;
import benchtrue.settings.Policy;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.Refusal;
import benchtrue.shop.Spelling;
import java.util.TreeSet;

/** Holds the families that have a policy of their own against those of the price book. */
final class KnownFamilies {
    private KnownFamilies() {}

    /**
     * Does nothing where every family stands in some version of the price book: one that fell out of use stops no night.
     *
     * @throws Refusal naming the line, where a family stands in none
     */
    static void check(Policy policy, PriceBooks books) {
        TreeSet<String> known = new TreeSet<>();
        books.versions().forEach(version -> version.types().values().forEach(type -> known.add(type.family())));
        for (FamilyPolicy family : policy.families()) {
            if (!known.contains(family.family())) {
                String advice = Spelling.nearest(family.family(), known)
                        .map(near -> "Did you mean \"" + near + "\"? ")
                        .orElse("");
                throw new Refusal(
                        ExitCode.SETTINGS,
                        ReadSettings.FILE + ", line " + family.line() + ": found [policy.family." + family.family()
                                + "], a family that no repair of the price book has. " + advice + "Expected one of: "
                                + String.join(", ", known) + ".");
            }
        }
    }
}
