package benchtrue.mapping;

import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.Table;
import benchtrue.settings.HoursUnit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a file's numbers for hours count, guessed from their names and sizes.
 *
 * @param unit minutes, hundredths, or hours and minutes
 * @param percent how sure
 * @param reason for a person
 * @param asked both readings where a person must say; empty where nobody need
 */
record UnitOfHours(HoursUnit unit, int percent, String reason, Optional<String> asked) {
    private static final Pattern MINUTES = Pattern.compile(".*\\b(min|mins|minut\\p{L}*)\\b.*");
    private static final Pattern HUNDREDTHS = Pattern.compile(".*\\b(hundertstel|hundredths|centi\\p{L}*|1 100)\\b.*");

    /** No bench time is this long as a rule, so that larger numbers count something smaller. */
    private static final double LONG_IN_HOURS = 12;

    private UnitOfHours(HoursUnit unit, int percent, String reason) {
        this(unit, percent, reason, Optional.empty());
    }

    /** Hours that one person may log in a week; minutes go beyond that soon, and most of them are a multiple of five. */
    private static final double A_LONG_WEEK = 84;

    /** Returns the unit; empty for hours. */
    static Optional<UnitOfHours> of(Guess guess) {
        return guess.matches().stream()
                .filter(match -> match.isSure()
                        && (match.column().cell().kind() == Kind.HOURS
                                || match.column().cell().kind() == Kind.SIGNED_HOURS))
                .filter(match -> !match.column().header().equals("weekly_bench_hours") && !isMonthly(guess))
                .flatMap(UnitOfHours::of)
                .findFirst();
    }

    private static boolean isMonthly(Guess guess) {
        return guess.table() == Table.PAID_HOURS;
    }

    private static Stream<UnitOfHours> of(Match match) {
        String header = PlainWords.plain(match.source().header().replace('/', ' '));
        if (MINUTES.matcher(header).matches()) {
            return Stream.of(new UnitOfHours(HoursUnit.MINUTES, 95, "the header says minutes"));
        }
        if (HUNDREDTHS.matcher(header).matches()) {
            return Stream.of(new UnitOfHours(HoursUnit.HUNDREDTHS, 95, "the header says hundredths"));
        }
        Optional<String> readings = match.source().pointedMinutes();
        if (readings.isPresent()) {
            return Stream.of(new UnitOfHours(
                    HoursUnit.HOURS_MINUTES, 70, "as minutes the figures behind the sign are far likelier", readings));
        }
        List<Double> numbers = match.source().numbers();
        boolean whole = numbers.stream().allMatch(number -> number == StrictMath.rint(number));
        if (numbers.isEmpty() || !whole || numbers.get(numbers.size() / 2) < LONG_IN_HOURS) {
            return Stream.empty();
        }
        if (numbers.get(numbers.size() - 1) <= A_LONG_WEEK && share(numbers, 5) < 0.5) {
            return Stream.empty();
        }
        double quarters = share(numbers, 15);
        double hundredths = share(numbers, 25);
        return Stream.of(
                hundredths > quarters
                        ? new UnitOfHours(
                                HoursUnit.HUNDREDTHS,
                                60,
                                "whole numbers of 12 and more, many of them quarters of a hundred")
                        : new UnitOfHours(HoursUnit.MINUTES, 70, "whole numbers, most of them 12 and more"));
    }

    private static double share(List<Double> numbers, int step) {
        return numbers.stream().filter(number -> number % step == 0).count() / (double) numbers.size();
    }
}
