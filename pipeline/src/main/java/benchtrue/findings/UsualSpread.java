package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.statistics.Mad;
import benchtrue.statistics.Quantile;
import java.util.Arrays;

/**
 * Middle and spread of ln(hours / quote) by repair type, robust against the copied quotes that they serve to find: median and
 * scaled median absolute deviation of the lines that do not equal their quote.
 *
 * @param middle median of each repair type; the shop's where its lines are few
 * @param spread scaled median absolute deviation, likewise
 */
record UsualSpread(double[] middle, double[] spread) {
    private static final int ENOUGH = 8;
    /** Nobody works to the second: a spread of zero comes from rounding, and would make every match a miracle. */
    private static final double LEAST_SPREAD = 0.05;

    private static final double WITHOUT_ANY = 0.3;

    /**
     * Returns the middle and spread of each repair type by code.
     *
     * @param matches by place in {@code own}, whether the line equals its quote
     */
    static UsualSpread of(JobLines jobs, OwnHours own, boolean[] matches) {
        int types = jobs.ledger().repairTypes().size();
        int[] count = new int[types];
        for (int line : own.line()) {
            count[jobs.ledger().lines().repairType(line)]++;
        }
        double[][] values = new double[types][];
        Arrays.setAll(values, type -> new double[count[type]]);
        double[] all = new double[own.line().length];
        int[] kept = new int[types];
        int keptInAll = 0;
        for (int i = 0; i < own.line().length; i++) {
            int type = jobs.ledger().lines().repairType(own.line()[i]);
            if (!matches[i]) {
                values[type][kept[type]++] = own.logRatio()[i];
                all[keptInAll++] = own.logRatio()[i];
            }
        }
        double[] shop = Arrays.copyOf(all, keptInAll);
        UsualSpread usual = new UsualSpread(new double[types], new double[types]);
        for (int type = 0; type < types; type++) {
            double[] mine = Arrays.copyOf(values[type], kept[type]);
            usual.set(type, mine.length < ENOUGH ? shop : mine);
        }
        return usual;
    }

    private void set(int type, double[] values) {
        middle[type] = values.length == 0 ? 0 : Quantile.median(Quantile.sorted(values));
        spread[type] = values.length == 0 ? WITHOUT_ANY : StrictMath.max(LEAST_SPREAD, Mad.scaled(values));
    }
}
