package benchtrue.truth;

import benchtrue.revision.AlreadyDecided;
import benchtrue.revision.ProposeRevision;
import benchtrue.revision.ProposedChange;
import benchtrue.sample.TrueRatios;
import benchtrue.statistics.Pinball;
import benchtrue.truth.ScenarioTruth.Found;
import java.util.Locale;

/** How many of other visits to shops would fit the hours that are drafted to fit six in ten; summed over shops. */
final class FitTruth {
    private static final double ASKED = 0.6;

    private double jobs;
    private double fitting;
    private double loss;
    private double oracle;

    /** Counts a shop's repairs, but for the one that gets slower by itself. */
    void add(Found found, TrueRatios ratios) {
        for (ProposedChange change : new ProposeRevision()
                .propose(found.costs(), found.findings(), found.settings(), AlreadyDecided.NOTHING)
                .changes()) {
            String key = found.costs().jobs().ledger().repairTypes().name(change.repairType());
            double drafted = change.grounds().fits().at(ASKED);
            if (!key.equals(found.truth().slowType()) && Double.isFinite(drafted)) {
                add(ratios.byType().getOrDefault(key, new double[0]), drafted, ratios.quantile(key, ASKED));
            }
        }
    }

    private void add(double[] visits, double drafted, double known) {
        for (double hours : visits) {
            jobs++;
            fitting += hours <= drafted ? 1 : 0;
            loss += Pinball.loss(hours, drafted, ASKED);
            oracle += Pinball.loss(hours, known, ASKED);
        }
    }

    double share() {
        return fitting / jobs;
    }

    /** Returns by which share more is lost per quoted hour than by who knows the truth. */
    double beyondTheOracle() {
        return loss / oracle - 1;
    }

    String row(String name) {
        return String.format(
                Locale.ROOT,
                "%-16s %.3f fit where 0.600 are asked, loss %.2f %% above the oracle's%n",
                name,
                share(),
                100 * beyondTheOracle());
    }
}
