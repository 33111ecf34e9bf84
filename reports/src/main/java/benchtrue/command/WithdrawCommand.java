package benchtrue.command;

import benchtrue.nightly.Withdraw;
import benchtrue.settings.Settings;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Takes an adopted price book back before its first day. */
@Command(
        name = "withdraw",
        description =
                "Takes a price book back that was adopted for a day to come. What was decided, and that it was withdrawn,"
                        + " stay on record; nothing is erased. A book in force is corrected by a new one.",
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class WithdrawCommand extends ShopCommand {
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

    WithdrawCommand(Console console) {
        super(console);
    }

    @Override
    void run() {
        Settings settings = shop.settings();
        LocalDate today = LocalDate.ofEpochDay(shop.asOf(settings, console));
        Path kept =
                new Withdraw().withdraw(shop.folder(), settings, new Withdraw.Request(effective, today, by, reason));
        say("Withdrawn: the price book from " + settings.figures().day((int) effective.toEpochDay())
                + ". It is kept in " + kept + ".");
        handOut(settings);
    }
}
