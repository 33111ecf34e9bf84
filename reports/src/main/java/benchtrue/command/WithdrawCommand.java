package benchtrue.command;

import benchtrue.nightly.Withdraw;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takes an adopted price book back before its first day. */
@Command(
        name = "withdraw",
        description =
                "Takes a price book back that was adopted for a day to come. What was decided, and that it was withdrawn,"
                        + " stay on record; nothing is erased. A book in force is corrected by a new one.",
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class WithdrawCommand implements Callable<Integer> {
    @Mixin
    private ShopOption shop;

    @Option(
            names = "--effective",
            paramLabel = "DATE",
            required = true,
            description = "The first day that the price book would have had, such as 2027-01-01.")
    private LocalDate effective;

    @Option(names = "--reason", paramLabel = "TEXT", required = true, description = "Why, for the record.")
    private String reason;

    @Option(
            names = "--by",
            paramLabel = "WHO",
            defaultValue = "owner",
            description = "Who decided, for the record; \"owner\" where not given.")
    private String by;

    @Mixin
    private Loudness loudness;

    private final Console console;

    WithdrawCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Settings settings = shop.settings();
        LocalDate today = LocalDate.ofEpochDay(shop.asOf(settings, console));
        Path kept =
                new Withdraw().withdraw(shop.folder(), settings, new Withdraw.Request(effective, today, by, reason));
        if (!loudness.quiet()) {
            console.out()
                    .println("Withdrawn: the price book from "
                            + settings.figures().day((int) effective.toEpochDay()) + ". It is kept in " + kept + ".");
        }
        AdoptCommand.handOut(shop, settings, console, loudness);
        return ExitCode.PUBLISHED.number();
    }
}
