package benchtrue.nightly;

import benchtrue.shop.PriceBook;
import benchtrue.tables.EarlierResult;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tells how long a drafted revision has been waiting: the first result that proposed changes since the owner last decided. */
final class PendingDraft {
    private PendingDraft() {}

    /** Returns the draft that waits for more than a month on the as-of date; empty where none does. */
    static Optional<PublishedResults.Result> of(PublishedResults shelf, int lastDecided, Review review)
            throws IOException {
        LocalDate asOf = LocalDate.ofEpochDay(review.ledger().asOf());
        LocalDate settled = LocalDate.ofEpochDay(Math.max(lastDecided, newestBook(review)));
        LocalDate monthAgo = asOf.minusMonths(1);
        if (!settled.isBefore(monthAgo) || nothingProposed(review)) {
            return Optional.empty();
        }
        for (Map.Entry<LocalDate, Path> result :
                shelf.results().subMap(settled, false, monthAgo, false).entrySet()) {
            if (proposes(result.getValue())) {
                return Optional.of(new PublishedResults.Result(result.getKey(), result.getValue()));
            }
        }
        return Optional.empty();
    }

    private static boolean nothingProposed(Review review) {
        return review.revision().changes().stream()
                .allMatch(change -> change.proposedSeconds() == change.bookSeconds());
    }

    /** A book written by hand settles a draft as well as an adopted one. */
    private static int newestBook(Review review) {
        List<PriceBook> versions = review.ledger().books().versions();
        return versions.stream()
                .mapToInt(PriceBook::effective)
                .filter(effective -> effective <= review.ledger().asOf())
                .max()
                .orElse(versions.get(0).effective());
    }

    /** A damaged earlier result tells nothing, which is no reason to go without tonight's. */
    private static boolean proposes(Path folder) {
        try {
            return Files.isReadable(folder.resolve(WriteTables.REVISION)) && new EarlierResult(folder).changes() > 0;
        } catch (IOException damaged) {
            return false;
        }
    }
}
