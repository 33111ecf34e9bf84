package benchtrue.truth;

import benchtrue.hours.JobLines;
import benchtrue.sample.LineTruth;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.LineState;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * Other ways to split the same unlabelled hours over the same lines: by the quote, by plain expectation-maximisation on load
 * factors, and with everything known but chance. Hours by line.
 */
final class RivalSplits {
    private static final double PRIOR_JOBS = 3;
    private static final int ROUNDS = 300;
    private final JobLines jobs;
    private final int[] starts;
    private final double[] quoted;
    private final boolean[] takes;

    RivalSplits(JobLines jobs) {
        this.jobs = jobs;
        starts = jobs.ledger().lines().starts(jobs.ledger().tickets().size());
        quoted = new double[jobs.size()];
        takes = new boolean[jobs.size()];
        for (int line = 0; line < quoted.length; line++) {
            double today = jobs.todayQuotedHours(line);
            double own = Math.max(0, jobs.ledger().lines().judgedSeconds(line)) / 3_600.0;
            quoted[line] = Double.isNaN(today) ? own : today;
            ChargeKind kind = jobs.ledger().lines().chargeKind(line);
            boolean accepted = jobs.state(line) == LineState.CLOSED || jobs.state(line) == LineState.OPEN;
            boolean work = kind != ChargeKind.RUSH && kind != ChargeKind.STORAGE && kind != ChargeKind.OUTSIDE_WORK;
            takes[line] = accepted && work;
        }
    }

    /** By the quotes of all lines of the ticket. */
    double[] proRata() {
        return deal(line -> quoted[line]);
    }

    /** By what each quote still lacks after the hours that name its line. */
    double[] proRataToTheRest() {
        return deal(line -> Math.max(quoted[line] - labelled(line), 0.05 * quoted[line]));
    }

    /** By load factors that are estimated together with the split (methods, section 1, base model). */
    double[] plainEm() {
        double[] factor = new double[jobs.ledger().repairTypes().size()];
        Arrays.fill(factor, 1);
        double[] hours = proRata();
        for (int round = 0; round < ROUNDS; round++) {
            double[] sum = new double[factor.length];
            double[] base = new double[factor.length];
            double allHours = 0;
            double allBase = 0;
            for (int line = 0; line < hours.length; line++) {
                if (jobs.judged(line)) {
                    sum[type(line)] += hours[line];
                    base[type(line)] += quoted[line];
                    allHours += hours[line];
                    allBase += quoted[line];
                }
            }
            for (int type = 0; type < factor.length; type++) {
                double prior = PRIOR_JOBS * book(type);
                factor[type] = (sum[type] + prior * allHours / allBase) / (base[type] + prior);
            }
            hours = deal(line -> {
                double mean = factor[type(line)] * quoted[line];
                return Math.max(mean - labelled(line), 0.05 * mean);
            });
        }
        return hours;
    }

    /** With expected hours and spread of every line known, and that a labelled line has all its hours labelled. */
    double[] oracle(LineTruth[] truth, double[] spread) {
        double[] hours = new double[jobs.size()];
        for (int ticket = 0; ticket + 1 < starts.length; ticket++) {
            double mean = 0;
            double variance = 0;
            double whole = 0;
            for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
                hours[line] = labelled(line);
                whole += jobs.splitSeconds(line) / 3_600.0;
                mean += bare(line) ? expected(truth, line) : 0;
                variance += bare(line) ? square(spread[line] * expected(truth, line)) : 0;
            }
            double dealt = 0;
            for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
                dealt += part(truth, spread, line, whole, mean, variance);
            }
            for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
                double part = part(truth, spread, line, whole, mean, variance);
                hours[line] += dealt > 0 ? whole * part / dealt : jobs.splitSeconds(line) / 3_600.0;
            }
        }
        return hours;
    }

    private double part(LineTruth[] truth, double[] spread, int line, double whole, double mean, double variance) {
        if (!bare(line) || expected(truth, line) == 0) {
            return 0;
        }
        double own = square(spread[line] * expected(truth, line));
        double beyond = variance > 0 ? own / variance * (whole - mean) : 0;
        return Math.max(0.05 * expected(truth, line), expected(truth, line) + beyond);
    }

    private boolean bare(int line) {
        return takes[line] && jobs.labelledSeconds(line) == 0;
    }

    private static double expected(LineTruth[] truth, int line) {
        return truth[line] == null ? 0 : truth[line].expectedSeconds() / 3_600.0;
    }

    private static double square(double x) {
        return x * x;
    }

    private double labelled(int line) {
        return jobs.labelledSeconds(line) / 3_600.0;
    }

    private int type(int line) {
        return jobs.ledger().lines().repairType(line);
    }

    private double book(int type) {
        return jobs.ledger()
                .books()
                .type(jobs.ledger().repairTypes().name(type), jobs.ledger().asOf())
                .map(row -> row.bookSeconds() / 3_600.0)
                .orElse(1.0);
    }

    private double[] deal(IntToDoubleFunction weight) {
        double[] hours = new double[jobs.size()];
        for (int ticket = 0; ticket + 1 < starts.length; ticket++) {
            double whole = 0;
            double sum = 0;
            for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
                whole += jobs.splitSeconds(line) / 3_600.0;
                sum += takes[line] ? weight.applyAsDouble(line) : 0;
            }
            for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
                double part = takes[line] && sum > 0 ? weight.applyAsDouble(line) / sum : 0;
                hours[line] = labelled(line) + (sum > 0 ? whole * part : jobs.splitSeconds(line) / 3_600.0);
            }
        }
        return hours;
    }
}
