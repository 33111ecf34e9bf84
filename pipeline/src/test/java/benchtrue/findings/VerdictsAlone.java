package benchtrue.findings;

import java.util.List;
import java.util.Set;

/** What a review found where it found verdicts alone. */
public final class VerdictsAlone {
    private VerdictsAlone() {}

    /** Returns verdicts and the jobs behind them, and nothing beside. */
    public static Findings of(List<RepairFinding> repairs, SurelyOwnJobs surelyOwn) {
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
                LoadReach.none(1
                        + repairs.stream()
                                .mapToInt(RepairFinding::repairType)
                                .max()
                                .orElse(0)),
                RoundingForm.Logged.FINELY);
    }
}
