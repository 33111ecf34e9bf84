package benchtrue.calendar;

import benchtrue.format.Figures;
import java.util.Optional;

/**
 * How promises would have done on past visits, each given with what was known on the day the instrument came in.
 *
 * @param tried promises whose outcome is known
 * @param cutOffs months in which they were given
 * @param kept share kept
 * @param days average days promised
 * @param usualDays average days that the usual time plus the queue would have had to promise for the same share kept
 * @param ownTried how many of the visits the shop itself had promised a day for
 * @param ownKept share of its own promises that the shop kept; NaN where it gave none
 * @param daysBesideOwn average days promised on those visits
 * @param ownDays average days that the shop would have had to promise on them for the same share kept as these
 */
public record PromiseTrial(
        int tried,
        int cutOffs,
        double kept,
        double days,
        double usualDays,
        int ownTried,
        double ownKept,
        double daysBesideOwn,
        double ownDays) {
    /** Returns what came of it in words; empty where too little is past. */
    public Optional<String> sentence(Figures figures) {
        if (tried == 0) {
            return Optional.empty();
        }
        String own = ownTried == 0
                ? ""
                : "; your own days, of which " + figures.percent(ownKept) + " were kept, "
                        + figures.count(Math.round(ownDays)) + " where these need "
                        + figures.count(Math.round(daysBesideOwn));
        return Optional.of("Tried on " + figures.count(tried, "past visit", "past visits")
                + ", each with what was known on the day it came in: " + figures.percent(kept)
                + " of the promises would have been kept, at " + figures.count(Math.round(days))
                + " days on average. For as many kept, the usual time plus the work ahead would have had to promise "
                + figures.count(Math.round(usualDays)) + " days" + own + ".");
    }
}
