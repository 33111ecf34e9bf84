package benchtrue.command;

import benchtrue.intake.ReadExports;
import benchtrue.intake.Table;
import benchtrue.reconcile.Reconcile;
import benchtrue.reconcile.Reconciled;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Reads and reconciles only, and says what is wrong and where. */
@Command(
        name = "check",
        description =
                "Reads a shop's exports, writes nothing, and says what can't be used, what is doubtful, and where.",
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class CheckCommand implements Callable<Integer> {
    private static final int MOST_ROWS = 5;

    @Mixin
    private ShopOption shop;

    @Mixin
    private Loudness loudness;

    private final Console console;

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Settings settings = shop.settings();
        Reconciled rows = new Reconcile()
                .reconcile(new ReadExports().read(shop.folder(), settings), settings, shop.asOf(settings, console));
        if (!loudness.quiet()) {
            Figures figures = settings.figures();
            Account account = new Account(figures);
            setAside(rows, figures).forEach(console.out()::println);
            account.notices(rows.notices()).forEach(console.out()::println);
            account.balances(rows.balances()).forEach(console.out()::println);
        }
        return ExitCode.PUBLISHED.number();
    }

    private List<String> setAside(Reconciled rows, Figures figures) {
        List<String> lines = new ArrayList<>();
        lines.add(rows.setAside().tables().isEmpty() ? "Every row can be used." : "Can't be used, and set aside:");
        for (Table table : rows.setAside().tables()) {
            lines.add("  " + figures.count(rows.setAside().count(table)) + " rows of " + table.title());
            List<String> places = new ArrayList<>();
            rows.setAside()
                    .forEach(
                            table,
                            row -> places.add("      " + row.file() + " line " + row.line() + ": "
                                    + String.join("; ", row.reasons())));
            int shown = loudness.verbose() ? places.size() : Math.min(MOST_ROWS, places.size());
            lines.addAll(places.subList(0, shown));
            if (shown < places.size()) {
                lines.add("      and " + figures.count(places.size() - shown) + " more; --verbose shows all");
            }
        }
        return lines;
    }
}
