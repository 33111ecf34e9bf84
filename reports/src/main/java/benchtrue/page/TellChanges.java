package benchtrue.page;

import benchtrue.revision.ProposedChange;
import benchtrue.shop.Absent;
import java.util.Comparator;
import java.util.List;

/** Second answer: what to change in the price book, what is held and why. */
final class TellChanges {
    private static final int MOST = 8;
    private final Told told;

    TellChanges(Told told) {
        this.told = told;
    }

    ReviewView.Changes tell() {
        List<ProposedChange> changed = told.review().revision().changes().stream()
                .filter(TellChanges::changes)
                .sorted(Comparator.comparingLong(TellChanges::weight)
                        .reversed()
                        .thenComparingInt(ProposedChange::repairType))
                .toList();
        List<ReviewView.Held> held = told.review().revision().changes().stream()
                .filter(change -> !changes(change) && !change.heldBecause().isEmpty())
                .map(change -> new ReviewView.Held(
                        told.label(change.repairType()), Told.href(change.repairType()), change.heldBecause()))
                .toList();
        int rest = changed.size() - MOST;
        return new ReviewView.Changes(
                changed.stream().limit(MOST).map(this::change).toList(),
                held,
                rest > 0 ? told.count(rest, "smaller change", "smaller changes") : "");
    }

    static boolean changes(ProposedChange change) {
        return change.proposedSeconds() != change.bookSeconds() || change.proposedLabour() != change.bookLabour();
    }

    private static long weight(ProposedChange change) {
        return Absent.has(change.annualEffect()) ? Math.abs(change.annualEffect()) : 0;
    }

    private ReviewView.Change change(ProposedChange change) {
        return new ReviewView.Change(
                told.label(change.repairType()),
                Told.href(change.repairType()),
                told.figures().quote(change.bookSeconds()) + " \u2192 "
                        + told.figures().quote(change.proposedSeconds()),
                told.figures().price(change.bookLabour()) + " \u2192 "
                        + told.figures().price(change.proposedLabour()),
                told.figures().aboutMoney(change.annualEffect()),
                change.heldBecause());
    }
}
