package benchtrue.command;

import benchtrue.answers.PriceList;
import benchtrue.format.Figures;
import benchtrue.nightly.AdoptDecisions;
import benchtrue.nightly.Adoption;
import benchtrue.settings.Settings;
import benchtrue.workbook.draft.ReadDecisions;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes the owner's decisions the next price book. */
@Command(
        name = "adopt",
        description =
                "Reads your decisions from the drafted workbook, writes the next price book and the record of what was"
                        + " decided, prints the price list, and writes what is handed out: price list, quote table and the"
                        + " book for your own systems. A price book in force is never rewritten.",
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class AdoptCommand extends ShopCommand {
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
            names = "--effective-past",
            description =
                    "The price book was used from that day already, although it is not after today; needs --reason.")
    private boolean past;

    @Option(
            names = "--reason",
            paramLabel = "TEXT",
            defaultValue = "",
            description = "Why a price book is in force from a day that is past, for the record.")
    private String reason;

    @Option(
            names = "--confirm",
            description = "Adopt also where a later price book has other hours for what is decided now.")
    private boolean confirmed;

    @Option(
            names = "--by",
            paramLabel = "WHO",
            defaultValue = "owner",
            description = "Who decided, for the record; \"owner\" where not given.")
    private String by;

    AdoptCommand(Console console) {
        super(console);
    }

    @Override
    void run() {
        Settings settings = shop.settings();
        LocalDate decidedOn = LocalDate.ofEpochDay(shop.asOf(settings, console));
        AdoptDecisions.Adopted adopted = new AdoptDecisions()
                .adopt(
                        shop.folder(),
                        settings,
                        new ReadDecisions().read(decisions),
                        new Adoption(
                                effective,
                                decidedOn,
                                by,
                                past ? Optional.of(reason) : Optional.empty(),
                                confirmed ? Adoption.LaterBook.OVERRIDES : Adoption.LaterBook.ASK));
        table(adopted, settings.figures()).forEach(this::say);
        handOut(settings);
    }

    /** The price list as it is pinned up: one row a repair type, by family, changed ones marked. */
    private List<String> table(AdoptDecisions.Adopted adopted, Figures figures) {
        List<String> lines = new ArrayList<>();
        lines.add("Price book from " + figures.day((int) effective.toEpochDay()) + " (* changed):");
        PriceList.between(adopted.next(), Optional.of(adopted.before())).families().stream()
                .flatMap(family -> family.rows().stream())
                .forEach(row -> lines.add(String.format(
                        java.util.Locale.ROOT,
                        "%s %-40s %10s %12s",
                        row.change() == PriceList.Change.SAME ? " " : "*",
                        row.repair().title(),
                        figures.quote(row.repair().bookSeconds()),
                        figures.price(row.repair().bookLabour()))));
        adopted.overridden().forEach(row -> lines.add("Later: " + row));
        lines.add("Written: " + adopted.file() + ". Quotes already accepted stand.");
        return lines;
    }
}
