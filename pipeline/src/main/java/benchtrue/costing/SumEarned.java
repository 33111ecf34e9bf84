package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import benchtrue.shop.Months;
import java.util.ArrayList;
import java.util.List;

/** Sums the jobs finished in each month, and tells why one month's margin differs from another's. */
final class SumEarned {
    private final CostedLines costs;
    private final JobLines jobs;
    private final MarginBasis basis;
    private final Earned earned;
    private final Standards standards;
    private final MonthSpan span;
    private final TypeMoney[] totals;
    private final Month[] months;

    /** What a month's jobs came to beside the totals by type. */
    private static final class Month {
        private int leftOut;
        private long standardSeconds;
        private long quotedSeconds;
        private long partsRevenue;
        private long partsCost;
    }

    SumEarned(CostedLines costs, MarginBasis basis, Earned earned) {
        this.costs = costs;
        this.basis = basis;
        this.earned = earned;
        jobs = costs.jobs();
        standards = new Standards(jobs);
        span = MonthSpan.ofEarned(earned, jobs.size());
        totals = new TypeMoney[span.months()];
        months = new Month[span.months()];
        for (int i = 0; i < totals.length; i++) {
            totals[i] = TypeMoney.none(jobs.ledger().repairTypes().size());
            months[i] = new Month();
        }
        for (int line = 0; line < jobs.size(); line++) {
            if (earned.is(line)) {
                add(line, Months.of(earned.day(line)) - span.first());
            }
        }
    }

    private void add(int line, int month) {
        if (!basis.knownOf(costs, line)) {
            months[month].leftOut++;
            return;
        }
        TypeMoney sum = totals[month];
        int type = jobs.ledger().lines().repairType(line);
        long partsRevenue = Absent.firstOf(costs.partsRevenue(line), 0);
        long partsCost = Absent.firstOf(costs.partsCost(line), 0);
        sum.lines()[type]++;
        sum.standardSeconds()[type] += standards.today(line);
        sum.actualSeconds()[type] += jobs.actualSeconds(line);
        sum.labourRevenue()[type] += costs.labourRevenue(line);
        sum.labourCost()[type] += Absent.firstOf(costs.labourCost(line), 0);
        sum.partsMargin()[type] += basis.parts() ? partsRevenue - partsCost : 0;
        sum.overheadCost()[type] += Absent.firstOf(costs.overheadCost(line), 0);
        months[month].standardSeconds += standards.then(line);
        months[month].quotedSeconds += standards.quoted(line);
        months[month].partsRevenue += partsRevenue;
        months[month].partsCost += partsCost;
    }

    /** Returns the months from the first to the last with a finished job. */
    List<EarnedMonth> months(PartShares parts) {
        StandardWages wages = new StandardWages(span, totals);
        MaterialVariances materials = materials(parts);
        List<EarnedMonth> rows = new ArrayList<>();
        for (int i = 0; i < totals.length; i++) {
            rows.add(month(i, wages, materials));
        }
        return rows;
    }

    /** Returns what each month's jobs used in parts against what a standard allows. */
    MaterialVariances materials(PartShares parts) {
        return new MaterialVariances(costs, basis, earned, span, totals, parts);
    }

    private EarnedMonth month(int i, StandardWages wages, MaterialVariances materials) {
        TypeMoney sum = totals[i];
        long hours = TypeMoney.sum(sum.actualSeconds());
        long labour = TypeMoney.sum(sum.labourCost());
        int month = span.first() + i;
        return new EarnedMonth(
                month,
                (int) TypeMoney.sum(sum.lines()),
                months[i].leftOut,
                months[i].standardSeconds,
                months[i].quotedSeconds,
                hours,
                TypeMoney.sum(sum.labourRevenue()),
                months[i].partsRevenue,
                basis.wages() ? labour : Absent.AMOUNT,
                basis.parts() ? months[i].partsCost : Absent.AMOUNT,
                basis.overheads() ? TypeMoney.sum(sum.overheadCost()) : Absent.AMOUNT,
                basis.wages() ? wages.variance(month, labour, hours, months[i].standardSeconds) : CostVariance.UNKNOWN,
                basis.parts() ? materials.of(month) : CostVariance.UNKNOWN,
                basis.parts() ? materials.withoutStandard(month) : Absent.AMOUNT);
    }

    /** Returns, for each month, why its margin differs from the one so many months before; empty without a wage list. */
    List<MarginBridge> bridges(int monthsBefore) {
        List<MarginBridge> bridges = new ArrayList<>();
        for (int i = monthsBefore; i < totals.length && basis.wages(); i++) {
            int from = span.first() + i - monthsBefore;
            bridges.add(MarginBridge.between(from, totals[i - monthsBefore], span.first() + i, totals[i])
                    .on(basis));
        }
        return bridges;
    }

    /** The wage, with payroll on-costs, that a bench hour is reckoned at for a year: what it cost on average in the year before. */
    static final class StandardWages {
        private final MonthSpan span;
        private final TypeMoney[] totals;
        private final StandardYears years;

        StandardWages(MonthSpan span, TypeMoney[] totals) {
            this.span = span;
            this.totals = totals;
            years = new StandardYears(span, totals);
        }

        /** Returns the standard wage of a year, absent where no job has hours. */
        long hourly(int year) {
            int basis = years.basis(year);
            long cost = 0;
            long seconds = 0;
            for (int month = Math.max(basis * 12, span.first());
                    month <= Math.min(basis * 12 + 11, span.last());
                    month++) {
                cost = Math.addExact(cost, TypeMoney.sum(totals[month - span.first()].labourCost()));
                seconds += TypeMoney.sum(totals[month - span.first()].actualSeconds());
            }
            return Rate.hourly(cost, seconds);
        }

        /** Returns the rate and efficiency variances of a month's jobs. */
        CostVariance variance(int month, long actualCost, long actualSeconds, long allowedSeconds) {
            long rate = hourly(Months.year(month));
            return Absent.has(rate)
                    ? CostVariance.of(
                            actualCost, Money.perHour(rate, actualSeconds), Money.perHour(rate, allowedSeconds))
                    : CostVariance.UNKNOWN;
        }
    }
}
