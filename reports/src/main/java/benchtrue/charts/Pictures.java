package benchtrue.charts;

import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.hours.JobLines;
import benchtrue.nightly.Review;
import benchtrue.shop.QuotedLines;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The pictures of a review, in the order in which an owner needs them. */
public final class Pictures {
    private Pictures() {}

    /** Returns all pictures that the shop's files allow. */
    public static List<Picture> of(Review review) {
        Subject subject = new Subject(review);
        List<Picture> pictures = new ArrayList<>();
        pictures.add(new QuotedAgainstActual(subject).picture());
        new MoneyLost(subject).picture().ifPresent(pictures::add);
        pictures.addAll(histories(subject));
        pictures.add(new HoursByKind(subject).picture());
        new WaitingByReason(subject).picture().ifPresent(pictures::add);
        return pictures;
    }

    /** One picture for each under-quoted type, the most money first. */
    private static List<Picture> histories(Subject subject) {
        Map<Integer, List<Integer>> lines = judgedLines(subject.review().jobs());
        return subject.review().findings().repairs().stream()
                .filter(finding -> finding.verdict() == Verdict.UNDER_QUOTED && lines.containsKey(finding.repairType()))
                .sorted(Comparator.comparingLong(RepairFinding::annualShortfall)
                        .reversed()
                        .thenComparingInt(RepairFinding::repairType))
                .map(finding -> new JobHistory(subject, finding).picture(lines.get(finding.repairType())))
                .toList();
    }

    private static Map<Integer, List<Integer>> judgedLines(JobLines jobs) {
        Map<Integer, List<Integer>> lines = new HashMap<>();
        QuotedLines quoted = jobs.ledger().lines();
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line)) {
                lines.computeIfAbsent(quoted.repairType(line), type -> new ArrayList<>())
                        .add(line);
            }
        }
        return lines;
    }
}
