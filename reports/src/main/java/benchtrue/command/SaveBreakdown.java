package benchtrue.command;

import benchtrue.breakdown.Breakdown;
import benchtrue.breakdown.BreakdownTable;
import benchtrue.charts.BreakdownPicture;
import benchtrue.page.WritePage;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.workbook.review.BreakdownSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Writes answers into the file that the owner names, in the form that its ending tells. */
final class SaveBreakdown {
    private final Settings settings;
    private final int asOf;

    SaveBreakdown(Settings settings, int asOf) {
        this.settings = settings;
        this.asOf = asOf;
    }

    /** Writes the answers; a form that holds one table takes the last, which is the jobs where they were asked for. */
    void save(List<Breakdown> answers, Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        Breakdown last = answers.get(answers.size() - 1);
        try {
            if (name.endsWith(".csv")) {
                BreakdownTable.of(last, "breakdown").writeTo(BreakdownTable.rows(last), file);
            } else if (name.endsWith(".xlsx")) {
                BreakdownSheet.write(answers, settings.figures(), asOf, file);
            } else if (name.endsWith(".html")) {
                WritePage.answers(answers, settings.figures(), file);
            } else if (name.endsWith(".svg")) {
                Files.write(file, BreakdownPicture.svg(answers.get(0), settings.figures()));
            } else {
                throw new Refusal(
                        ExitCode.USAGE,
                        "--out: found " + file + ", expected a name that ends with .csv, .xlsx, .html or .svg.");
            }
        } catch (IOException e) {
            throw new Refusal(ExitCode.CANNOT_WRITE, file + " can't be written: " + e.getMessage() + ".", e);
        }
    }
}
