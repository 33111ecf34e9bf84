package benchtrue.intake.dialects;

import benchtrue.intake.columns.Problem;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Weighs whether what stands behind the sign of hours are minutes: 1.30 for an hour and a half. Minutes never go beyond 59 and
 * mostly are quarters, tens or fives of an hour; hundredths go beyond it sooner or later, and are quarters, tenths or
 * twentieths. How much likelier the figures are as minutes is a Bayes factor: hundredths reach one of k by chance in one shop
 * of k at most. Mutable.
 */
public final class PointedMinutes {
    /** From here on somebody must say: minutes are met in about one shop of so many. */
    private static final double OPEN = 20;

    /** Under the contract's own names hours are decimal hours, so that chance must be out of the question. */
    private static final double AGAINST_THE_CONTRACT = 1e6;

    /** The share of figures that are mistyped and may be anything. */
    private static final double MISTYPED = 0.02;

    private static final int HOUR = 60;
    private static final int HUNDRED = 100;

    /** How people measure: all that stands behind the sign where they do. */
    private static final List<int[]> MINUTES =
            List.of(steps(15, HOUR), steps(10, HOUR), steps(5, HOUR), steps(1, HOUR));

    private static final List<int[]> HUNDREDTHS = List.of(
            steps(25, HUNDRED),
            steps(10, HUNDRED),
            steps(5, HUNDRED),
            steps(1, HUNDRED),
            // Every five minutes, turned into hundredths.
            new int[] {0, 8, 17, 25, 33, 42, 50, 58, 67, 75, 83, 92});

    private static final Pattern TWO_DECIMALS = Pattern.compile("-?0*(\\d{1,4})[.,](\\d\\d)");

    /** How often each figure was met, by 100 times its hours and what stands behind the sign. */
    private final Map<Integer, Long> figures = new HashMap<>();

    private String example = "";
    private int exampleBehind;

    private static int[] steps(int step, int end) {
        return IntStream.iterate(0, behind -> behind < end, behind -> behind + step)
                .toArray();
    }

    /** Takes the text of a cell that was met so many times. */
    public void take(String text, long times) {
        Matcher found = TWO_DECIMALS.matcher(text.strip());
        if (!found.matches()) {
            return;
        }
        int hours = Integer.parseInt(found.group(1));
        int behind = Integer.parseInt(found.group(2));
        // Below an hour short stretches look like minutes, whatever they are; what goes beyond 59 does not.
        if (hours > 0 || behind >= HOUR) {
            figures.merge(hours * HUNDRED + behind, times, Long::sum);
        }
        if (hours > 0 && behind < HOUR && behind > exampleBehind) {
            example = text.strip();
            exampleBehind = behind;
        }
    }

    /** Takes what another file of the same kind holds. */
    void take(PointedMinutes other) {
        other.figures.forEach((figure, times) -> figures.merge(figure, times, Long::sum));
        if (other.exampleBehind > exampleBehind) {
            example = other.example;
            exampleBehind = other.exampleBehind;
        }
    }

    /** Returns whether they may well be minutes in a file of another system, so that somebody must say. */
    public boolean isOpen() {
        return exampleBehind > 0 && odds() >= OPEN;
    }

    /** Returns whether they can hardly be anything but minutes. */
    boolean denyTheContract() {
        return exampleBehind > 0 && odds() >= AGAINST_THE_CONTRACT;
    }

    /** Returns how many times likelier the figures are if minutes stand behind the sign than if hundredths do. */
    private double odds() {
        double[] weights = new double[HUNDRED];
        // What is quoted, or taken off for a break, is met again and again: each time it tells less.
        figures.forEach((figure, times) -> weights[figure % HUNDRED] += 1 + StrictMath.log(times) / StrictMath.log(2));
        return StrictMath.exp(likelihood(MINUTES, weights) - likelihood(HUNDREDTHS, weights));
    }

    /** Returns the logarithm of the mean likelihood of the figures over ways to measure. */
    private static double likelihood(Collection<int[]> ways, double[] weights) {
        List<Double> each = ways.stream().map(way -> likelihood(way, weights)).toList();
        double most = each.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double mean = each.stream()
                .mapToDouble(one -> StrictMath.exp(one - most))
                .average()
                .orElseThrow();
        return most + StrictMath.log(mean);
    }

    private static double likelihood(int[] way, double[] weights) {
        double[] share = new double[HUNDRED];
        for (int behind : way) {
            share[behind] = (1 - MISTYPED) / way.length;
        }
        double sum = 0;
        for (int behind = 0; behind < HUNDRED; behind++) {
            sum += weights[behind] * StrictMath.log(share[behind] + MISTYPED / HUNDRED);
        }
        return sum;
    }

    /** Returns both readings of a figure that differs in them, and how many tell. */
    public String readings() {
        String hours = example.replaceAll("[.,].*", "");
        long beyond = figures.entrySet().stream()
                .filter(figure -> figure.getKey() % HUNDRED >= HOUR)
                .mapToLong(Map.Entry::getValue)
                .sum();
        long all = figures.values().stream().mapToLong(Long::longValue).sum();
        return "\"" + Problem.shown(example) + "\" is " + hours + " h "
                + StrictMath.round(exampleBehind * 0.6) + " min if hundredths of an hour stand behind the sign and "
                + hours + " h " + exampleBehind + " min if minutes do; of " + all + " such figures "
                + (beyond == 0 ? "none goes" : beyond + (beyond == 1 ? " goes" : " go")) + " beyond 59";
    }
}
