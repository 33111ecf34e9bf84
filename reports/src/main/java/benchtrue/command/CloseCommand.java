package benchtrue.command;

import benchtrue.nightly.CloseMonth;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Seals a month. */
@Command(
        name = "close",
        description =
                "Seals a month's figures in DIR/close. Later corrections rewrite nothing: each night's review shows"
                        + " them as restatements, with their cause.",
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class CloseCommand implements Callable<Integer> {
    @Mixin
    private ShopOption shop;

    @Option(names = "--month", paramLabel = "MONTH", required = true, description = "The month, such as 2026-09.")
    private YearMonth month;

    @Mixin
    private Loudness loudness;

    private final Console console;

    CloseCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Settings settings = shop.settings();
        Path file = new CloseMonth()
                .close(
                        shop.folder(),
                        settings,
                        shop.asOf(settings, console),
                        month.getYear() * 12 + month.getMonthValue() - 1);
        if (!loudness.quiet()) {
            console.out().println("Sealed " + month + ": " + file);
        }
        return ExitCode.PUBLISHED.number();
    }
}
