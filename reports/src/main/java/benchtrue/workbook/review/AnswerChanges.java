package benchtrue.workbook.review;

import benchtrue.answers.Answers;
import benchtrue.nightly.Review;
import benchtrue.revision.ProposedChange;
import benchtrue.workbook.draft.WriteRevisionWorkbook;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.RowFlow;
import java.util.List;
import java.util.stream.Collectors;

/** Second answer: what to change in the price book, what is held and why. */
final class AnswerChanges {
    private static final int MOST = 8;

    private final Review review;

    AnswerChanges(Review review) {
        this.review = review;
    }

    void write(RowFlow flow) {
        flow.title("2. What to change in the price book");
        Answers answers = review.answers();
        if (answers.changes().isEmpty()) {
            flow.sentence("No change is proposed.");
        } else {
            rows(flow, answers);
        }
        review.answers().held().forEach((reason, held) -> {
            flow.next().text("Not changed: " + reason, CellStyles.Kind.WRAPPED);
            flow.across(
                    held.stream()
                            .map(change -> review.ledger().title(change.repairType()))
                            .collect(Collectors.joining("; ")),
                    1);
        });
        flow.sentence(String.join(" ", review.answers().books()));
        flow.sentence(
                "Accepted quotes keep their price. You decide line by line in " + WriteRevisionWorkbook.FILE + ".");
    }

    private void rows(RowFlow flow, Answers answers) {
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
        int sure = Math.min(MOST, answers.sure().size());
        group(flow, "Sure", answers.sure(), sure);
        group(flow, "Only leaning, or by your policy", answers.leaning(), MOST - sure);
        int rest = answers.changes().size() - MOST;
        if (rest > 0) {
            flow.sentence("And " + rest + " more, in " + WriteRevisionWorkbook.FILE + ".");
        }
    }

    private void group(RowFlow flow, String words, List<ProposedChange> changes, int most) {
        if (!changes.isEmpty()) {
            flow.sentence(words + ": " + changes.size() + (changes.size() == 1 ? " change" : " changes") + ", together "
                    + review.settings().figures().aboutMoney(Answers.together(changes)) + " a year.");
            changes.stream().limit(most).forEach(change -> change(flow, change));
        }
    }

    private void change(RowFlow flow, ProposedChange change) {
        double now = Amounts.hours(change.bookSeconds());
        double proposed = Amounts.hours(change.proposedSeconds());
        Grid grid = flow.next();
        grid.text(review.ledger().title(change.repairType()), CellStyles.Kind.WRAPPED)
                .number(now, CellStyles.Kind.HOURS)
                .number(proposed, CellStyles.Kind.HOURS)
                .formula(
                        "C#/B#-1".replace("#", Integer.toString(flow.row())),
                        proposed / now - 1,
                        CellStyles.Kind.CHANGE)
                .number(Amounts.money(change.bookLabour()), CellStyles.Kind.MONEY)
                .number(Amounts.money(change.proposedLabour()), CellStyles.Kind.MONEY)
                .number(Amounts.about(change.annualEffect()), CellStyles.Kind.WHOLE_MONEY);
        flow.across(change.heldBecause(), 7);
    }
}
