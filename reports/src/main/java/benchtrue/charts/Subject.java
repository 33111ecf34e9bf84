package benchtrue.charts;

import benchtrue.findings.RepairFinding;
import benchtrue.nightly.Review;
import benchtrue.shop.Figures;
import benchtrue.shop.RepairType;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What every picture of a review needs: the review, how its figures are written, what its repairs are called. */
final class Subject {
    private final Review review;
    private final Figures figures;
    private final Map<Integer, RepairFinding> findings = new HashMap<>();

    Subject(Review review) {
        this.review = review;
        figures = Figures.of(review.settings().locale(), review.settings().currency());
        review.findings().repairs().forEach(finding -> findings.put(finding.repairType(), finding));
    }

    Review review() {
        return review;
    }

    Figures figures() {
        return figures;
    }

    /** Returns a repair type as a book has it; empty where none has it. */
    Optional<RepairType> book(int repairType) {
        String key = review.ledger().repairTypes().name(repairType);
        return review.ledger().books().type(key, review.ledger().asOf());
    }

    /** Returns what the bench calls a repair type; where our letters can't write that, its key, else its number. */
    String label(int repairType) {
        String key = review.ledger().repairTypes().name(repairType);
        String title = book(repairType).map(RepairType::title).orElse("");
        if (!title.isBlank() && Face.shows(title)) {
            return title;
        }
        return Face.shows(key) ? key : "repair no. " + (repairType + 1);
    }

    /** Returns a count with its noun. */
    String count(long count, String one, String many) {
        return figures.count(count) + "\u00a0" + (count == 1 ? one : many);
    }
}
