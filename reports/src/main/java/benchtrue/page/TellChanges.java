package benchtrue.page;

import benchtrue.revision.ProposedChange;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** Second answer: what to change in the price book, what is held and why. */
final class TellChanges {
    private static final int MOST = 6;

    /** Held repairs are named within so many letters, so that the five answers stay on one sheet. */
    private static final int MOST_LETTERS = 150;

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
        int rest = changed.size() - MOST;
        return new ReviewView.Changes(
                changed.stream().limit(MOST).map(this::change).toList(),
                held(),
                rest > 0 ? told.count(rest, "smaller change", "smaller changes") : "");
    }

    /** Held repairs by reason; what stands after a colon is said in the table. */
    private List<ReviewView.Held> held() {
        TreeMap<String, List<String>> byReason = new TreeMap<>();
        for (ProposedChange change : told.review().revision().changes()) {
            if (!changes(change) && !change.heldBecause().isEmpty()) {
                String reason = change.heldBecause().split(":", 2)[0];
                byReason.computeIfAbsent(reason, r -> new ArrayList<>()).add(told.label(change.repairType()));
            }
        }
        return byReason.entrySet().stream()
                .map(group -> new ReviewView.Held(Told.sentence(group.getKey()), named(group.getValue())))
                .toList();
    }

    private String named(List<String> labels) {
        StringBuilder first = new StringBuilder();
        int named = 0;
        while (named < labels.size()
                && (named == 0 || first.length() + labels.get(named).length() <= MOST_LETTERS)) {
            first.append(named == 0 ? "" : "; ").append(labels.get(named++));
        }
        int rest = labels.size() - named;
        return rest > 0 ? first + "; and " + told.figures().count(rest) + " more" : first.toString();
    }

    static boolean changes(ProposedChange change) {
        return change.proposedSeconds() != change.bookSeconds() || change.proposedLabour() != change.bookLabour();
    }

    private static long weight(ProposedChange change) {
        return Absent.has(change.annualEffect()) ? Math.abs(change.annualEffect()) : 0;
    }

    private String effect(long aYear) {
        return Absent.has(aYear)
                ? "brings " + told.figures().aboutMoney(Math.abs(aYear)) + " a year" + (aYear < 0 ? " less" : "")
                : "what it brings is not known";
    }

    private ReviewView.Change change(ProposedChange change) {
        return new ReviewView.Change(
                told.label(change.repairType()),
                Told.href(change.repairType()),
                told.figures().quote(change.bookSeconds()) + " \u2192 "
                        + told.figures().quote(change.proposedSeconds()),
                told.figures().price(change.bookLabour()) + " \u2192 "
                        + told.figures().price(change.proposedLabour()),
                effect(change.annualEffect()),
                change.heldBecause());
    }
}
