package benchtrue.charts;

import benchtrue.charts.drawing.ChartFont;
import benchtrue.findings.Slowing;
import benchtrue.format.Figures;
import benchtrue.nightly.Review;
import benchtrue.shop.RepairType;
import java.util.Optional;

/** What every picture of a review needs: the review, how its figures are written, what its repairs are called. */
final class ChartContext {
    private final Review review;
    private final Figures figures;

    private final Audience audience;

    /** Who looks at the pictures. */
    enum Audience {
        /** Sees everything. */
        OWNER,
        /** Sees hours, no money. */
        BENCH
    }

    ChartContext(Review review, Audience audience) {
        this.review = review;
        this.audience = audience;
        figures = review.settings().figures();
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
        if (!title.isBlank() && ChartFont.shows(title)) {
            return title;
        }
        return ChartFont.shows(key) ? key : "repair no. " + (repairType + 1);
    }

    /** Returns that a repair type got slower, where that is more than a first signal. */
    Optional<Slowing> slowing(int repairType) {
        return review.findings().drift().slowings().stream()
                .filter(slowing -> slowing.repairType() == repairType)
                .filter(slowing -> slowing.standing() == Slowing.Standing.CONFIRMED)
                .findFirst();
    }

    /** Returns whether money may be shown. */
    boolean showsMoney() {
        return audience == Audience.OWNER;
    }

    /** Returns the currency's code; other words where the shop named none. */
    String currency(String otherwise) {
        String code = review.settings().currency();
        return code.equals("XXX") ? otherwise : code;
    }

    /** Returns a count with its noun. */
    String count(long count, String one, String many) {
        return figures.count(count) + "\u00a0" + (count == 1 ? one : many);
    }
}
