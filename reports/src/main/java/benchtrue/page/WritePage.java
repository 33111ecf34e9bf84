package benchtrue.page;

import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes {@code review.html}. */
public final class WritePage implements Report {
    @Override
    public void write(Review review, Path folder) throws IOException {
        StringOutput text = new StringOutput();
        JtereviewGenerated.render(
                new OwaspHtmlTemplateOutput(text), null, new TellReview(review).tell(), Style.sheet());
        Files.write(folder.resolve("review.html"), text.toString().getBytes(StandardCharsets.UTF_8));
    }
}
