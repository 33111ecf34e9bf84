package benchtrue.page;

import benchtrue.answers.Answers;
import benchtrue.revision.ProposedChange;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.List;

/** Second answer: what to change in the price book, what is held and why. */
final class FormatChanges {
    private static final int MOST = 6;

    /** Held repairs are named within so many letters, so that the five answers stay on one sheet. */
    private static final int MOST_LETTERS = 150;

    private final PageFormatter told;

    FormatChanges(PageFormatter told) {
        this.told = told;
    }

    ReviewView.Changes tell() {
        Answers answers = told.review().answers();
        List<ReviewView.ChangeGroup> groups = new ArrayList<>();
        int sure = Math.min(MOST, answers.sure().size());
        group("Sure", answers.sure(), sure, groups);
        group("Only leaning, or by your policy", answers.leaning(), MOST - sure, groups);
        int rest = answers.changes().size() - MOST;
        return new ReviewView.Changes(groups, held(), rest > 0 ? told.count(rest, "more change", "more changes") : "");
    }

    /** Says also of a group that there is no room for how many there are and what they bring. */
    private void group(String words, List<ProposedChange> changes, int most, List<ReviewView.ChangeGroup> groups) {
        if (!changes.isEmpty()) {
            groups.add(new ReviewView.ChangeGroup(
                    words + ": " + told.count(changes.size(), "change", "changes") + ", together "
                            + told.figures().aboutMoney(Answers.together(changes)) + " a year",
                    changes.stream().limit(most).map(this::change).toList()));
        }
    }

    private List<ReviewView.Held> held() {
        return told.review().answers().held().entrySet().stream()
                .map(group -> new ReviewView.Held(
                        PageFormatter.sentence(group.getKey()),
                        named(group.getValue().stream()
                                .map(change -> told.label(change.repairType()))
                                .toList())))
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

    private String effect(long aYear) {
        return Absent.has(aYear)
                ? "brings " + told.figures().aboutMoney(Math.abs(aYear)) + " a year" + (aYear < 0 ? " less" : "")
                : "what it brings is not known";
    }

    private ReviewView.Change change(ProposedChange change) {
        return new ReviewView.Change(
                told.label(change.repairType()),
                PageFormatter.href(change.repairType()),
                told.figures().quote(change.bookSeconds()) + " \u2192 "
                        + told.figures().quote(change.proposedSeconds()),
                told.figures().price(change.bookLabour()) + " \u2192 "
                        + told.figures().price(change.proposedLabour()),
                effect(change.annualEffect()),
                change.heldBecause());
    }
}
