package benchtrue.revision;

import benchtrue.findings.Cause;
import benchtrue.findings.Findings;
import benchtrue.format.Figures;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import benchtrue.shop.Surcharge;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Drafts lines of the book with conditions (methods, section 14): where a class, a trait or the age of the instrument makes a
 * repair longer, a line of its own takes what the proposal for its other jobs leaves out. The owner decides on each.
 */
final class DraftConditions {
    private static final Set<Cause.Kind> TELLABLE =
            Set.of(Cause.Kind.INSTRUMENT_CLASS, Cause.Kind.TRAIT, Cause.Kind.CONDITION);

    private DraftConditions() {}

    /** Returns the lines that the book has, then those that it could have. */
    static List<ProposedSurcharge> of(
            Findings findings, Ledger ledger, PriceBook against, long shopRate, Settings settings) {
        List<ProposedSurcharge> lines = new ArrayList<>();
        against.surcharges().forEach(line -> lines.add(new ProposedSurcharge(line, true, 0, "in the book")));
        for (Cause cause : findings.causes()) {
            Optional<RepairType> type = against.type(ledger.repairTypes().name(cause.repairType()));
            if (TELLABLE.contains(cause.kind()) && cause.size() > 1 && type.isPresent()) {
                Surcharge line = line(cause, type.get(), shopRate, settings);
                if (line.seconds() > 0 && against.surcharges().stream().noneMatch(line::standsFor)) {
                    lines.add(new ProposedSurcharge(line, false, cause.jobs(), basis(cause, settings.figures())));
                }
            }
        }
        return lines;
    }

    private static Surcharge line(Cause cause, RepairType type, long shopRate, Settings settings) {
        double more = cause.loadFactor() * (1 - 1 / cause.size());
        long seconds = HourGrid.nearest(type.bookSeconds() * more);
        return new Surcharge(
                type.repairType(),
                cause.value(),
                seconds,
                ProposeRevision.Price.ofHours(type.family(), seconds, shopRate, settings.policy()),
                type.title() + ", " + cause.label());
    }

    private static String basis(Cause cause, Figures figures) {
        return figures.count(cause.jobs()) + " of " + figures.count(cause.of()) + " jobs take "
                + figures.ratio(cause.size()) + " times as long as the others (" + figures.percent(0.9) + " range "
                + figures.ratio(cause.sizeLower()) + " to " + figures.ratio(cause.sizeUpper()) + ")";
    }
}
