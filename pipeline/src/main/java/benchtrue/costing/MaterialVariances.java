package benchtrue.costing;

import benchtrue.shop.Absent;
import benchtrue.shop.Months;
import benchtrue.shop.QuotedLines;

/**
 * What a month's jobs used in parts against what a standard allows: the average price of each part, and the average quantity
 * for a job of each repair type, of the year that sets the standard. A part or a repair type which that year lacks has no
 * standard; what was spent there stands apart.
 */
final class MaterialVariances {
    private final MonthSpan span;
    private final StandardYears years;
    private final QuotedLines lines;
    private final int firstYear;
    /** By year: cost and quantity of each part on finished jobs. */
    private final long[][] partCost;

    private final long[][] partQuantity;
    /** By year and repair type: jobs, and what their parts cost at standard prices. */
    private final long[][] jobs;

    private final long[][] standardCost;
    private final long[] spent;
    private final long[] atStandard;
    private final long[] allowed;
    private final long[] withoutStandard;

    MaterialVariances(
            CostedLines costs,
            MarginBasis basis,
            Earned earned,
            MonthSpan span,
            TypeMoney[] totals,
            PartShares shares) {
        this.span = span;
        years = new StandardYears(span, totals);
        lines = costs.jobs().ledger().lines();
        firstYear = Months.year(span.first());
        int years = span.months() == 0 ? 0 : Months.year(span.last()) - firstYear + 1;
        int parts = costs.jobs().ledger().parts().size();
        int types = costs.jobs().ledger().repairTypes().size();
        partCost = new long[years][parts];
        partQuantity = new long[years][parts];
        jobs = new long[years][types];
        standardCost = new long[years][types];
        spent = new long[span.months()];
        atStandard = new long[span.months()];
        allowed = new long[span.months()];
        withoutStandard = new long[span.months()];
        int[] month = months(costs, basis, earned, shares);
        setPrices(shares, month);
        setQuantities(shares, month, totals);
        compare(shares, month);
        allow(totals);
    }

    /** Returns the month of each share, or absent where its line is not counted. */
    private static int[] months(CostedLines costs, MarginBasis basis, Earned earned, PartShares shares) {
        int[] month = new int[shares.size()];
        for (int share = 0; share < month.length; share++) {
            int line = shares.line()[share];
            month[share] = earned.is(line) && basis.knownOf(costs, line) ? Months.of(earned.day(line)) : Absent.DAY;
        }
        return month;
    }

    private void setPrices(PartShares shares, int[] month) {
        for (int share = 0; share < month.length; share++) {
            if (Absent.has(month[share])) {
                int year = Months.year(month[share]) - firstYear;
                partCost[year][shares.part()[share]] += shares.cost()[share];
                partQuantity[year][shares.part()[share]] += shares.quantity()[share];
            }
        }
    }

    private void setQuantities(PartShares shares, int[] month, TypeMoney[] totals) {
        for (int i = 0; i < totals.length; i++) {
            int year = Months.year(span.first() + i) - firstYear;
            for (int type = 0; type < totals[i].types(); type++) {
                jobs[year][type] += totals[i].lines()[type];
            }
        }
        for (int share = 0; share < month.length; share++) {
            if (Absent.has(month[share])) {
                int year = Months.year(month[share]) - firstYear;
                long cost = atPriceOf(year, shares, share);
                standardCost[year][lines.repairType(shares.line()[share])] += Absent.firstOf(cost, 0);
            }
        }
    }

    private void compare(PartShares shares, int[] month) {
        for (int share = 0; share < month.length; share++) {
            if (Absent.has(month[share])) {
                int i = month[share] - span.first();
                int basis = basis(month[share]);
                long cost = atPriceOf(basis, shares, share);
                boolean standard = Absent.has(cost) && jobs[basis][lines.repairType(shares.line()[share])] > 0;
                if (standard) {
                    spent[i] += shares.cost()[share];
                    atStandard[i] += cost;
                } else {
                    withoutStandard[i] += shares.cost()[share];
                }
            }
        }
    }

    private void allow(TypeMoney[] totals) {
        for (int i = 0; i < totals.length; i++) {
            int basis = basis(span.first() + i);
            for (int type = 0; type < totals[i].types(); type++) {
                long done = totals[i].lines()[type];
                if (done > 0 && jobs[basis][type] > 0) {
                    allowed[i] += Rate.scaled(standardCost[basis][type], done, jobs[basis][type]);
                }
            }
        }
    }

    private int basis(int month) {
        return years.basis(Months.year(month)) - firstYear;
    }

    /** Returns a share's quantity at a year's price of its part, absent where that year used none. */
    private long atPriceOf(int year, PartShares shares, int share) {
        int part = shares.part()[share];
        return partQuantity[year][part] > 0
                ? Rate.scaled(partCost[year][part], shares.quantity()[share], partQuantity[year][part])
                : Absent.AMOUNT;
    }

    /** Returns the price and quantity variances of a month. */
    CostVariance of(int month) {
        int i = month - span.first();
        return CostVariance.of(spent[i], atStandard[i], allowed[i]);
    }

    /** Returns what a month's jobs spent on parts that no standard knows. */
    long withoutStandard(int month) {
        return withoutStandard[month - span.first()];
    }

    /** Returns what the standard allows for a month's jobs. */
    long allowed(int month) {
        return allowed[month - span.first()];
    }
}
