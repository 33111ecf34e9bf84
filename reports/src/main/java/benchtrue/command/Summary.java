package benchtrue.command;

import benchtrue.answers.Answers;
import benchtrue.costing.LoggedShare;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.format.Figures;
import benchtrue.nightly.Published;
import benchtrue.nightly.Review;
import benchtrue.revision.ProposedChange;
import benchtrue.shop.Balance;
import benchtrue.shop.Notice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The night in at most twenty-five lines: what to do first, and whether everything adds up. */
final class Summary {
    private static final int MOST_REPAIRS = 5;
    private static final int MOST_CHANGES = 3;
    private final Published published;
    private final Review review;
    private final Figures figures;

    Summary(Published published) {
        this.published = published;
        this.review = published.review();
        this.figures = review.settings().figures();
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("Benchtrue: reviewed to " + figures.day(review.ledger().asOf()) + ".");
        review.answers().notRead().ifPresent(lines::add);
        lines.addAll(review.answers().allowedFor());
        timeMissing().ifPresent(lines::add);
        doFirst(lines);
        lines.add(alsoFound());
        if (!review.revision().coming().isEmpty()) {
            lines.add(String.join(" ", review.answers().books()));
        }
        missing().ifPresent(lines::add);
        setAside().ifPresent(lines::add);
        doubtful().ifPresent(lines::add);
        restated().ifPresent(lines::add);
        lines.add(balances());
        lines.addAll(published.notes());
        lines.add("Results: " + published.folder());
        return lines;
    }

    /** What loses most, and what to change, in the order of the draft: what is sure, then what only leans. */
    private void doFirst(List<String> lines) {
        Answers answers = review.answers();
        List<RepairFinding> under = answers.losing();
        if (under.isEmpty()) {
            lines.add("No repair is clearly under-quoted.");
        } else {
            lines.add("Losing most, of " + figures.count(under.size()) + " under-quoted repairs:");
        }
        for (int i = 0; i < Math.min(MOST_REPAIRS, under.size()); i++) {
            RepairFinding finding = under.get(i);
            lines.add("  " + (i + 1) + ". " + title(finding) + ": " + figures.ratio(finding.loadFactor())
                    + " hours per quoted hour over " + figures.count(finding.lines()) + " jobs, losing "
                    + figures.moneyRange(finding.annualShortfallLower(), finding.annualShortfallUpper()) + " a year.");
        }
        changes(
                "To change first, of " + figures.count(answers.sure().size()) + " that are sure",
                answers.sure(),
                lines);
        changes(
                "Of " + figures.count(answers.leaning().size()) + " that only lean or follow your policy",
                answers.leaning(),
                lines);
    }

    private void changes(String heading, List<ProposedChange> changes, List<String> lines) {
        if (!changes.isEmpty()) {
            lines.add(heading + ", together " + figures.aboutMoney(Answers.together(changes)) + " a year:");
            changes.stream().limit(MOST_CHANGES).map(this::proposal).forEach(lines::add);
        }
    }

    private String proposal(ProposedChange change) {
        String held = change.heldBecause().isEmpty() ? "" : " (" + change.heldBecause() + ")";
        return "  " + review.ledger().title(change.repairType()) + " ("
                + change.verdict().words() + "): "
                + figures.quote(change.bookSeconds()) + " to " + figures.quote(change.proposedSeconds())
                + ", " + figures.price(change.bookLabour()) + " to " + figures.price(change.proposedLabour()) + held
                + ".";
    }

    private String alsoFound() {
        return "Also: " + figures.count(with(Verdict.LEANING_UNDER)) + " leaning under, "
                + figures.count(with(Verdict.OVER_QUOTED)) + " over-quoted, "
                + figures.count(with(Verdict.ON_THE_MARK)) + " on the mark, "
                + figures.count(with(Verdict.TOO_FEW_JOBS)) + " with too few jobs to tell"
                + (with(Verdict.NOT_JUDGED) == 0
                        ? "."
                        : ", " + figures.count(with(Verdict.NOT_JUDGED)) + " not judged.");
    }

    private long with(Verdict verdict) {
        return review.findings().repairs().stream()
                .filter(f -> f.verdict() == verdict)
                .count();
    }

    private Optional<String> missing() {
        List<String> missing = review.ledger().leftOut();
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of("Not in the inbox: " + String.join(", ", missing)
                        + "; what needs them is left out and says so.");
    }

    private Optional<String> setAside() {
        if (review.setAside().isEmpty()) {
            return Optional.empty();
        }
        List<String> tables = review.setAside().entrySet().stream()
                .map(table -> figures.count(table.getValue()) + " of " + table.getKey())
                .toList();
        return Optional.of("Rows set aside: " + String.join(", ", tables)
                + "; correct them in set-aside and put them back into exports.");
    }

    private Optional<String> timeMissing() {
        LoggedShare logged = review.costs().shop().loggedShare();
        return logged.opensTheReview()
                ? Optional.of("First of all: only " + figures.percent(logged.share())
                        + " of the hours paid reached the log, so every repair looks cheaper than it is.")
                : Optional.empty();
    }

    private Optional<String> restated() {
        int count = review.restatements().size();
        return count == 0
                ? Optional.empty()
                : Optional.of("Sealed months: " + figures.count(count) + (count == 1 ? " figure" : " figures")
                        + " would be otherwise now; see restatements.csv for which and why.");
    }

    private Optional<String> doubtful() {
        long count = review.notices().stream().mapToLong(Notice::count).sum();
        return count == 0
                ? Optional.empty()
                : Optional.of("Used but doubtful: " + figures.count(count) + " things of "
                        + figures.count(review.notices().size()) + " kinds, listed in run.json.");
    }

    private String balances() {
        Optional<Balance> hours = review.balances().stream()
                .filter(balance -> balance.unit().equals("seconds"))
                .findFirst();
        return "Everything read is accounted for: all " + review.balances().size() + " balances hold"
                + hours.map(this::hours).orElse("") + ".";
    }

    private String hours(Balance balance) {
        return "; " + figures.hours(balance.read()) + " read, "
                + figures.hours(balance.terms().get(0).amount()) + " "
                + balance.terms().get(0).name();
    }

    private String title(RepairFinding finding) {
        return review.ledger().title(finding.repairType());
    }
}
