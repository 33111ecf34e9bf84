package benchtrue.nightly;

import benchtrue.costing.CostedLines;
import benchtrue.costing.Restatement;
import benchtrue.costing.SealMonth;
import benchtrue.costing.SealedMonth;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.tables.SealFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The months that a shop closed, in order.
 *
 * @param months their figures as sealed
 */
record Seals(List<SealedMonth> months) {
    static final String FOLDER = "close";

    Seals {
        months = List.copyOf(months);
    }

    static Seals of(Path shop) {
        return new Seals(files(shop).stream().map(SealFile::read).toList());
    }

    /** Returns the files of sealed months by name; none where the folder is missing. */
    static List<Path> files(Path shop) {
        Path folder = shop.resolve(FOLDER);
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> found = Files.list(folder)) {
            return found.filter(file -> file.getFileName().toString().endsWith(".csv"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new Refusal(ExitCode.READ_FAILED, folder + ": reading failed part-way: " + e + ".", e);
        }
    }

    /** Returns what the records now tell otherwise; months that are not over on the as-of date are left alone. */
    List<Restatement> restatements(CostedLines costs, Settings settings) {
        List<Restatement> found = new ArrayList<>();
        for (SealedMonth sealed : months) {
            if (sealed.month() <= costs.shop().lastWholeMonth()) {
                found.addAll(Restatement.between(sealed, new SealMonth().seal(costs, settings, sealed.month())));
            }
        }
        return found;
    }
}
