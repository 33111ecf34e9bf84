package benchtrue.page;

import benchtrue.breakdown.Breakdown;
import benchtrue.charts.Picture;
import benchtrue.charts.Pictures;
import benchtrue.format.Figures;
import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import benchtrue.revision.ProposedChange;
import benchtrue.settings.Disclosure;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Writes {@code review.html} and, where the settings ask for it, {@code review-wall.html}. */
public final class WritePage implements Report {
    @Override
    public void write(Review review, Path folder) throws IOException {
        WriteBookPages.save(
                folder.resolve("review.html"),
                page -> JtereviewGenerated.render(page, null, new FormatReview(review).tell(), Style.sheet()));
        if (review.settings().wallCopy() == Disclosure.SHOWN) {
            WriteBookPages.save(
                    folder.resolve("review-wall.html"),
                    page -> JtewallGenerated.render(page, null, new TellWall(review).tell(), Style.sheet()));
        }
    }

    /** Writes answers to a question of the owner's own as a page that needs nothing else. */
    public static void answers(List<Breakdown> answers, Figures figures, Path file) throws IOException {
        FormatBreakdowns format = new FormatBreakdowns(figures);
        List<ReviewView.Answered> told = new ArrayList<>();
        for (Breakdown answer : answers) {
            told.add(format.answered(
                    answer,
                    String.valueOf(told.size() + 1),
                    told.isEmpty() ? Disclosure.SHOWN : Disclosure.HIDDEN,
                    ""));
        }
        WriteBookPages.save(
                file,
                page -> JtequestionGenerated.render(page, null, answers.get(0).title(), told, Style.sheet()));
    }

    /** Puts a review into the words of the copy for the wall. */
    static final class TellWall {
        private final PageFormatter told;

        TellWall(Review review) {
            told = new PageFormatter(review);
        }

        WallView tell() {
            List<Picture> pictures = Pictures.forTheWall(told.review());
            return new WallView(
                    "At the bench, " + told.figures().day(told.review().ledger().asOf()),
                    pictures.get(0).title() + ".",
                    changes(),
                    pictures.stream().map(FormatReview::illustration).toList(),
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
}
