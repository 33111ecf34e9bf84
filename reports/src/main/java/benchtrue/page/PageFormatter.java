package benchtrue.page;

import benchtrue.format.Figures;
import benchtrue.nightly.Review;
import benchtrue.shop.Absent;
import java.util.Locale;

/** A review and how its figures and repairs are told. */
final class PageFormatter {
    private final Review review;
    private final Figures figures;

    PageFormatter(Review review) {
        this.review = review;
        figures = review.settings().figures();
    }

    Review review() {
        return review;
    }

    Figures figures() {
        return figures;
    }

    /** Returns what the bench calls a repair type. */
    String label(int repairType) {
        return review.ledger().title(repairType);
    }

    String key(int repairType) {
        return review.ledger().repairTypes().name(repairType);
    }

    /** Returns words with a capital at their head. */
    static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** Returns a link to the repair type's row of figures. */
    static String href(int repairType) {
        return "#" + rowId(repairType);
    }

    static String rowId(int repairType) {
        return "repair-" + (repairType + 1);
    }

    static String jobsId(int repairType) {
        return "jobs-of-" + (repairType + 1);
    }

    /** Returns a count with its noun. */
    String count(long count, String one, String many) {
        return figures.count(count) + " " + (count == 1 ? one : many);
    }

    /** Returns money a year as a range, or as one figure where there are too few jobs for a range. */
    String yearly(long amount, long lower, long upper) {
        if (!Absent.has(amount)) {
            return Figures.UNKNOWN;
        }
        return Absent.has(lower) && Absent.has(upper) ? figures.moneyRange(lower, upper) : figures.aboutMoney(amount);
    }
}
