package benchtrue.answers;

import benchtrue.findings.RoundingForm.Logged;
import benchtrue.format.Figures;
import java.util.Optional;

/** Says that bench time is written down in coarse steps, what that means for every figure, and what to change. */
final class DescribeLogging {
    private static final double WORTH_SAYING = 0.05;

    private DescribeLogging() {}

    static Optional<String> sentence(Logged logged, Figures figures) {
        if (!logged.coarsely()) {
            return Optional.empty();
        }
        String least = logged.leastShare() < WORTH_SAYING
                ? ""
                : ", " + figures.percent(logged.leastShare()) + " are the least that is ever written";
        String advice = " Start and end times, or steps of five minutes, would leave less in doubt.";
        return Optional.of(figures.percent(logged.share()) + " of the bench entries stand in steps of "
                + figures.quote(logged.step()) + least + meaning(logged) + advice);
    }

    private static String meaning(Logged logged) {
        return switch (logged.form()) {
            case UP ->
                "; the hours paid show that they are rounded up: ranges, verdicts and the draft leave out what that added.";
            case NEAREST ->
                "; the hours paid show that they are rounded to the nearest step, which adds little but to the shortest jobs.";
            case UNKNOWN ->
                "; nothing tells whether they are rounded up: every range reaches down by what that may have added, and no"
                        + " verdict and no higher price rests on it.";
        };
    }
}
