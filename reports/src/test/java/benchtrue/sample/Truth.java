package benchtrue.sample;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What is true of an invented shop, as {@code truth.json} and {@code truth-lines.csv} have it.
 *
 * @param types per repair type, in the order of the catalogue
 * @param technicians what each technician multiplies hours by
 * @param writers what each quote writer multiplies quotes by
 * @param classes what each instrument class multiplies hours by
 * @param traits what traits multiply hours by
 * @param adjustmentBorneOut coefficient of the log of a quote's adjustment for condition in the log of the hours
 * @param slowType the type that gets slower; empty for none
 * @param slowFrom first day on which it is
 * @param slower what its hours are multiplied by from then on
 * @param together pairs of repair types that almost always stand on the same tickets
 * @param found which repair types show on the bench that another is needed
 * @param planted how often each kind of dirty or less tidy row was planted
 * @param lines every quoted line, for shops of at most {@link TruthBook#MOST_TICKETS} tickets, else none
 */
public record Truth(
        List<TypeTruth> types,
        Map<String, Double> technicians,
        Map<String, Double> writers,
        Map<String, Double> classes,
        List<TraitTruth> traits,
        double adjustmentBorneOut,
        String slowType,
        LocalDate slowFrom,
        double slower,
        List<List<String>> together,
        List<FoundTruth> found,
        Map<String, Long> planted,
        List<LineTruth> lines) {
    public Truth {
        types = List.copyOf(types);
        traits = List.copyOf(traits);
        together = List.copyOf(together);
        found = List.copyOf(found);
        lines = List.copyOf(lines);
    }

    /** Returns what is true of one repair type. */
    public TypeTruth type(String repairType) {
        return types.stream()
                .filter(type -> type.repairType().equals(repairType))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no repair type " + repairType));
    }
}
