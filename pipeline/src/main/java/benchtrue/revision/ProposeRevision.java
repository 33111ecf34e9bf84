package benchtrue.revision;

import benchtrue.costing.CostedLines;
import benchtrue.findings.Driver;
import benchtrue.findings.Findings;
import benchtrue.findings.LeftOut;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Slowing;
import benchtrue.findings.UnreadShares;
import benchtrue.findings.UsualJob;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

/** Drafts the next price book within the guard rails (methods, section 8). */
public final class ProposeRevision {
    /**
     * Returns one row for each repair type of the newest adopted book.
     *
     * @param decided what the owner decided already, which is not asked again
     */
    public Revision propose(CostedLines costs, Findings findings, Settings settings, AlreadyDecided decided) {
        Ledger ledger = costs.jobs().ledger();
        BackTest backTest = new TryPastJobs(costs.jobs(), settings).test();
        Map<Integer, LeftOut> leftOut =
                findings.leftOut().stream().collect(Collectors.toMap(LeftOut::repairType, Function.identity()));
        PastJobs past = new PastJobs(costs.jobs(), findings.surelyOwn().rows(), findings.pace());
        Taken taken = Taken.of(costs.jobs(), findings, leftOut);
        List<FitCurve> fits = FitCurves.of(taken.measured(), Map.of());
        double[] rounding = findings.reach().middle();
        UnreadShares unread = UnreadShares.of(ledger, settings, findings.repairs(), findings.reach());
        PriceBook against = Revision.against(decided.coming(), ledger);
        List<ProposedChange> changes = new ArrayList<>();
        for (RepairFinding finding : findings.repairs()) {
            String key = ledger.repairTypes().name(finding.repairType());
            against.type(key).ifPresent(type -> {
                Policy policy = settings.policy().of(type.family());
                JobTotals all = taken.totals()[finding.repairType()];
                double atPace = rounding[finding.repairType()];
                boolean sized = findings.sizes().stream().anyMatch(size -> size.repairType() == finding.repairType());
                Target drafted = Target.of(
                        all.atPace(atPace),
                        atPace * taken.once()[finding.repairType()],
                        fits.get(finding.repairType()).times(atPace),
                        policy,
                        settings.figures());
                Target own = sized ? drafted.forAllSizes() : drafted;
                Target simpler = own.orOf(
                        backTest.used(),
                        past.yearlyAverage(finding.repairType()) * atPace * taken.others(finding.repairType(), leftOut),
                        settings.figures());
                Row row = new Row(
                        type,
                        today(ledger, type),
                        finding,
                        decided,
                        unread.higher(finding.repairType()),
                        unread.lower(finding.repairType()));
                changes.add(row.change(
                        own.careful(unread.careful(finding.repairType(), own.factor()), settings.figures()),
                        simpler.careful(unread.careful(finding.repairType(), simpler.factor()), settings.figures()),
                        backTest.used(),
                        past,
                        costs.shopRate(),
                        settings,
                        ledger.asOf()));
            });
        }
        return new Revision(
                changes,
                FollowLastChange.follow(costs.jobs(), settings.figures()),
                backTest,
                DraftSurcharges.of(findings.drivers(), costs.shopRate(), settings),
                DraftConditions.of(findings, ledger, against, costs.shopRate(), settings),
                backTest.used() == PastMethod.PROPOSAL
                        ? DraftSizeLines.of(costs, findings, settings, taken, decided)
                        : List.of(),
                decided.coming());
    }

    /**
     * What the jobs of each repair took.
     *
     * @param totals by code; null for a repair without a finding
     * @param once by code, hours per quoted hour without putting right; NaN without jobs
     * @param measured jobs that are no copies, without those of before a repair got slower and those left out for a cause
     */
    record Taken(JobTotals[] totals, double[] once, FitCurves.Measured measured) {
        private static Taken of(JobLines jobs, Findings findings, Map<Integer, LeftOut> leftOut) {
            double[] pace = findings.pace().corrections(jobs).factor();
            Map<Integer, UsualJob> usual =
                    findings.usualJobs().stream().collect(Collectors.toMap(UsualJob::repairType, Function.identity()));
            Map<Integer, Slowing> slower = findings.drift().slowings().stream()
                    .collect(Collectors.toMap(Slowing::repairType, Function.identity()));
            JobTotals[] totals = new JobTotals[pace.length];
            double[] once = new double[pace.length];
            Arrays.fill(once, Double.NaN);
            double[] typical = once.clone();
            for (RepairFinding finding : findings.repairs()) {
                int type = finding.repairType();
                double load = pace[type] * findings.measuredLoad(finding);
                Optional<LeftOut> left = Optional.ofNullable(leftOut.get(type));
                Optional<UsualJob> job = Optional.ofNullable(usual.get(type));
                JobTotals all = JobTotals.of(finding, Optional.ofNullable(slower.get(type)), load);
                totals[type] = left.map(all::without).orElse(all);
                Optional<UsualJob> counted =
                        left.flatMap(out -> job.map(out::of)).or(() -> job);
                once[type] = Target.once(totals[type], counted);
                typical[type] = counted.map(UsualJob::typical).orElse(Double.NaN);
            }
            Set<Integer> apart = leftOut.values().stream()
                    .flatMap(left -> left.lines().stream())
                    .collect(Collectors.toSet());
            IntPredicate counts = line -> !apart.contains(line) && newest(jobs, line, totals);
            int[] own =
                    Arrays.stream(findings.surelyOwn().rows()).filter(counts).toArray();
            int[] dealt = Arrays.stream(findings.surelyOwn().dealt(jobs))
                    .filter(counts)
                    .toArray();
            return new Taken(totals, once, new FitCurves.Measured(jobs, own, dealt, findings.pace(), typical));
        }

        /** Returns what jobs without causes take over what all take. */
        private double others(int type, Map<Integer, LeftOut> leftOut) {
            return leftOut.containsKey(type) ? leftOut.get(type).load() : 1;
        }

        private static boolean newest(JobLines jobs, int line, JobTotals[] totals) {
            JobTotals total = totals[jobs.ledger().lines().repairType(line)];
            int opened = jobs.ledger().tickets().opened(jobs.ledger().lines().ticket(line));
            return total == null || !Absent.has(total.since()) || opened >= total.since();
        }
    }

    private static RepairType today(Ledger ledger, RepairType type) {
        return ledger.books().type(type.repairType(), ledger.asOf()).orElse(type);
    }

    /**
     * One row of the draft.
     *
     * @param type its repair in the book that the draft stands against
     * @param today the same in the book in force, against which its jobs are reckoned
     * @param sureDown what a load below 1 may be too low by
     * @param sureUp what a load above 1 may be too high by
     */
    private record Row(
            RepairType type,
            RepairType today,
            RepairFinding finding,
            AlreadyDecided decided,
            double sureDown,
            double sureUp) {
        ProposedChange change(
                Target own, Target target, PastMethod used, PastJobs past, long shopRate, Settings settings, int asOf) {
            Target drafted = used == PastMethod.KEEP_THE_BOOK ? target : target.against(todayOverDrafted());
            Optional<GuardRails> settled = decided.rails(type, asOf, settings);
            GuardRails railed =
                    settled.orElseGet(() -> GuardRails.of(type, finding.verdict(), drafted.factor(), settings));
            long price = Price.of(type, railed.seconds(), shopRate, settings.policy());
            double todayHours = Hours.of(today.bookSeconds());
            double jobsAYear = todayHours > 0 ? past.yearlyHours(finding.repairType()) / todayHours : 0;
            return new ProposedChange(
                    finding.repairType(),
                    type.bookSeconds(),
                    railed.seconds(),
                    type.bookLabour(),
                    price,
                    past.within(finding.repairType(), perToday(type.bookSeconds())),
                    past.within(finding.repairType(), perToday(railed.seconds())),
                    (long) StrictMath.rint((price - type.bookLabour()) * jobsAYear),
                    finding.lines() == 0 ? "no finished job yet" : target.basis(),
                    String.join("; ", railed.reasons()),
                    grounds(
                            own.against(todayOverDrafted()),
                            used == PastMethod.PROPOSAL ? Double.NaN : drafted.factor(),
                            jobsAYear,
                            settings,
                            settled.isPresent()
                                    ? ProposalInputs.Shortening.NO_CHANGE
                                    : GuardRails.shortening(type, finding.verdict())),
                    finding.verdict());
        }

        private double todayOverDrafted() {
            return today.bookSeconds() == type.bookSeconds() || type.bookSeconds() <= 0
                    ? 1
                    : Hours.of(today.bookSeconds()) / Hours.of(type.bookSeconds());
        }

        /** Returns hours per hour of the book in force, against which jobs are reckoned. */
        private double perToday(long seconds) {
            return today.bookSeconds() > 0 ? Hours.of(seconds) / Hours.of(today.bookSeconds()) : Double.NaN;
        }

        private ProposalInputs grounds(
                Target own, double simpler, double jobsAYear, Settings settings, ProposalInputs.Shortening shortening) {
            return new ProposalInputs(
                    own.factor(),
                    simpler,
                    own.mean(),
                    own.fits(),
                    todayOverDrafted(),
                    sureDown,
                    sureUp,
                    jobsAYear,
                    GuardRails.lowest(type, settings.policy()),
                    GuardRails.highest(type, settings.policy()),
                    shortening);
        }
    }

    /**
     * Drafts surcharge lines for traits that surely make a family of repairs longer: told apart from chance over all traits and
     * families together, with an interval wholly above zero. The owner decides; nothing of it enters the drafted book by itself.
     */
    static final class DraftSurcharges {
        private DraftSurcharges() {}

        /** Returns the lines, in the order of the drivers. */
        static List<SurchargeLine> of(List<Driver> drivers, long shopRate, Settings settings) {
            return drivers.stream()
                    .filter(driver -> driver.extraLower() > 0 && driver.adjustedP() <= settings.falseDiscovery())
                    .map(driver -> line(driver, shopRate, settings))
                    .filter(line -> line.seconds() > 0)
                    .toList();
        }

        private static SurchargeLine line(Driver driver, long shopRate, Settings settings) {
            long seconds = HourGrid.nearest(driver.extraHours() * Hours.SECONDS);
            return new SurchargeLine(
                    driver.family(),
                    driver.trait(),
                    driver.jobsWith(),
                    seconds,
                    Price.ofHours(driver.family(), seconds, shopRate, settings.policy()),
                    driver.extraLower(),
                    driver.extraUpper());
        }
    }

    /** The price that goes with proposed hours: hours x rate, rounded, never below the least charge. */
    static final class Price {
        private Price() {}

        /**
         * Returns today's price where the hours stay; longer hours never cost less than today, shorter never more.
         *
         * @param shopRate price of a bench hour where the repair's family has none of its own
         */
        static long of(RepairType type, long seconds, long shopRate, Policy policy) {
            if (seconds == type.bookSeconds()) {
                return type.bookLabour();
            }
            long price = ofHours(type.family(), seconds, shopRate, policy);
            long sameWay = seconds > type.bookSeconds()
                    ? Math.max(price, type.bookLabour())
                    : Math.min(price, type.bookLabour());
            return Math.max(sameWay, Absent.firstOf(type.leastLabour(), 0));
        }

        /** Returns what hours of a family's work cost, by its rate and rounding. */
        static long ofHours(String family, long seconds, long shopRate, Policy policy) {
            return rounded(
                    Money.perHour(policy.rate(family, shopRate), seconds),
                    policy.of(family).priceRounding());
        }

        /** Returns the nearest multiple; half-way goes up. */
        private static long rounded(long price, long multiple) {
            return Math.floorDiv(price + multiple / 2, multiple) * multiple;
        }
    }
}
