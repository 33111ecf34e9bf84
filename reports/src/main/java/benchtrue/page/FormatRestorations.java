package benchtrue.page;

import benchtrue.findings.Restorations;
import java.util.List;

/** Large visits as wholes: which run over, at which stage, and what shows it at the first look. */
final class FormatRestorations {
    private final PageFormatter told;

    FormatRestorations(PageFormatter told) {
        this.told = told;
    }

    List<ReviewView.Restoration> tell() {
        return told.review().findings().restorations().stream()
                .filter(Restorations::worthTelling)
                .map(this::row)
                .toList();
    }

    private ReviewView.Restoration row(Restorations row) {
        boolean known = !Double.isNaN(row.lower());
        return new ReviewView.Restoration(
                row.by() == Restorations.By.ALL
                        ? ""
                        : PageFormatter.sentence(row.by().words()),
                row.group(),
                told.figures().count(row.restorations()),
                told.figures().hours(row.quotedHours()),
                row.quotedHours() > 0 ? told.figures().percent(row.foundShare()) : "",
                told.figures().hours(row.takenHours()),
                known
                        ? told.figures().ratio(row.load()) + " ("
                                + told.figures().ratio(row.lower()) + " to "
                                + told.figures().ratio(row.upper()) + ")"
                        : "",
                row.told());
    }
}
