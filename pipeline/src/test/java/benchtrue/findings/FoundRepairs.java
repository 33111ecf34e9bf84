package benchtrue.findings;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** Verdicts and nothing beside them. */
public final class FoundRepairs {
    private FoundRepairs() {}

    public static Findings of(List<RepairFinding> repairs) {
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
                List.of(),
                List.of(),
                List.of(),
                new LoadReach(ones, ones, ones),
                new RoundingForm.Logged(RoundingForm.UNKNOWN, 0, 0, 0));
    }
}
