package benchtrue.nightly;

import benchtrue.findings.RepairFinding;
import benchtrue.format.Figures;
import benchtrue.shop.Absent;
import benchtrue.tables.EarlierResult.EarlierFinding;
import benchtrue.tables.EarlierResult.EarlierPromise;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** {@code digest.txt}: what changed since the newest earlier result and what waits for a decision, at most thirty
 * lines, short enough to mail; when nothing changed that alone, what comes into force soon and whom to call. */
final class WhatChanged {
    private static final int MOST_VERDICTS = 5;
    private static final int MOST_MOVES = 3;

    /** A smaller change of hours per quoted hour is no news. */
    private static final double SMALLEST_MOVE = 0.02;

    /** The earlier figures have four decimals. */
    private static final double AS_WRITTEN = 0.6e-4;

    private final Review review;
    private final Figures figures;
    private final int waitingSince;
    private final BookNews news;

    /**
     * Takes what is told.
     *
     * @param waitingSince since when a draft has been waiting for too long, or {@link Absent#DAY}
     * @param files what was decided and withdrawn
     */
    WhatChanged(Review review, int waitingSince, DecisionFiles files) {
        this.review = review;
        this.figures = review.settings().figures();
        this.waitingSince = waitingSince;
        news = new BookNews(review, files);
    }

    /**
     * An earlier result.
     *
     * @param day its as-of date
     * @param findings what it found
     * @param promises days to promise that it named
     * @param run what it read
     */
    record Earlier(int day, List<EarlierFinding> findings, List<EarlierPromise> promises, EarlierRun run) {}

    private record Pair(RepairFinding now, EarlierFinding before) {
        double move() {
            double move = now.loadFactor() - before.loadFactor();
            return Double.isFinite(move) ? Math.abs(move) : 0;
        }

        boolean same() {
            return sameVerdict() && now.lines() == before.lines() && !(move() > AS_WRITTEN);
        }

        boolean sameVerdict() {
            return now.verdict().words().equals(before.verdict());
        }
    }

    /** Returns the text of a first result. */
    String first() {
        return alone("No earlier result to compare with.");
    }

    /** Returns the text after an earlier result that can't be read. */
    String sinceUnreadable(int earlierDay) {
        return alone("The findings of " + figures.day(earlierDay) + " can't be read, so nothing is compared.");
    }

    private String alone(String why) {
        List<String> lines = new ArrayList<>();
        lines.add(heading() + " " + why);
        lines.addAll(BookNews.bounded(news.soon()));
        standing(lines);
        return text(lines);
    }

    private String text(List<String> lines) {
        List<String> all = new ArrayList<>(lines);
        all.addAll(waiting());
        all.addAll(new ToDecide(review).lines());
        return String.join("\n", all) + "\n";
    }

    private List<String> waiting() {
        return Absent.has(waitingSince)
                ? List.of(
                        "Waiting since " + figures.day(waitingSince) + ": a drafted price book that nobody decided on.")
                : List.of();
    }

    /** Returns the text that compares with an earlier result. */
    String since(Earlier earlier) throws IOException {
        Map<String, EarlierFinding> before =
                earlier.findings().stream().collect(Collectors.toMap(EarlierFinding::repairType, Function.identity()));
        List<Pair> pairs = new ArrayList<>();
        for (RepairFinding now : review.answers().worstFirst()) {
            Optional.ofNullable(before.get(key(now))).ifPresent(then -> pairs.add(new Pair(now, then)));
        }
        List<String> books =
                new ArrayList<>(news.since(earlier.day(), earlier.run().inputs()));
        boolean quiet = books.isEmpty() && nothing(pairs, earlier.findings().size());
        books.addAll(news.soon());
        List<String> moved = new PromiseNews(review).moved(earlier.promises());
        if (quiet) {
            books.addAll(moved);
            return quiet(earlier.day(), books);
        }
        List<String> lines = new ArrayList<>();
        lines.add(heading() + " Compared with the result of " + figures.day(earlier.day()) + ".");
        lines.addAll(BookNews.bounded(books));
        standing(lines);
        long judgedBefore =
                earlier.findings().stream().mapToLong(EarlierFinding::lines).sum();
        lines.add("Closed jobs behind it: " + figures.count(judged()) + ", were " + figures.count(judgedBefore) + ".");
        WhyVerdictMoved why =
                new WhyVerdictMoved(review, earlier.day(), earlier.run().settings());
        section(lines, "Changed verdicts:", changedVerdicts(pairs), MOST_VERDICTS, pair -> verdictLine(pair, why));
        section(lines, "Same verdict, other figures:", moved(pairs), MOST_MOVES, this::moveLine);
        lines.addAll(moved);
        return text(lines);
    }

    private String quiet(int earlierDay, List<String> books) {
        List<String> lines = new ArrayList<>();
        lines.add(heading() + " Nothing has changed since the result of " + figures.day(earlierDay) + ".");
        lines.addAll(BookNews.bounded(books));
        lines.addAll(waiting());
        lines.addAll(new ToDecide(review).toCall());
        return String.join("\n", lines) + "\n";
    }

    /** Returns whether every repair of then and now has the same jobs, figures and verdict. */
    private boolean nothing(List<Pair> pairs, int earlier) {
        return pairs.size() == earlier
                && pairs.size() == review.findings().repairs().size()
                && pairs.stream().allMatch(Pair::same);
    }

    private String heading() {
        return "Benchtrue, results to " + figures.day(review.ledger().asOf()) + ".";
    }

    private void standing(List<String> lines) {
        review.answers().notRead().ifPresent(lines::add);
        lines.addAll(review.answers().allowedFor());
        List<RepairFinding> under = review.answers().losing();
        long least = review.findings().lostAtLeast();
        long most = review.findings().lostAtMost();
        lines.add("Under-quoted repairs: " + figures.count(under.size())
                + (under.isEmpty() ? "." : ", losing " + figures.moneyRange(least, most) + " a year together."));
        if (!review.revision().backTest().cutOffs().isEmpty()) {
            lines.add(review.revision().backTest().sentence());
        }
    }

    private long judged() {
        return review.findings().repairs().stream()
                .mapToLong(RepairFinding::lines)
                .sum();
    }

    private static List<Pair> changedVerdicts(List<Pair> pairs) {
        return pairs.stream().filter(p -> !p.sameVerdict()).toList();
    }

    private static List<Pair> moved(List<Pair> pairs) {
        return pairs.stream()
                .filter(p -> p.sameVerdict() && p.move() >= SMALLEST_MOVE)
                .sorted(Comparator.comparingDouble((Pair p) -> -p.move()))
                .toList();
    }

    private static void section(
            List<String> lines, String heading, List<Pair> pairs, int most, Function<Pair, String> line) {
        lines.add(heading + (pairs.isEmpty() ? " none." : ""));
        pairs.stream().limit(most).map(line).forEach(lines::add);
        if (pairs.size() > most) {
            lines.add("  and " + (pairs.size() - most) + " more, see findings.csv.");
        }
    }

    private String verdictLine(Pair pair, WhyVerdictMoved why) {
        String line = "  " + title(pair.now) + ": now " + pair.now.verdict().words() + ", was " + pair.before.verdict()
                + "; ";
        return pair.now.lines() == pair.before.lines()
                ? line + why.words(key(pair.now), !(pair.move() > AS_WRITTEN)) + "; " + factors(pair)
                : line + factors(pair);
    }

    private String moveLine(Pair pair) {
        return "  " + title(pair.now) + ": " + factors(pair);
    }

    private String factors(Pair pair) {
        return figures.ratio(pair.now.loadFactor()) + " hours per quoted hour over "
                + figures.count(pair.now.lines()) + " jobs, was " + figures.ratio(pair.before.loadFactor())
                + " over " + figures.count(pair.before.lines()) + ".";
    }

    private String key(RepairFinding finding) {
        return review.ledger().repairTypes().name(finding.repairType());
    }

    private String title(RepairFinding finding) {
        return review.ledger().title(finding.repairType());
    }
}
