package benchtrue.nightly;

import benchtrue.format.Figures;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.RepairType;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Says why a repair without new work has another verdict: another book, a setting, corrected hours, or all repairs together. */
final class WhyVerdictMoved {
    private final Review review;
    private final Figures figures;
    private final int earlierDay;
    private final List<String> settings;

    WhyVerdictMoved(Review review, int earlierDay, Map<String, String> earlier) throws IOException {
        this.review = review;
        this.figures = review.settings().figures();
        this.earlierDay = earlierDay;
        Map<String, String> now = EarlierRun.written(review.settings().byKey());
        settings = now.keySet().stream()
                .filter(key -> earlier.containsKey(key) && !now.get(key).equals(earlier.get(key)))
                .sorted()
                .toList();
    }

    /**
     * Returns why, in words.
     *
     * @param repairType key of the repair
     * @param sameHours whether its jobs took what they took then
     */
    String words(String repairType, boolean sameHours) {
        Ledger ledger = review.ledger();
        Optional<RepairType> then = ledger.books().type(repairType, earlierDay);
        Optional<RepairType> now = ledger.books().type(repairType, ledger.asOf());
        if (then.isPresent()
                && now.isPresent()
                && then.get().bookSeconds() != now.get().bookSeconds()) {
            return "no more jobs than then, but another book: "
                    + figures.quote(now.get().bookSeconds()) + ", was "
                    + figures.quote(then.get().bookSeconds());
        }
        if (!settings.isEmpty()) {
            return "no more jobs than then, but other settings: " + String.join(", ", settings);
        }
        return sameHours
                ? "no more jobs than then; what changed is how sure one can be with all repairs looked at together"
                : "no more jobs than then, but its hours or quotes were corrected";
    }
}
