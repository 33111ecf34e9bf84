package benchtrue.command;

import benchtrue.charts.DrawCharts;
import benchtrue.nightly.Night;
import benchtrue.nightly.Progress;
import benchtrue.nightly.Published;
import benchtrue.nightly.Report;
import benchtrue.page.WritePage;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.workbook.WriteWorkbook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The main job. */
@Command(
        name = "nightly",
        description = {
            "Reads a shop's exports, puts every hour and part on the repair it belongs to, tells under-quoted repairs"
                    + " from noise, and publishes the review under DIR/out/<date>, whole or not at all."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class NightlyCommand implements Callable<Integer> {
    private static final List<Report> REPORTS = List.of(new DrawCharts(), new WriteWorkbook(), new WritePage());

    @Option(names = "--shop", paramLabel = "DIR", required = true, description = "The shop's folder.")
    private Path shop;

    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            description =
                    "The last day that counts, such as 2026-10-31; today in the shop's time zone where not given.")
    private LocalDate asOf;

    @Mixin
    private Loudness loudness;

    private final Console console;

    NightlyCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        ShowProgress shown = new ShowProgress(console.err(), console.watched());
        Progress progress = loudness.quiet() ? (number, of, what) -> {} : shown;
        try {
            Settings settings = settings();
            LocalDate day = asOf != null ? asOf : LocalDate.now(console.clock().withZone(settings.zone()));
            Published published = new Night(REPORTS, progress, console.clock(), Program.version())
                    .run(shop, settings, (int) day.toEpochDay());
            shown.ends();
            if (!loudness.quiet()) {
                new Summary(published).lines().forEach(console.out()::println);
            }
            return ExitCode.PUBLISHED.number();
        } finally {
            shown.ends();
        }
    }

    private Settings settings() {
        if (!Files.isDirectory(shop)) {
            throw new Refusal(
                    ExitCode.MISSING,
                    shop + ": found no such folder, expected the shop's folder. Name it with --shop.");
        }
        return new ReadSettings().read(shop);
    }
}
