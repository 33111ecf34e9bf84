package benchtrue.page;

import benchtrue.charts.Picture;
import benchtrue.charts.Pictures;
import benchtrue.nightly.Review;
import benchtrue.revision.ProposedChange;
import java.util.Comparator;
import java.util.List;

/** Puts a review into the words of the copy for the wall. */
final class TellWall {
    private final Told told;

    TellWall(Review review) {
        told = new Told(review);
    }

    WallView tell() {
        List<Picture> pictures = Pictures.forTheWall(told.review());
        return new WallView(
                "At the bench, " + told.figures().day(told.review().ledger().asOf()),
                pictures.get(0).title() + ".",
                changes(),
                pictures.stream().map(TellReview::illustration).toList(),
                Cautions.of(told));
    }

    private List<WallView.Change> changes() {
        return told.review().revision().changes().stream()
                .filter(change -> change.proposedSeconds() != change.bookSeconds())
                .sorted(Comparator.comparing((ProposedChange change) -> told.label(change.repairType()))
                        .thenComparingInt(ProposedChange::repairType))
                .map(change -> new WallView.Change(
                        told.label(change.repairType()),
                        told.figures().quote(change.bookSeconds()) + " \u2192 "
                                + told.figures().quote(change.proposedSeconds())))
                .toList();
    }
}
