package benchtrue.page;

import benchtrue.charts.Picture;
import benchtrue.charts.Pictures;
import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import benchtrue.revision.ProposedChange;
import benchtrue.settings.Disclosure;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;

/** Writes {@code review.html} and, where the settings ask for it, {@code review-wall.html}. */
public final class WritePage implements Report {
    @Override
    public void write(Review review, Path folder) throws IOException {
        StringOutput page = new StringOutput();
        JtereviewGenerated.render(html(page), null, new FormatReview(review).tell(), Style.sheet());
        save(page, folder.resolve("review.html"));
        if (review.settings().wallCopy() == Disclosure.SHOWN) {
            StringOutput wall = new StringOutput();
            JtewallGenerated.render(html(wall), null, new TellWall(review).tell(), Style.sheet());
            save(wall, folder.resolve("review-wall.html"));
        }
    }

    private static OwaspHtmlTemplateOutput html(StringOutput text) {
        return new OwaspHtmlTemplateOutput(text);
    }

    private static void save(StringOutput text, Path file) throws IOException {
        Files.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
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
