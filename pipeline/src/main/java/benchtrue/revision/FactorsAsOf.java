package benchtrue.revision;

import benchtrue.findings.ShopPace;
import benchtrue.findings.StudyUsualJobs;
import benchtrue.findings.Verdict;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.RepairType;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What each method would have said of every repair type on an earlier day: hours per hour of the book of that day, by code. 1
 * where a method has nothing to go by.
 */
final class FactorsAsOf {
    /** Tickets with a repair type below which nothing is changed. */
    private static final int ENOUGH_TICKETS = 5;

    private final Ledger known;
    private final Settings settings;
    private final JobTotals[] taken;
    private final Map<PastMethod, double[]> raw = new EnumMap<>(PastMethod.class);
    private final Map<PastMethod, double[]> railed = new EnumMap<>(PastMethod.class);

    private FactorsAsOf(Ledger known, Settings settings) {
        this.known = known;
        this.settings = settings;
        JobLines jobs = new SplitHours().split(known, settings);
        StudyUsualJobs.Studied studied = new StudyUsualJobs().study(jobs);
        PastJobs past = new PastJobs(jobs, ShopPace.STEADY);
        PastJobs paced = studied.pace().sure() ? new PastJobs(jobs, studied.pace()) : past;
        double[] today = studied.pace().corrections(jobs).factor();
        taken = JobTotals.of(jobs);
        int types = taken.length;
        for (PastMethod method : PastMethod.values()) {
            raw.put(method, new double[types]);
            railed.put(method, new double[types]);
        }
        for (int type = 0; type < types; type++) {
            Target target = Target.of(
                    taken[type].atPace(today[type] * studied.measuredPerAll()[type]),
                    Optional.of(studied.usual().get(type)),
                    paced,
                    policy(known, type, settings.policy()),
                    settings.figures());
            put(PastMethod.PROPOSAL, type, target.factor());
            put(PastMethod.KEEP_THE_BOOK, type, 1);
            put(PastMethod.PLAIN_AVERAGE, type, past.yearlyAverage(type));
            put(PastMethod.UNPOOLED_MEDIAN, type, past.quantile(type, 0.5));
        }
    }

    /** Returns the policy of a repair type, by its code, in the family that a ledger's price book has it in. */
    static Policy policy(Ledger ledger, int type, Policy shop) {
        return ledger.books()
                .type(ledger.repairTypes().name(type), ledger.asOf())
                .map(row -> shop.of(row.family()))
                .orElse(shop);
    }

    /** Returns the factors by what a ledger knows. */
    static FactorsAsOf of(Ledger known, Settings settings) {
        return new FactorsAsOf(known, settings);
    }

    private void put(PastMethod method, int type, double factor) {
        double found = Double.isFinite(factor) ? factor : 1;
        raw.get(method)[type] = found;
        railed.get(method)[type] = known.books()
                .inForce(known.asOf())
                .type(known.repairTypes().name(type))
                .filter(row -> row.bookSeconds() > 0)
                .map(row -> railed(row, type, found))
                .orElse(1.0);
    }

    private double railed(RepairType row, int type, double factor) {
        Verdict verdict = taken[type].tickets() < ENOUGH_TICKETS ? Verdict.TOO_FEW_JOBS : Verdict.ON_THE_MARK;
        return GuardRails.of(row, verdict, factor, settings).seconds() / (double) row.bookSeconds();
    }

    /** Returns a method's factors before any guard rail. */
    double[] raw(PastMethod method) {
        return raw.get(method);
    }

    /** Returns a method's factors within the guard rails, rounded as a book is. */
    double[] railed(PastMethod method) {
        return railed.get(method);
    }

    /** Returns by code the hours of the book then per hour of another day's book; NaN where the type stood in no book. */
    double[] bookThenPer(PriceBooks other, int day) {
        double[] scale = new double[taken.length];
        Arrays.setAll(scale, type -> seconds(known.books(), type, known.asOf()) / seconds(other, type, day));
        return scale;
    }

    private double seconds(PriceBooks books, int type, int day) {
        return books.type(known.repairTypes().name(type), day)
                .map(row -> (double) row.bookSeconds())
                .filter(seconds -> seconds > 0)
                .orElse(Double.NaN);
    }
}
