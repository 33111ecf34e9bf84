package benchtrue.page;

import benchtrue.answers.Answers;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.ShortfallParts;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** First answer: which repairs lose most a year, and why. */
final class FormatLosses {
    /** A part below this share of the loss is not worth a word. */
    private static final double WORTH_NAMING = 0.1;

    private final PageFormatter told;

    FormatLosses(PageFormatter told) {
        this.told = told;
    }

    List<ReviewView.Loss> tell() {
        return told.review().answers().losing().stream()
                .limit(Answers.FEW_REPAIRS)
                .map(this::loss)
                .toList();
    }

    private ReviewView.Loss loss(RepairFinding finding) {
        return new ReviewView.Loss(
                told.label(finding.repairType()),
                PageFormatter.href(finding.repairType()),
                told.yearly(finding.annualShortfall(), finding.annualShortfallLower(), finding.annualShortfallUpper()),
                parts(finding).map(this::from).orElse(""),
                finding.why());
    }

    private Optional<ShortfallParts> parts(RepairFinding finding) {
        return told.review().findings().shortfalls().stream()
                .filter(parts -> parts.repairType() == finding.repairType())
                .findFirst();
    }

    private record Part(String words, long amount) {}

    private String from(ShortfallParts parts) {
        List<Part> all = List.of(
                new Part("hours beyond the book", parts.book()),
                new Part("quotes written below the book", parts.quotes()),
                new Part("slower work", parts.slower()),
                new Part("jobs that came back", parts.rework()));
        long whole = all.stream().mapToLong(part -> Math.abs(part.amount)).sum();
        String named = named(all.stream().filter(part -> part.amount >= WORTH_NAMING * whole && part.amount > 0));
        String gained = named(all.stream().filter(part -> -part.amount >= WORTH_NAMING * whole && part.amount < 0));
        return named + (gained.isEmpty() || named.isEmpty() ? "" : "; partly made up by ") + gained;
    }

    private String named(Stream<Part> parts) {
        return parts.sorted(Comparator.comparingLong((Part part) -> -Math.abs(part.amount)))
                .map(part -> part.words + " (" + told.figures().aboutMoney(Math.abs(part.amount)) + ")")
                .collect(Collectors.joining(", "));
    }
}
