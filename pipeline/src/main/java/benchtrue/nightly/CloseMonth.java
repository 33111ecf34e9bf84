package benchtrue.nightly;

import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.costing.SealMonth;
import benchtrue.costing.SealedMonth;
import benchtrue.hours.SplitHours;
import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Reconcile;
import benchtrue.reconcile.Reconciled;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.tables.SealFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Seals a month: writes its figures into the shop folder's {@code close}, where nothing rewrites them. */
public final class CloseMonth {
    /**
     * Returns the file of the month that was sealed.
     *
     * @param month {@code year * 12 + month - 1}
     * @throws Refusal where the month is sealed already, not all of it has come in, or it can't be written
     */
    public Path close(Path shop, Settings settings, int asOf, int month) {
        return ShopLock.whileHeld(shop, () -> closeAlone(shop, settings, asOf, month));
    }

    private static Path closeAlone(Path shop, Settings settings, int asOf, int month) {
        Path file = shop.resolve(Seals.FOLDER).resolve(SealFile.name(month));
        if (Files.exists(file)) {
            throw new Refusal(
                    ExitCode.CANNOT_WRITE,
                    file + ": found this month sealed already. A seal is never rewritten; later corrections show as"
                            + " restatements in each night's review.");
        }
        Reconciled rows = new Reconcile().reconcile(new ReadExports().read(shop, settings), settings, asOf);
        CostedLines costs = new CostLines().cost(new SplitHours().split(rows.ledger(), settings), settings);
        ProveBalances.prove(rows.balances(), costs);
        ExpectWholeMonth.of(costs, settings.figures(), month);
        write(new SealMonth().seal(costs, settings, month), file);
        return file;
    }

    private static void write(SealedMonth month, Path file) {
        try {
            WholeFile.write(file, partial -> SealFile.write(month, partial));
        } catch (IOException e) {
            throw new Refusal(
                    ExitCode.CANNOT_WRITE,
                    file + ": can't be written: " + e + ". Check who may write there and that the disk has room.",
                    e);
        }
    }
}
