package benchtrue.revision;

import benchtrue.costing.CostedLines;
import benchtrue.findings.Driver;
import benchtrue.findings.Findings;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Slowing;
import benchtrue.findings.UnreadShares;
import benchtrue.findings.UsualJob;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Drafts the next price book within the guard rails (methods, section 8). */
public final class ProposeRevision {
    /**
     * Returns one row for each repair type of today's book.
     *
     * @param kept what the owner left as it is, each until a day before which nothing is proposed
     */
    public Revision propose(CostedLines costs, Findings findings, Settings settings, List<Kept> kept) {
        PastJobs past = new PastJobs(costs.jobs(), findings.pace());
        double[] pace = findings.pace().corrections(costs.jobs()).factor();
        Ledger ledger = costs.jobs().ledger();
        BackTest backTest = new TryPastJobs(costs.jobs(), settings).test();
        Map<Integer, UsualJob> usual =
                findings.usualJobs().stream().collect(Collectors.toMap(UsualJob::repairType, Function.identity()));
        Map<String, Kept> still = kept.stream()
                .filter(keep -> keep.until() > ledger.asOf())
                .collect(Collectors.toMap(Kept::repairType, Function.identity()));
        Map<Integer, Slowing> slower = findings.drift().slowings().stream()
                .collect(Collectors.toMap(Slowing::repairType, Function.identity()));
        UnreadShares unread = UnreadShares.of(ledger, settings, findings.repairs());
        List<ProposedChange> changes = new ArrayList<>();
        for (RepairFinding finding : findings.repairs()) {
            Optional<RepairType> today = ledger.books()
                    .inForce(ledger.asOf())
                    .type(ledger.repairTypes().name(finding.repairType()));
            Optional<Slowing> slowing = Optional.ofNullable(slower.get(finding.repairType()));
            Optional<UsualJob> job = Optional.ofNullable(usual.get(finding.repairType()));
            today.ifPresent(type -> {
                Policy policy = settings.policy().of(type.family());
                Target target = Target.of(
                                JobTotals.of(finding, slowing, pace[finding.repairType()]),
                                job,
                                past,
                                policy,
                                settings.figures())
                        .orOf(backTest.used(), past, finding.repairType(), settings.figures());
                Target sure = target.careful(unread.careful(finding.repairType(), target.factor()));
                changes.add(
                        change(type, finding, sure, past, costs.shopRate(), settings, still.get(type.repairType())));
            });
        }
        return new Revision(
                changes,
                FollowLastChange.follow(costs.jobs(), settings.figures()),
                backTest,
                DraftSurcharges.of(findings.drivers(), costs.shopRate(), settings));
    }

    private static ProposedChange change(
            RepairType type,
            RepairFinding finding,
            Target target,
            PastJobs past,
            long shopRate,
            Settings settings,
            Kept kept) {
        GuardRails railed = kept == null
                ? GuardRails.of(type, finding.verdict(), target.factor(), settings)
                : GuardRails.kept(type, kept, settings);
        long price = Price.of(type, railed.seconds(), shopRate, settings.policy());
        double bookHours = Hours.of(type.bookSeconds());
        double after = bookHours > 0 ? Hours.of(railed.seconds()) / bookHours : Double.NaN;
        double jobsAYear = bookHours > 0 ? past.yearlyHours(finding.repairType()) / bookHours : 0;
        return new ProposedChange(
                finding.repairType(),
                type.bookSeconds(),
                railed.seconds(),
                type.bookLabour(),
                price,
                past.within(finding.repairType(), 1),
                past.within(finding.repairType(), after),
                (long) StrictMath.rint((price - type.bookLabour()) * jobsAYear),
                finding.lines() == 0 ? "no finished job yet" : target.basis(),
                String.join("; ", railed.reasons()),
                grounds(type, finding, target, jobsAYear, settings, kept));
    }

    private static ProposalInputs grounds(
            RepairType type, RepairFinding finding, Target target, double jobsAYear, Settings settings, Kept kept) {
        return new ProposalInputs(
                target.factor(),
                target.mean(),
                target.usual(),
                target.spread(),
                jobsAYear,
                GuardRails.lowest(type, settings.policy()),
                GuardRails.highest(type, settings.policy()),
                kept == null ? GuardRails.shortening(type, finding.verdict()) : ProposalInputs.Shortening.NO_CHANGE);
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
