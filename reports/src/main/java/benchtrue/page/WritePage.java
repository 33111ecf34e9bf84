package benchtrue.page;

import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import benchtrue.settings.Disclosure;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes {@code review.html} and, where the settings ask for it, {@code review-wall.html}. */
public final class WritePage implements Report {
    @Override
    public void write(Review review, Path folder) throws IOException {
        StringOutput page = new StringOutput();
        JtereviewGenerated.render(html(page), null, new TellReview(review).tell(), Style.sheet());
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
}
