package benchtrue.findings;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.RepairType;
import java.util.HashMap;
import java.util.Map;

/**
 * What a customer's job usually takes per quoted hour: exp(mean of ln(hours / quote)), leaning on the type's family as if
 * the family had lent it three jobs, and the family on the shop likewise.
 */
final class TypicalFactors {
    private static final double LENT_JOBS = 3;

    private final Ledger ledger;
    private final OwnHours own;

    TypicalFactors(Ledger ledger, OwnHours own) {
        this.ledger = ledger;
        this.own = own;
    }

    /** Returns the factor of each repair type by code; NaN where the shop has no job at all to go by. */
    double[] byType() {
        double[] sum = new double[ledger.repairTypes().size()];
        int[] count = new int[sum.length];
        Map<String, double[]> families = new HashMap<>();
        double[] shop = new double[2];
        for (int i = 0; i < own.line().length; i++) {
            int type = ledger.lines().repairType(own.line()[i]);
            sum[type] += own.logRatio()[i];
            count[type]++;
            add(families.computeIfAbsent(family(type), f -> new double[2]), own.logRatio()[i]);
            add(shop, own.logRatio()[i]);
        }
        double shopMean = shop[0] / shop[1];
        double[] typical = new double[sum.length];
        for (int type = 0; type < typical.length; type++) {
            double[] family = families.getOrDefault(family(type), new double[2]);
            double familyMean = lean(family[0], family[1], shopMean);
            typical[type] = StrictMath.exp(lean(sum[type], count[type], familyMean));
        }
        return typical;
    }

    private String family(int type) {
        return ledger.books()
                .type(ledger.repairTypes().name(type), ledger.asOf())
                .map(RepairType::family)
                .orElse("");
    }

    private static void add(double[] sumThenCount, double value) {
        sumThenCount[0] += value;
        sumThenCount[1]++;
    }

    private static double lean(double sum, double count, double prior) {
        return (sum + LENT_JOBS * prior) / (count + LENT_JOBS);
    }
}
