package benchtrue.page;

import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;

/** Writes {@code price-list.html}, {@code quote-table.html} and {@code price-explained.html}, each to be printed. */
public final class WriteBookPages implements Report {
    @Override
    public void write(Review review, Path folder) throws IOException {
        FormatBooks told = new FormatBooks(review);
        String style = Style.sheet();
        save(folder.resolve("price-list.html"), page -> JtepricesGenerated.render(page, null, told.prices(), style));
        save(folder.resolve("quote-table.html"), page -> JtequotesGenerated.render(page, null, told.quotes(), style));
        save(
                folder.resolve("price-explained.html"),
                page -> JteexplainedGenerated.render(page, null, told.explained(), style));
    }

    static void save(Path file, Consumer<OwaspHtmlTemplateOutput> page) throws IOException {
        StringOutput text = new StringOutput();
        page.accept(new OwaspHtmlTemplateOutput(text));
        Files.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
    }
}
