package benchtrue.findings;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** Verdicts and nothing beside them. */
public final class FoundRepairs {
    private FoundRepairs() {}

    /** Returns verdicts without jobs behind them. */
    public static Findings of(List<RepairFinding> repairs) {
        return of(repairs, new SurelyOwnJobs(new int[0], new boolean[0]));
    }

    /** Returns verdicts and the jobs behind them. */
    public static Findings of(List<RepairFinding> repairs, SurelyOwnJobs surelyOwn) {
        double[] ones = new double
                [1 + repairs.stream().mapToInt(RepairFinding::repairType).max().orElse(0)];
        Arrays.fill(ones, 1);
        return new Findings(
                repairs,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new Drift(List.of(), List.of(), 0),
                List.of(),
                List.of(),
                List.of(),
                0,
                List.of(),
                ShopPace.STEADY,
                Set.of(),
                surelyOwn,
                List.of(),
                List.of(),
                List.of(),
                new LoadReach(ones, ones, ones, ones),
                new RoundingForm.Logged(RoundingForm.UNKNOWN, 0, 0, 0),
                List.of());
    }
}
