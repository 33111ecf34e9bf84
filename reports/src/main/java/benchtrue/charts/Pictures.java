package benchtrue.charts;

import benchtrue.findings.Verdict;
import benchtrue.hours.JobLines;
import benchtrue.nightly.Review;
import benchtrue.settings.Disclosure;
import benchtrue.shop.Ints;
import benchtrue.shop.QuotedLines;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The pictures of a review, in the order in which an owner needs them. */
public final class Pictures {
    private Pictures() {}

    /** Returns all pictures that the shop's files allow. */
    public static List<Picture> of(Review review) {
        ChartContext subject = new ChartContext(review, ChartContext.Audience.OWNER);
        List<Picture> pictures = new ArrayList<>();
        pictures.add(new QuotedAgainstActual(subject).picture());
        new MoneyLost(subject).picture().ifPresent(pictures::add);
        pictures.addAll(causes(subject));
        pictures.addAll(histories(subject));
        pictures.add(new EveryRepair(subject).picture());
        new WhatTheBookDid(subject).picture().ifPresent(pictures::add);
        new TriedOnPastJobs(subject).picture().ifPresent(pictures::add);
        pictures.addAll(new SizeOfQuote(subject).pictures());
        new WhatMakesItLonger(subject).picture().ifPresent(pictures::add);
        new FoundPairs(subject).picture().ifPresent(pictures::add);
        new StillOnTheBench(subject).picture().ifPresent(pictures::add);
        new WorkByWeek(subject).picture().ifPresent(pictures::add);
        new BacklogByPromise(subject).picture().ifPresent(pictures::add);
        new WaitingByReason(subject).picture().ifPresent(pictures::add);
        new HoursByKind(subject).picture().ifPresent(pictures::add);
        new MonthMoved(subject).picture().ifPresent(pictures::add);
        return pictures;
    }

    /** Returns the pictures of the owner's standing questions that have rows and ask for one. */
    static List<Picture> ofQuestions(Review review) {
        return review.breakdowns().stream()
                .filter(asked -> asked.picture() == Disclosure.SHOWN
                        && !asked.answer().rows().isEmpty())
                .map(asked -> BreakdownPicture.of(
                        "question-" + asked.name(),
                        asked.answer(),
                        review.settings().figures()))
                .toList();
    }

    /** Returns the pictures that may hang on the wall of the bench: hours alone, no money, no ticket, no name. */
    public static List<Picture> forTheWall(Review review) {
        ChartContext subject = new ChartContext(review, ChartContext.Audience.BENCH);
        List<Picture> pictures = new ArrayList<>();
        pictures.add(new QuotedAgainstActual(subject).picture());
        pictures.add(new EveryRepair(subject).picture());
        new WhatMakesItLonger(subject).picture().ifPresent(pictures::add);
        new FoundPairs(subject).picture().ifPresent(pictures::add);
        new WaitingByReason(subject).picture().ifPresent(pictures::add);
        return pictures;
    }

    /** One picture for each cause that is told, the most money first. */
    private static List<Picture> causes(ChartContext subject) {
        return subject.review().answers().causes().stream()
                .map(cause -> new JobsByCause(subject, cause).picture())
                .toList();
    }

    /** One picture for each type that is under-quoted or got slower, the most money first. */
    private static List<Picture> histories(ChartContext subject) {
        Ints[] lines = judgedLines(subject.review().jobs());
        return subject.review().answers().worstFirst().stream()
                .filter(finding -> lines[finding.repairType()].size() > 0)
                .filter(finding -> finding.verdict() == Verdict.UNDER_QUOTED
                        || subject.slowing(finding.repairType()).isPresent())
                .map(finding -> new JobHistory(subject, finding).picture(lines[finding.repairType()].toArray()))
                .toList();
    }

    /** Judged lines by repair type. */
    private static Ints[] judgedLines(JobLines jobs) {
        QuotedLines quoted = jobs.ledger().lines();
        Ints[] lines = new Ints[jobs.ledger().repairTypes().size()];
        Arrays.setAll(lines, type -> new Ints());
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line)) {
                lines[quoted.repairType(line)].add(line);
            }
        }
        return lines;
    }
}
