package benchtrue.command;

import benchtrue.format.Figures;
import benchtrue.intake.ReadExports;
import benchtrue.intake.columns.InputFile;
import benchtrue.reconcile.Reconcile;
import benchtrue.reconcile.Reconciled;
import benchtrue.settings.Settings;
import benchtrue.settings.ValueMap;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;

/** Reads and reconciles only, and says what is wrong and where. */
@Command(
        name = "check",
        description =
                "Reads a shop's exports, writes nothing, and says what can't be used, what is doubtful, and where.",
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class CheckCommand extends ShopCommand {
    private static final int MOST_ROWS = 5;

    CheckCommand(Console console) {
        super(console);
    }

    @Override
    void run() {
        Settings settings = shop.settings();
        Reconciled rows = new Reconcile()
                .reconcile(new ReadExports().read(shop.folder(), settings), settings, shop.asOf(settings, console));
        if (!loudness.quiet()) {
            Figures figures = Figures.of(settings.locale(), settings.currency());
            Account account = new Account(figures);
            Faults faults = Faults.of(rows.setAside());
            setAside(faults, settings.words(), figures).forEach(console.out()::println);
            account.notices(rows.notices()).forEach(console.out()::println);
            account.balances(rows.balances()).forEach(console.out()::println);
            told(rows.files(), figures).forEach(console.out()::println);
            console.out().println(next(faults));
        }
    }

    private List<String> setAside(Faults faults, List<ValueMap> words, Figures figures) {
        List<String> lines = new ArrayList<>();
        lines.add(
                faults.rows() == 0
                        ? "Every row can be used."
                        : "Can't be used, and set aside: " + figures.count(faults.rows())
                                + " rows. What most have first:");
        for (Faults.Fault fault : faults.worstFirst()) {
            lines.add("  " + fault.table().title() + ", " + fault.column() + ": "
                    + figures.count(fault.examples().size()) + " x expected " + fault.expected());
            List<String> places = fault.examples();
            int shown = loudness.verbose() ? places.size() : Math.min(MOST_ROWS, places.size());
            places.subList(0, shown).forEach(place -> lines.add("      " + place));
            if (shown < places.size()) {
                lines.add("      and " + figures.count(places.size() - shown) + " more; --verbose shows all");
            }
            lines.add("      " + fault.remedy());
            fault.toPaste(words).forEach(line -> lines.add("          " + line));
        }
        return lines;
    }

    /** Says which files are not written as the data contract writes, and how each was read. */
    private List<String> told(List<InputFile> files, Figures figures) {
        List<InputFile> others =
                files.stream().filter(file -> !file.told().isEmpty()).toList();
        if (others.isEmpty()) {
            return List.of();
        }
        if (!loudness.verbose()) {
            return List.of(
                    figures.count(others.size()) + " files are written in a way of their own, which was told from"
                            + " them; --verbose shows how each was read, and why.");
        }
        List<String> lines = new ArrayList<>(List.of("Written in a way of their own, and read so:"));
        for (InputFile file : others) {
            lines.add("  " + file.name());
            file.told().forEach(told -> lines.add("      " + told));
        }
        return lines;
    }

    private String next(Faults faults) {
        if (faults.rows() == 0) {
            return "Next: benchtrue nightly --shop " + shop.folder();
        }
        Faults.Fault first = faults.worstFirst().get(0);
        return "Next: mend " + first.column() + " of " + first.table().title()
                + " first, where the row was written or in the file, and check again. A nightly run works without these"
                + " rows; it writes them to out/latest/set-aside, to be corrected and put in exports.";
    }
}
