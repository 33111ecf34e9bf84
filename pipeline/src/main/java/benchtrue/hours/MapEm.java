package benchtrue.hours;

import java.util.Arrays;

/**
 * Estimates each cell's load factor from known lines and ticket sums together (methods, section 1).
 *
 * <p>Expectation-maximisation for additive non-negative data (Dempster, Laird, Rubin 1977; Shepp, Vardi 1982) with a prior
 * worth three jobs at book hours, centred on the cell's family, which is centred on the shop; all re-estimated together.
 * Hours that name a line are a floor: what is left of a ticket's time goes by what each line still lacks of its expectation.
 */
final class MapEm {
    private static final double PRIOR_JOBS = 3;
    /** A line with more logged hours than expected still takes this share of its expectation in what is left. */
    private static final double LEAST_SHARE = 0.05;

    private static final int MOST_ROUNDS = 500;
    private final SplitProblem problem;
    private final Cells cells;
    private final double tolerance;

    MapEm(SplitProblem problem, Cells cells, double tolerance) {
        this.problem = problem;
        this.cells = cells;
        this.tolerance = tolerance;
    }

    /** Returns what a line is expected to take of the ticket's unlabelled time. */
    static double lacking(double expected, double floor) {
        return Math.max(expected - floor, LEAST_SHARE * expected);
    }

    /** Returns the fit with every ticket counted once. */
    LoadFit fit() {
        double[] ones = new double[problem.tickets];
        Arrays.fill(ones, 1);
        double[] start = new double[cells.size()];
        Arrays.fill(start, 1);
        return fit(ones, start);
    }

    /** Returns the fit under ticket weights, begun at a factor of each cell. */
    LoadFit fit(double[] weights, double[] begin) {
        double[] knownHours = new double[cells.size()];
        double[] base = new double[cells.size()];
        sumKnown(weights, knownHours, base);
        double[] factor = begin.clone();
        double[] hours = new double[cells.size()];
        double change = Double.MAX_VALUE;
        for (int round = 0; round < MOST_ROUNDS && change > tolerance; round++) {
            System.arraycopy(knownHours, 0, hours, 0, hours.length);
            expect(weights, factor, hours);
            change = maximise(hours, base, factor);
        }
        return new LoadFit(factor, hours, base);
    }

    private void sumKnown(double[] weights, double[] hours, double[] base) {
        for (int i = 0; i < problem.knownTicket.length; i++) {
            double weight = weights[problem.knownTicket[i]];
            hours[problem.knownCell[i]] += weight * problem.knownHours[i];
            base[problem.knownCell[i]] += weight * problem.knownBase[i];
        }
        for (int i = 0; i < problem.openTicket.length; i++) {
            double weight = weights[problem.openTicket[i]];
            for (int slot = problem.start[i]; slot < problem.start[i + 1]; slot++) {
                base[problem.slotCell[slot]] += weight * problem.slotBase[slot];
            }
        }
    }

    private void expect(double[] weights, double[] factor, double[] hours) {
        for (int i = 0; i < problem.openTicket.length; i++) {
            double weight = weights[problem.openTicket[i]];
            if (weight == 0) {
                continue;
            }
            double sum = 0;
            for (int slot = problem.start[i]; slot < problem.start[i + 1]; slot++) {
                sum += lacking(factor, slot);
            }
            double part = problem.wholeHours[i] / sum;
            for (int slot = problem.start[i]; slot < problem.start[i + 1]; slot++) {
                hours[problem.slotCell[slot]] += weight * (problem.slotFloor[slot] + part * lacking(factor, slot));
            }
        }
    }

    private double lacking(double[] factor, int slot) {
        return lacking(factor[problem.slotCell[slot]] * problem.slotBase[slot], problem.slotFloor[slot]);
    }

    /** Sets the factors from the hours and returns the largest relative change. */
    private double maximise(double[] hours, double[] base, double[] factor) {
        double[] family = families(hours, base);
        double change = 0;
        for (int cell = 0; cell < factor.length; cell++) {
            double prior = PRIOR_JOBS * cells.jobHours(cell);
            double next = (hours[cell] + prior * family[cells.family(cell)]) / (base[cell] + prior);
            change = Math.max(change, Math.abs(next / factor[cell] - 1));
            factor[cell] = next;
        }
        return change;
    }

    private double[] families(double[] hours, double[] base) {
        double[] family = new double[cells.families()];
        double[] familyBase = new double[cells.families()];
        double[] prior = new double[cells.families()];
        double shopHours = 0;
        double shopBase = 0;
        for (int cell = 0; cell < hours.length; cell++) {
            family[cells.family(cell)] += hours[cell];
            familyBase[cells.family(cell)] += base[cell];
            prior[cells.family(cell)] = Math.max(prior[cells.family(cell)], PRIOR_JOBS * cells.jobHours(cell));
            shopHours += hours[cell];
            shopBase += base[cell];
        }
        double shop = (shopHours + PRIOR_JOBS) / (shopBase + PRIOR_JOBS);
        for (int f = 0; f < family.length; f++) {
            family[f] = prior[f] > 0 ? (family[f] + prior[f] * shop) / (familyBase[f] + prior[f]) : shop;
        }
        return family;
    }
}
