package benchtrue.command;

import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
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

    /** Returns the last day that counts, in days since 1970-01-01. */
    int asOf(Settings settings, Console console) {
        LocalDate day = asOf != null ? asOf : LocalDate.now(console.clock().withZone(settings.zone()));
        return (int) day.toEpochDay();
    }
}
