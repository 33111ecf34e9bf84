package benchtrue.nightly;

import benchtrue.costing.CostedLines;
import benchtrue.costing.Restatement;
import benchtrue.costing.SealMonth;
import benchtrue.costing.SealedMonth;
import benchtrue.settings.Settings;
import benchtrue.tables.SealFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

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
        return new Seals(Inputs.files(shop.resolve(FOLDER), ".csv").stream()
                .map(SealFile::read)
                .toList());
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
