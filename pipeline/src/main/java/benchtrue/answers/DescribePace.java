package benchtrue.answers;

import benchtrue.findings.ShopPace;
import benchtrue.format.Figures;
import java.util.Optional;

/** Says that the whole shop gets slower or faster, and that every figure allows for it. */
final class DescribePace {
    private static final double NINETY_PERCENT = 1.645;

    private DescribePace() {}

    static Optional<String> sentence(ShopPace pace, Figures figures) {
        if (!pace.sure()) {
            return Optional.empty();
        }
        boolean slower = pace.ratio() > 1;
        double least = StrictMath.abs(pace.ratio(slower ? -NINETY_PERCENT : NINETY_PERCENT) - 1);
        double most = StrictMath.abs(pace.ratio(slower ? NINETY_PERCENT : -NINETY_PERCENT) - 1);
        String much = figures.percent(StrictMath.abs(pace.ratio() - 1)) + (slower ? " longer" : " less time");
        String range = " (" + figures.percent(least) + " to " + figures.percent(most) + ")";
        String says = pace.step()
                ? "Since about " + figures.monthOf(pace.stepDay()) + " the whole shop takes " + much + range
                : "The whole shop takes " + much + " than a year ago" + range;
        return Optional.of(says + "; every figure here is as of today.");
    }
}
