package benchtrue.command;

import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Which shop, and up to which day; the same options on every command that reads a shop folder. */
final class ShopOption {
    @Option(names = "--shop", paramLabel = "DIR", required = true, description = "The shop's folder.")
    private Path shop;

    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            description =
                    "The last day that counts, such as 2026-10-31; today in the shop's time zone where not given.")
    private LocalDate asOf;

    @Option(
            names = "--as-of-future",
            description = "Allows a last day that has not come, later than tomorrow; its result never is out/latest.")
    private boolean future;

    Path folder() {
        return shop;
    }

    Settings settings() {
        if (!Files.isDirectory(shop)) {
            throw new Refusal(
                    ExitCode.MISSING,
                    shop + ": found no such folder, expected the shop's folder. Name it with --shop.");
        }
        return new ReadSettings().read(shop);
    }

    /** Returns the day that was named; empty where none was. */
    Optional<LocalDate> day() {
        return Optional.ofNullable(asOf);
    }

    /** Returns the last day that counts, in days since 1970-01-01. */
    int asOf(Settings settings, Console console) {
        LocalDate today = LocalDate.now(console.clock().withZone(settings.zone()));
        LocalDate day = asOf != null ? asOf : today;
        if (day.isAfter(today.plusDays(1)) && !future) {
            throw new Refusal(
                    ExitCode.USAGE,
                    "--as-of: found " + day + ", but today is " + today + ". Correct the day, or the machine's clock."
                            + " If you mean a day that has not come, add --as-of-future.");
        }
        return (int) day.toEpochDay();
    }
}
