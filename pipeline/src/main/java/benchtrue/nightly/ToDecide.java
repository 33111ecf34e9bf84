package benchtrue.nightly;

import benchtrue.calendar.Call;
import benchtrue.format.Figures;
import benchtrue.revision.ProposedChange;
import benchtrue.shop.Absent;
import benchtrue.shop.Tickets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** What waits for a decision of the owner, in at most seven lines. */
final class ToDecide {
    private static final int MOST_CHANGES = 3;
    private static final int MOST_TICKETS = 8;

    private final Review review;
    private final Figures figures;
    private final IntFunction<String> title;

    /** Takes what the bench calls a repair type of a code. */
    ToDecide(Review review, IntFunction<String> title) {
        this.review = review;
        this.figures = review.settings().figures();
        this.title = title;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        changes(lines);
        lines.addAll(toCall());
        lines.addAll(new PromiseNews(review).inDanger());
        restatements(lines);
        setAside(lines);
        return lines;
    }

    private void changes(List<String> lines) {
        List<ProposedChange> drafted = review.answers().changes();
        if (drafted.isEmpty()) {
            return;
        }
        long together = drafted.stream()
                .mapToLong(change -> Absent.firstOf(change.annualEffect(), 0))
                .sum();
        lines.add("To decide: " + counted(drafted.size(), "change", "changes")
                + " of the price book, drafted in price-book-revision.xlsx, worth " + figures.aboutMoney(together)
                + " a year together" + (drafted.size() > MOST_CHANGES ? "; the largest:" : ":"));
        drafted.stream().limit(MOST_CHANGES).map(this::change).forEach(lines::add);
    }

    private String change(ProposedChange change) {
        return "  " + title.apply(change.repairType()) + ": " + figures.quote(change.bookSeconds()) + " to "
                + figures.quote(change.proposedSeconds()) + ", " + figures.price(change.bookLabour()) + " to "
                + figures.price(change.proposedLabour()) + ".";
    }

    /** Returns which owners to call, in one line; nothing where there is nobody to call. */
    List<String> toCall() {
        List<Call> calls = review.answers().calls();
        if (calls.isEmpty()) {
            return List.of();
        }
        Tickets tickets = review.ledger().tickets();
        List<String> named = calls.stream()
                .limit(MOST_TICKETS)
                .map(call -> tickets.ticket(call.ticket()))
                .toList();
        int rest = calls.size() - named.size();
        return List.of("To call about: "
                + counted(calls.size(), "open instrument", "open instruments") + ", " + String.join(", ", named)
                + (rest > 0 ? " and " + figures.count(rest) + " more." : "."));
    }

    private void restatements(List<String> lines) {
        int count = review.restatements().size();
        if (count > 0) {
            lines.add("Sealed months: " + counted(count, "figure", "figures")
                    + " would be otherwise now, see restatements.csv.");
        }
    }

    private void setAside(List<String> lines) {
        long count =
                review.setAside().values().stream().mapToLong(Long::longValue).sum();
        if (count > 0) {
            lines.add("To correct: " + counted(count, "row", "rows") + " set aside, see the folder set-aside.");
        }
    }

    private String counted(long count, String one, String many) {
        return figures.count(count) + " " + (count == 1 ? one : many);
    }
}
