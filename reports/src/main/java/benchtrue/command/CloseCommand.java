package benchtrue.command;

import benchtrue.nightly.CloseMonth;
import benchtrue.settings.Settings;
import java.nio.file.Path;
import java.time.YearMonth;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Seals a month. */
@Command(
        name = "close",
        description =
                "Seals a month's figures in DIR/close. Later corrections rewrite nothing: each night's review shows"
                        + " them as restatements, with their cause.",
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class CloseCommand extends ShopCommand {
    @Option(names = "--month", paramLabel = "MONTH", required = true, description = "The month, such as 2026-09.")
    private YearMonth month;

    CloseCommand(Console console) {
        super(console);
    }

    @Override
    void run() {
        Settings settings = shop.settings();
        Path file = new CloseMonth()
                .close(
                        shop.folder(),
                        settings,
                        shop.asOf(settings, console),
                        month.getYear() * 12 + month.getMonthValue() - 1);
        say("Sealed " + month + ": " + file);
    }
}
