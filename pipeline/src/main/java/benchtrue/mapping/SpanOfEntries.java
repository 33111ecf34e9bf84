package benchtrue.mapping;

import benchtrue.intake.columns.TimeColumn;
import benchtrue.settings.EntrySpan;
import java.util.List;
import java.util.Optional;

/**
 * Over how long the entries of a time log are sums.
 *
 * @param span a week or a month
 * @param reason for a person
 * @param asked what a person must confirm, empty where the file says it
 */
record SpanOfEntries(EntrySpan span, String reason, Optional<String> asked) {
    private static final int A_DAY = 24;
    private static final int FEWEST_SUMS = 3;

    /** Less than one entry in so many with more than a day is mistyped. */
    private static final int LEAST_PART = 20;

    /** Returns the span; empty where entries are of a day. */
    static Optional<SpanOfEntries> of(Guess guess) {
        if (areWeeks(guess)) {
            return Optional.of(new SpanOfEntries(EntrySpan.WEEK, "its days are weeks", Optional.empty()));
        }
        List<Double> hours = guess.matches().stream()
                .filter(match -> match.isSure() && match.column() == TimeColumn.HOURS)
                .flatMap(match -> match.source().hours().stream())
                .sorted()
                .toList();
        long over = hours.stream().filter(entry -> entry > A_DAY).count();
        if (UnitOfHours.of(guess).isPresent() || over < FEWEST_SUMS || over * LEAST_PART < hours.size()) {
            return Optional.empty();
        }
        double most = hours.get(hours.size() - 1);
        return Optional.of(new SpanOfEntries(
                most <= EntrySpan.WEEK.days() * A_DAY ? EntrySpan.WEEK : EntrySpan.MONTH,
                "80 %: so many have more than a day",
                Optional.of(over + " of " + hours.size() + " entries have more than 24 hours, at most "
                        + Math.round(most))));
    }

    private static boolean areWeeks(Guess guess) {
        return guess.matches().stream()
                .filter(match -> match.isSure() && match.column() == TimeColumn.WORK_DATE)
                .map(match -> match.source().texts().keySet())
                .anyMatch(days -> !days.isEmpty() && days.stream().allMatch(text -> text.matches("\\d{4}-?W\\d\\d")));
    }
}
