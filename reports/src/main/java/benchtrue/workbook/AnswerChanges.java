package benchtrue.workbook;

import benchtrue.nightly.Review;
import benchtrue.revision.ProposedChange;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** Second answer: what to change in the price book, what is held and why. */
final class AnswerChanges {
    private static final int MOST = 8;

    private final Review review;
    private final Labels labels;

    AnswerChanges(Review review) {
        this.review = review;
        labels = new Labels(review.ledger());
    }

    void write(Flow flow) {
        flow.title("2. What to change in the price book");
        List<ProposedChange> changed = review.revision().changes().stream()
                .filter(AnswerChanges::changes)
                .sorted(Comparator.comparingLong(AnswerChanges::weight)
                        .reversed()
                        .thenComparingInt(ProposedChange::repairType))
                .toList();
        if (changed.isEmpty()) {
            flow.sentence("No change is proposed.");
        } else {
            rows(flow, changed);
        }
        held().forEach((reason, names) -> {
            flow.next().text("Not changed: " + reason, Look.Kind.WRAPPED);
            flow.across(String.join("; ", names), 1);
        });
        flow.sentence(
                "Accepted quotes keep their price. You decide line by line in " + WriteRevisionWorkbook.FILE + ".");
    }

    private void rows(Flow flow, List<ProposedChange> changed) {
        flow.headings(
                List.of(
                        "Repair",
                        "Hours now",
                        "Hours proposed",
                        "Change in hours",
                        "Price now",
                        "Price proposed",
                        "Money a year, about",
                        "Why it is not more"),
                0,
                7);
        changed.stream().limit(MOST).forEach(change -> change(flow, change));
        if (changed.size() > MOST) {
            flow.sentence("And " + (changed.size() - MOST) + " smaller, in " + WriteRevisionWorkbook.FILE + ".");
        }
    }

    private void change(Flow flow, ProposedChange change) {
        double now = Amounts.hours(change.bookSeconds());
        double proposed = Amounts.hours(change.proposedSeconds());
        Grid grid = flow.next();
        grid.text(labels.of(change.repairType()), Look.Kind.WRAPPED)
                .number(now, Look.Kind.HOURS)
                .number(proposed, Look.Kind.HOURS)
                .formula("C#/B#-1".replace("#", Integer.toString(flow.row())), proposed / now - 1, Look.Kind.CHANGE)
                .number(Amounts.money(change.bookLabour()), Look.Kind.MONEY)
                .number(Amounts.money(change.proposedLabour()), Look.Kind.MONEY)
                .number(Amounts.about(change.annualEffect()), Look.Kind.WHOLE_MONEY);
        flow.across(change.heldBecause(), 7);
    }

    /** Held repairs by reason; what stands after a colon belongs to one repair. */
    private TreeMap<String, List<String>> held() {
        TreeMap<String, List<String>> byReason = new TreeMap<>();
        for (ProposedChange change : review.revision().changes()) {
            if (!changes(change) && !change.heldBecause().isEmpty()) {
                byReason.computeIfAbsent(change.heldBecause().split(":", 2)[0], reason -> new ArrayList<>())
                        .add(labels.of(change.repairType()));
            }
        }
        return byReason;
    }

    private static boolean changes(ProposedChange change) {
        return change.proposedSeconds() != change.bookSeconds() || change.proposedLabour() != change.bookLabour();
    }

    private static long weight(ProposedChange change) {
        return Absent.has(change.annualEffect()) ? Math.abs(change.annualEffect()) : 0;
    }
}
