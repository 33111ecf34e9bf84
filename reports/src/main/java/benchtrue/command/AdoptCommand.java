package benchtrue.command;

import benchtrue.format.Figures;
import benchtrue.nightly.AdoptDecisions;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.RepairType;
import benchtrue.workbook.ReadDecisions;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes the owner's decisions the next price book. */
@Command(
        name = "adopt",
        description =
                "Reads your decisions from the drafted workbook, writes the next price book and the record of what was"
                        + " decided, and prints the quote table. Nothing is ever overwritten.",
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class AdoptCommand implements Callable<Integer> {
    @Mixin
    private ShopOption shop;

    @Parameters(
            paramLabel = "DECISIONS.xlsx",
            description = "The workbook price-book-revision.xlsx, with your decisions.")
    private Path decisions;

    @Option(
            names = "--effective",
            paramLabel = "DATE",
            required = true,
            description = "The first day the next price book is in force, such as 2027-01-01.")
    private LocalDate effective;

    @Option(
            names = "--by",
            paramLabel = "WHO",
            defaultValue = "owner",
            description = "Who decided, for the record; \"owner\" where not given.")
    private String by;

    @Mixin
    private Loudness loudness;

    private final Console console;

    AdoptCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Settings settings = shop.settings();
        LocalDate decidedOn = LocalDate.ofEpochDay(shop.asOf(settings, console));
        AdoptDecisions.Adopted adopted = new AdoptDecisions()
                .adopt(shop.folder(), settings, new ReadDecisions().read(decisions), effective, decidedOn, by);
        if (!loudness.quiet()) {
            table(adopted, settings.figures()).forEach(console.out()::println);
        }
        return ExitCode.PUBLISHED.number();
    }

    /** The quote table as it is pinned up: one row a repair type, changed ones marked. */
    private List<String> table(AdoptDecisions.Adopted adopted, Figures figures) {
        List<String> lines = new ArrayList<>();
        lines.add("Price book from " + figures.day((int) effective.toEpochDay()) + " (* changed):");
        for (RepairType type : adopted.next().types().values()) {
            RepairType before = adopted.today().type(type.repairType()).orElseThrow();
            boolean changed = type.bookSeconds() != before.bookSeconds() || type.bookLabour() != before.bookLabour();
            lines.add(String.format(
                    java.util.Locale.ROOT,
                    "%s %-40s %10s %12s",
                    changed ? "*" : " ",
                    type.title(),
                    figures.quote(type.bookSeconds()),
                    figures.price(type.bookLabour())));
        }
        lines.add("Written: " + adopted.file() + ". Quotes already accepted stand.");
        return lines;
    }
}
