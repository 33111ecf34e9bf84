package benchtrue.nightly;

import benchtrue.answers.Answers;
import benchtrue.calendar.Call;
import benchtrue.format.Figures;
import benchtrue.revision.ProposedChange;
import benchtrue.shop.Tickets;
import java.util.ArrayList;
import java.util.List;

/** What waits for a decision of the owner, in at most seven lines. */
final class ToDecide {
    private static final int MOST_CHANGES = 3;
    private static final int MOST_TICKETS = 8;

    private final Review review;
    private final Figures figures;

    ToDecide(Review review) {
        this.review = review;
        this.figures = review.settings().figures();
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
        lines.add("To decide: " + figures.count(drafted.size(), "change", "changes")
                + " of the price book, drafted in price-book-revision.xlsx, "
                + worth("sure", review.answers().sure()) + ", "
                + worth("only leaning or by your policy", review.answers().leaning())
                + (drafted.size() > MOST_CHANGES ? "; the first:" : ":"));
        drafted.stream().limit(MOST_CHANGES).map(this::change).forEach(lines::add);
    }

    private String worth(String which, List<ProposedChange> changes) {
        return figures.count(changes.size()) + " " + which
                + (changes.isEmpty() ? "" : " worth " + figures.aboutMoney(Answers.together(changes)) + " a year");
    }

    private String change(ProposedChange change) {
        return "  " + review.ledger().title(change.repairType()) + " ("
                + change.verdict().words() + "): "
                + figures.quote(change.bookSeconds()) + " to "
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
                + figures.count(calls.size(), "open instrument", "open instruments") + ", " + String.join(", ", named)
                + (rest > 0 ? " and " + figures.count(rest) + " more." : "."));
    }

    private void restatements(List<String> lines) {
        int count = review.restatements().size();
        if (count > 0) {
            lines.add("Sealed months: " + figures.count(count, "figure", "figures")
                    + " would be otherwise now, see restatements.csv.");
        }
    }

    private void setAside(List<String> lines) {
        long count =
                review.setAside().values().stream().mapToLong(Long::longValue).sum();
        if (count > 0) {
            lines.add("To correct: " + figures.count(count, "row", "rows") + " set aside, see the folder set-aside.");
        }
    }
}
