package benchtrue.nightly;

import benchtrue.format.Figures;
import benchtrue.revision.ComingBook;
import benchtrue.shop.Absent;
import benchtrue.shop.PriceBook;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What was decided, withdrawn, came into force and will within a month, in at most four lines. */
final class BookNews {
    private static final int MOST = 4;

    private final Review review;
    private final DecisionFiles files;
    private final Figures figures;

    BookNews(Review review, DecisionFiles files) {
        this.review = review;
        this.files = files;
        figures = review.settings().figures();
    }

    /**
     * Returns what is new since an earlier run.
     *
     * @param day its as-of date
     * @param known names of the files that it read
     */
    List<String> since(int day, Set<String> known) {
        int asOf = review.ledger().asOf();
        List<String> lines = new ArrayList<>();
        files.withdrawals().stream()
                .filter(withdrawal -> isNew(withdrawal.file(), known) && withdrawal.withdrawnOn() <= asOf)
                .forEach(withdrawal -> lines.add("Withdrawn on " + figures.day(withdrawal.withdrawnOn())
                        + ": the price book from " + figures.day(withdrawal.effective()) + "."));
        files.sittings().stream()
                .filter(sitting -> isNew(sitting.file(), known) && sitting.decidedOn() <= asOf)
                .forEach(sitting -> lines.add(decided(sitting)));
        for (PriceBook version : review.ledger().books().versions()) {
            if (version.effective() > day && version.effective() <= asOf) {
                lines.add("In force since " + figures.day(version.effective()) + ": a new price book.");
            }
        }
        return lines;
    }

    private static boolean isNew(String file, Set<String> known) {
        return !known.contains(DecisionFiles.FOLDER + "/" + file);
    }

    private String decided(Sitting sitting) {
        return "Decided on " + figures.day(sitting.decidedOn()) + " and adopted: "
                + figures.count(sitting.rows().size(), "repair", "repairs")
                + (sitting.surcharges() == 0
                        ? ""
                        : " and "
                                + figures.count(
                                        sitting.surcharges(), "line with a condition", "lines with a condition"))
                + " of the price book from "
                + figures.day(sitting.effective())
                + (files.standing().contains(sitting) ? "." : ", withdrawn since.");
    }

    /** Returns which books come into force within a month. */
    List<String> soon() {
        LocalDate asOf = LocalDate.ofEpochDay(review.ledger().asOf());
        int last = (int) asOf.plusMonths(1).toEpochDay();
        return review.revision().coming().stream()
                .filter(coming -> coming.book().effective() <= last)
                .map(this::soon)
                .toList();
    }

    private String soon(ComingBook coming) {
        return "In force from " + figures.day(coming.book().effective()) + ": a price book"
                + (Absent.has(coming.decidedOn()) ? " decided on " + figures.day(coming.decidedOn()) : "") + ".";
    }

    /** Returns no more lines than a digest has room for. */
    static List<String> bounded(List<String> lines) {
        if (lines.size() <= MOST) {
            return lines;
        }
        List<String> first = new ArrayList<>(lines.subList(0, MOST - 1));
        first.add("And " + (lines.size() - first.size()) + " more of the price book, see the folder decisions.");
        return first;
    }
}
