package benchtrue.revision;

import benchtrue.costing.CostedLines;
import benchtrue.findings.Findings;
import benchtrue.findings.QuoteSizes;
import benchtrue.findings.QuoteSizes.SizeClass;
import benchtrue.findings.RepairFinding;
import benchtrue.format.Figures;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.Hours;
import benchtrue.shop.RepairType;
import java.util.List;
import java.util.Optional;

/** Drafts a line for small and one for large quotes of each repair whose hours run with the size of the quote. */
final class DraftSizeLines {
    private final CostedLines costs;
    private final Settings settings;
    private final Figures figures;
    private final ProposeRevision.Taken taken;
    private final SizedShares sized;

    private DraftSizeLines(CostedLines costs, Findings findings, Settings settings, ProposeRevision.Taken taken) {
        this.costs = costs;
        this.settings = settings;
        this.taken = taken;
        figures = settings.figures();
        sized = SizedShares.of(taken.measured(), taken.once(), findings.sizes());
    }

    /**
     * Returns the lines, by code of the repair.
     *
     * @param decided repairs that the owner decided already are left out
     */
    static List<SizeLines> of(
            CostedLines costs,
            Findings findings,
            Settings settings,
            ProposeRevision.Taken taken,
            AlreadyDecided decided) {
        DraftSizeLines draft = new DraftSizeLines(costs, findings, settings, taken);
        Ledger ledger = costs.jobs().ledger();
        return findings.repairs().stream()
                .filter(finding -> draft.sized.of(finding.repairType()).isPresent())
                .flatMap(finding -> ledger
                        .books()
                        .inForce(ledger.asOf())
                        .type(ledger.repairTypes().name(finding.repairType()))
                        .filter(row ->
                                decided.rails(row, ledger.asOf(), settings).isEmpty())
                        .map(row -> draft.lines(row, finding))
                        .stream())
                .toList();
    }

    private SizeLines lines(RepairType row, RepairFinding finding) {
        int type = finding.repairType();
        QuoteSizes sizes = sized.of(type).orElseThrow();
        Policy policy = settings.policy().of(row.family());
        double factor = Target.of(
                        taken.totals()[type],
                        sized.together()[type],
                        sized.fits().get(type),
                        policy,
                        figures)
                .factor();
        SizeLines.Step small = step(row, finding, sizes.small(), factor);
        SizeLines.Step large = step(row, finding, sizes.large(), factor);
        return new SizeLines(sizes, small, large, found(row, sizes), proposed(small, large));
    }

    private SizeLines.Step step(RepairType row, RepairFinding finding, SizeClass size, double factor) {
        long quoted = HourGrid.nearest(size.usualQuoted() * Hours.SECONDS);
        RepairType line = row.at(quoted, row.bookLabour());
        GuardRails rails = GuardRails.of(line, finding.verdict(), factor * size.perUsual(), settings);
        long labour = ProposeRevision.Price.ofHours(row.family(), rails.seconds(), costs.shopRate(), settings.policy());
        return new SizeLines.Step(quoted, rails.seconds(), labour, String.join("; ", rails.reasons()));
    }

    private String found(RepairType row, QuoteSizes sizes) {
        boolean apart = sizes.falls()
                ? sizes.small().lower() > 1 && sizes.large().upper() < 1
                : sizes.large().lower() > 1 && sizes.small().upper() < 1;
        String low = sizes.falls() ? "small" : "large";
        String high = sizes.falls() ? "large" : "small";
        return apart
                ? high + " quotes of " + row.title() + " are written too high, " + low + " ones too low"
                : high + " quotes of " + row.title() + " take fewer hours per quoted hour than " + low + " ones";
    }

    private String proposed(SizeLines.Step small, SizeLines.Step large) {
        return "Two lines in the book: a usual small quote " + hours(small) + ", a usual large one " + hours(large)
                + Optional.of(reasons(small, large))
                        .filter(held -> !held.isEmpty())
                        .map(held -> ". Held: " + held)
                        .orElse("");
    }

    private static String reasons(SizeLines.Step small, SizeLines.Step large) {
        String first = small.heldBecause().isEmpty() ? "" : "small, " + small.heldBecause();
        String second = large.heldBecause().isEmpty() ? "" : "large, " + large.heldBecause();
        return first.isEmpty() || second.isEmpty() ? first + second : first + "; " + second;
    }

    private String hours(SizeLines.Step step) {
        String price = " at " + figures.price(step.labour());
        return step.proposedSeconds() == step.quotedSeconds()
                ? "stays at " + figures.quote(step.quotedSeconds())
                : "from " + figures.quote(step.quotedSeconds()) + " to " + figures.quote(step.proposedSeconds())
                        + price;
    }
}
