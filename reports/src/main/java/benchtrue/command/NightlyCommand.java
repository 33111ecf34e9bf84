package benchtrue.command;

import benchtrue.charts.DrawCharts;
import benchtrue.nightly.Night;
import benchtrue.nightly.Progress;
import benchtrue.nightly.Published;
import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import benchtrue.page.WriteBookPages;
import benchtrue.page.WritePage;
import benchtrue.settings.Settings;
import benchtrue.workbook.books.WriteBookSheets;
import benchtrue.workbook.draft.WriteRevisionWorkbook;
import benchtrue.workbook.review.WriteBreakdowns;
import benchtrue.workbook.review.WriteWorkbook;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Command;

/** The main job. */
@Command(
        name = "nightly",
        description = {
            "Reads a shop's exports, puts every hour and part on the repair it belongs to, tells under-quoted repairs"
                    + " from noise, and publishes the review under DIR/out/<date>, whole or not at all."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class NightlyCommand extends ShopCommand {
    static final List<Report> HANDED_OUT = List.of(new WriteBookSheets(), new WriteBookPages());

    static final List<Report> REPORTS = Stream.concat(
                    Stream.of(
                            new WriteWorkbook(),
                            new WriteBreakdowns(),
                            new WriteRevisionWorkbook(),
                            new DrawCharts(),
                            new WritePage()),
                    HANDED_OUT.stream())
            .toList();

    NightlyCommand(Console console) {
        super(console);
    }

    @Override
    void run() {
        ShowProgress shown = new ShowProgress(console.terminal(), console.err(), console.watched());
        Progress progress = loudness.quiet() ? new QuietProgress(console.err()) : shown;
        try {
            Settings settings = shop.settings();
            Published published = new Night(REPORTS, progress, console.clock(), Program.version())
                    .run(shop.folder(), settings, shop.asOf(settings, console));
            shown.ends();
            if (!loudness.quiet()) {
                new Summary(published).lines().forEach(console.out()::println);
            }
            if (loudness.quiet()) {
                published.review().answers().notRead().ifPresent(console.err()::println);
            }
            if (loudness.verbose()) {
                details(published).forEach(console.out()::println);
            }
        } finally {
            shown.ends();
        }
    }

    private static List<String> details(Published published) {
        Review review = published.review();
        Account account = new Account(review.settings().figures());
        List<String> lines = new ArrayList<>(account.balances(review.balances()));
        lines.addAll(account.notices(review.notices()));
        lines.add("How long it took:");
        published.took().forEach((stage, took) -> lines.add("  " + stage + ": " + took.toMillis() + " ms"));
        return lines;
    }
}
