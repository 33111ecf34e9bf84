package benchtrue.truth;

import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.hours.SplitHours;
import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Ledger;
import benchtrue.reconcile.Reconcile;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Truth;
import benchtrue.sample.WriteSample;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * An invented shop read from its own files as any shop's would be, with what is true of it.
 *
 * @param truth what the generator knows
 * @param costs its lines with hours and money
 */
record KnownShop(Truth truth, CostedLines costs) {
    private static final int AS_OF = (int) LocalDate.of(2026, 10, 31).toEpochDay();

    /** Writes the shop into a folder of its own, reads it back, and removes the folder. */
    static KnownShop of(long seed, UnaryOperator<SampleOptions> change) {
        try {
            Path folder = Files.createTempDirectory("known-shop");
            Path shop = folder.resolve("shop");
            Truth truth =
                    WriteSample.write(change.apply(SampleOptions.standard(shop).withSeed(seed)));
            Settings settings = new ReadSettings().read(shop);
            Ledger ledger = new Reconcile()
                    .reconcile(new ReadExports().read(shop, settings), settings, AS_OF)
                    .ledger();
            CostedLines costs = new CostLines().cost(new SplitHours().split(ledger, settings), settings);
            remove(folder);
            return new KnownShop(truth, costs);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    Ledger ledger() {
        return costs.jobs().ledger();
    }
}
