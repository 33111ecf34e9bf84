package benchtrue.sample;

import java.util.HashMap;
import java.util.Map;

/** Which visits carry a planted fault: every kind in turn, spread over the history, several rounds in a larger shop. */
final class FaultPlan {
    private static final int TICKETS_A_ROUND = 400;
    private static final int MOST_ROUNDS = 25;
    private static final double FROM = 0.05;
    private static final double SPAN = 0.88;

    private final Map<Integer, Fault> byVisit = new HashMap<>();

    FaultPlan(SampleOptions options) {
        if (!options.untidy()) {
            return;
        }
        int rounds = StrictMath.min(MOST_ROUNDS, options.tickets() / TICKETS_A_ROUND);
        Fault[] kinds = Fault.values();
        int planted = 0;
        for (int round = 0; round < rounds; round++) {
            for (int kind = 1; kind < kinds.length; kind++) {
                double at = FROM + SPAN * planted++ / (rounds * (kinds.length - 1.0));
                byVisit.put((int) (at * options.tickets()), kinds[kind]);
            }
        }
        byVisit.values().removeIf(fault -> fault == Fault.DOUBLE_ENTRY);
        if (rounds > 0) {
            // The oldest time log has no key column, and only there is a double entry told from a repeated row.
            byVisit.put(0, Fault.DOUBLE_ENTRY);
        }
    }

    Fault at(int visit) {
        return byVisit.getOrDefault(visit, Fault.NONE);
    }
}
