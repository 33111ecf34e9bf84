package benchtrue.revision;

import benchtrue.ShopSettings;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Ledger;
import benchtrue.reconcile.Reconcile;
import benchtrue.revision.TryPastJobs.Quarters;
import benchtrue.sample.LineTruth;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.TrueRatios;
import benchtrue.sample.Truth;
import benchtrue.sample.WriteSample;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The back-test of one invented shop beside what is true: every method's quotes held against the hours that each line truly
 * took, summed over the same cut-offs.
 *
 * @param raw by method, on true hours
 * @param railed the same within the guard rails and rounded
 * @param oracle what the shop's rule would ask for of other visits without number
 * @param overTwoYears by which share the proposal lost more per quoted hour than the oracle where two years of records or more stood behind
 *     it
 * @param estimate what the back-test itself says from the shop's records
 */
record PastTruth(
        Map<PastMethod, PastScore> raw,
        Map<PastMethod, PastScore> railed,
        PastScore oracle,
        double overTwoYears,
        BackTest estimate) {
    private static final int AS_OF = (int) LocalDate.of(2026, 10, 31).toEpochDay();

    static PastTruth of(SampleOptions options, Settings settings) {
        try {
            Truth truth = WriteSample.write(options);
            Ledger ledger = new Reconcile()
                    .reconcile(new ReadExports().read(options.folder(), settings), settings, AS_OF)
                    .ledger();
            return of(new SplitHours().split(ledger, settings), truth, TrueRatios.of(options), settings);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    private static PastTruth of(JobLines jobs, Truth truth, TrueRatios ratios, Settings settings) {
        TryPastJobs tried = new TryPastJobs(jobs, settings);
        List<LocalDate> days = tried.days();
        List<FactorsAsOf> factors = tried.factors(days);
        ScoredJobs scored = ScoredJobs.of(jobs);
        List<ScoredJobs.Job> all = trueJobs(jobs, truth);
        Map<PastMethod, PastScore> raw = new EnumMap<>(PastMethod.class);
        Map<PastMethod, PastScore> railed = new EnumMap<>(PastMethod.class);
        PastScore oracle = PastScore.NONE;
        double[] late = new double[2];
        for (int i = 0; i < days.size(); i++) {
            int from = (int) days.get(i).toEpochDay();
            int before = (int) days.get(i).plusMonths(Quarters.MONTHS).toEpochDay();
            List<ScoredJobs.Job> quoted = all.stream()
                    .filter(job -> job.quotedOn() >= from && job.quotedOn() < before)
                    .toList();
            FactorsAsOf then = factors.get(i);
            double[] bookThen =
                    then.bookThenPer(jobs.ledger().books(), jobs.ledger().asOf());
            double[] share = new double[jobs.ledger().repairTypes().size()];
            Arrays.fill(share, settings.policy().coverage());
            for (PastMethod method : PastMethod.values()) {
                raw.merge(method, scored.score(quoted, then.raw(method), bookThen, share), PastScore::plus);
                railed.merge(method, scored.score(quoted, then.railed(method), bookThen, share), PastScore::plus);
            }
            PastScore known = scored.score(quoted, oracle(jobs, ratios, bookThen, settings), bookThen, share);
            oracle = oracle.plus(known);
            if (!days.get(i).isBefore(days.get(0).plusYears(1))) {
                late[0] += scored.score(quoted, then.raw(PastMethod.PROPOSAL), bookThen, share)
                        .ratioLoss();
                late[1] += known.ratioLoss();
            }
        }
        return new PastTruth(raw, railed, oracle, late[0] / late[1] - 1, tried.test(days, factors));
    }

    private static Factors oracle(JobLines jobs, TrueRatios ratios, double[] bookThen, Settings settings) {
        double[] factors = new double[jobs.ledger().repairTypes().size()];
        Arrays.setAll(factors, type -> {
            String key = jobs.ledger().repairTypes().name(type);
            double fit = ratios.quantile(key, settings.policy().coverage());
            double mean = ratios.mean(key);
            return switch (settings.policy().rule()) {
                        case COVERAGE -> fit;
                        case BREAK_EVEN -> mean;
                        case LARGER -> StrictMath.max(fit, mean);
                    }
                    / bookThen[type];
        });
        return (type, quoted) -> factors[type];
    }

    private static List<ScoredJobs.Job> trueJobs(JobLines jobs, Truth truth) {
        Map<String, LineTruth> byKey = new HashMap<>();
        truth.lines().forEach(line -> byKey.put(line.ticket() + '/' + line.line(), line));
        List<ScoredJobs.Job> all = new ArrayList<>();
        Ledger ledger = jobs.ledger();
        for (int line = 0; line < jobs.size(); line++) {
            int ticket = ledger.lines().ticket(line);
            LineTruth known = byKey.get(
                    ledger.tickets().ticket(ticket) + '/' + ledger.lines().line(line));
            if (known != null && known.judged() && jobs.judged(line)) {
                int quotedOn = Absent.firstOf(
                        ledger.lines().quotedOn(line), ledger.tickets().opened(ticket));
                all.add(new ScoredJobs.Job(
                        quotedOn, new int[] {line}, Hours.of(known.workedSeconds()), ScoredJobs.Log.OF_THE_LINE));
            }
        }
        return all;
    }

    /**
     * Returns how much less a method lost per quoted hour than another on true hours, each job counting once, as a share of the
     * other's loss.
     */
    double better(PastMethod method, PastMethod than) {
        return 1 - raw.get(method).ratioLoss() / raw.get(than).ratioLoss();
    }

    /** Returns the same of hours, so that long jobs count for more. */
    double betterInHours(PastMethod method, PastMethod than) {
        return 1 - raw.get(method).loss() / raw.get(than).loss();
    }

    /** Returns how much less a method lost in hours within the guard rails. */
    double railedBetter(PastMethod method, PastMethod than) {
        return 1 - railed.get(method).loss() / railed.get(than).loss();
    }

    /** Returns what the back-test itself estimates. */
    double estimated(PastMethod method, PastMethod than) {
        return 1 - estimate.total(method).ratioLoss() / estimate.total(than).ratioLoss();
    }

    /** Returns how much more the proposal lost per quoted hour, each job counting once, than who knows the truth. */
    double beyondTheOracle() {
        return raw.get(PastMethod.PROPOSAL).ratioLoss() / oracle.ratioLoss() - 1;
    }

    /** Returns the same of hours. */
    double hoursBeyondTheOracle() {
        return raw.get(PastMethod.PROPOSAL).loss() / oracle.loss() - 1;
    }

    static Settings settings(Policy.Rule rule, double share) {
        Policy d = Policy.DEFAULTS;
        return new ShopSettings()
                .policy(new Policy(rule, share, d.largestStep(), d.priceRounding(), d.fallBack()))
                .build();
    }
}
