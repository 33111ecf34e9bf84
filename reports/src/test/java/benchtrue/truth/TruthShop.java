package benchtrue.truth;

import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Ledger;
import benchtrue.reconcile.Reconcile;
import benchtrue.sample.LineTruth;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Truth;
import benchtrue.sample.WriteSample;
import benchtrue.settings.Settings;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/**
 * An invented shop as the program sees it and as it truly is.
 *
 * @param jobs its lines as split
 * @param truth what the generator knows
 * @param lines by line of the ledger: what is true of it, null where the ledger's line is none of the generator's
 */
record TruthShop(JobLines jobs, Truth truth, LineTruth[] lines) {
    static final String AS_OF = "2026-10-31";

    /** Writes a shop, reads it back from its files and splits its hours. */
    static TruthShop of(SampleOptions options) {
        try {
            Truth truth = WriteSample.write(options);
            Ledger ledger = ledger(options.folder());
            return new TruthShop(new SplitHours().split(ledger, Settings.DEFAULTS), truth, match(ledger, truth));
        } catch (IOException unwritable) {
            throw new java.io.UncheckedIOException(unwritable);
        }
    }

    static Ledger ledger(Path folder) {
        return new Reconcile()
                .reconcile(new ReadExports().read(folder, Settings.DEFAULTS), Settings.DEFAULTS, (int)
                        LocalDate.parse(AS_OF).toEpochDay())
                .ledger();
    }

    private static LineTruth[] match(Ledger ledger, Truth truth) {
        Map<String, LineTruth> byKey = new HashMap<>();
        truth.lines().forEach(line -> byKey.put(line.ticket() + '/' + line.line(), line));
        LineTruth[] lines = new LineTruth[ledger.lines().size()];
        for (int line = 0; line < lines.length; line++) {
            String ticket = ledger.tickets().ticket(ledger.lines().ticket(line));
            lines[line] = byKey.get(ticket + '/' + ledger.lines().line(line));
        }
        return lines;
    }
}
