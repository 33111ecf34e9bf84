package benchtrue.revision;

import benchtrue.findings.FindQuoteSizes;
import benchtrue.findings.QuoteSizes;
import benchtrue.findings.ShopPace;
import benchtrue.findings.StudyUsualJobs;
import benchtrue.findings.UsualJob;
import benchtrue.findings.Verdict;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.PriceBooks;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What each method would have said of every repair type on an earlier day: hours per hour of the book of that day, by code. 1
 * where a method has nothing to go by. All go by hours as they were logged, and so do the jobs that they are scored on: what rounding
 * and wrong tickets do to a log stands on both sides, but for a method that goes by no log.
 */
final class FactorsAsOf {
    /** Tickets with a repair type below which nothing is changed. */
    private static final int ENOUGH_TICKETS = 5;

    private final Ledger known;
    private final Settings settings;
    private final JobTotals[] taken;
    private final SizedShares sized;
    private final Map<PastMethod, double[]> raw = new EnumMap<>(PastMethod.class);

    private FactorsAsOf(Ledger known, Settings settings) {
        this.known = known;
        this.settings = settings;
        JobLines jobs = new SplitHours().split(known, settings);
        StudyUsualJobs.Studied studied = new StudyUsualJobs().study(jobs);
        int[] own = studied.surelyOwn().rows();
        PastJobs past = new PastJobs(jobs, own, ShopPace.STEADY);
        double[] today = studied.pace().corrections(jobs).factor();
        taken = JobTotals.of(jobs);
        double[] once = new double[taken.length];
        Arrays.setAll(once, type -> {
            taken[type] = taken[type].atPace(today[type] * studied.measuredPerAll()[type]);
            return Target.once(taken[type], Optional.of(studied.usual().get(type)));
        });
        List<QuoteSizes> sizes = FindQuoteSizes.of(jobs, own, studied.pace());
        double[] typical =
                studied.usual().stream().mapToDouble(UsualJob::typical).toArray();
        int[] dealt = studied.surelyOwn().dealt(jobs);
        sized = SizedShares.of(new FitCurves.Measured(jobs, own, dealt, studied.pace(), typical), once, sizes);
        Arrays.stream(PastMethod.values()).forEach(method -> raw.put(method, new double[taken.length]));
        for (int type = 0; type < taken.length; type++) {
            Target target = Target.of(
                    taken[type],
                    sized.together()[type],
                    sized.fits().get(type),
                    policy(known, type, settings.policy()),
                    settings.figures());
            put(PastMethod.PROPOSAL, type, target.factor());
            put(PastMethod.SIZE_CURVE, type, target.factor());
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
        raw.get(method)[type] = Double.isFinite(factor) ? factor : 1;
    }

    /** Returns a method's factors before any guard rail. */
    Factors raw(PastMethod method) {
        double[] factors = raw.get(method);
        return switch (method) {
            case PROPOSAL -> (type, quoted) -> factors[type] * size(type, size -> size.inTwoLines(quoted));
            case SIZE_CURVE -> (type, quoted) -> factors[type] * size(type, size -> size.onTheCurve(quoted));
            default -> (type, quoted) -> factors[type];
        };
    }

    private double size(int type, ToDoubleFunction<QuoteSizes> part) {
        return sized.of(type).map(part::applyAsDouble).orElse(1.0);
    }

    /** Returns a method's factors within the guard rails, rounded as a book is. */
    Factors railed(PastMethod method) {
        Factors factors = raw(method);
        Map<Integer, Map<Double, Double>> known = new HashMap<>();
        return (type, quoted) -> known.computeIfAbsent(type, t -> new HashMap<>())
                .computeIfAbsent(factors.of(type, quoted), factor -> railed(type, factor));
    }

    private double railed(int type, double factor) {
        Verdict verdict = taken[type].tickets() < ENOUGH_TICKETS ? Verdict.TOO_FEW_JOBS : Verdict.ON_THE_MARK;
        return known.books()
                .inForce(known.asOf())
                .type(known.repairTypes().name(type))
                .filter(row -> row.bookSeconds() > 0)
                .map(row -> GuardRails.of(row, verdict, factor, settings).seconds() / (double) row.bookSeconds())
                .orElse(1.0);
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
