package benchtrue.findings;

import benchtrue.costing.CostedLines;
import benchtrue.hours.UnquotedWork;
import benchtrue.shop.Hours;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/** Sums the hours that went into repair types their tickets never quoted. */
final class SumUnquotedWork {
    private SumUnquotedWork() {}

    /** Returns one total a repair type, the most money first. */
    static List<UnquotedTotal> of(CostedLines costs) {
        LastYear year = LastYear.of(costs.jobs());
        TreeMap<Integer, List<UnquotedWork>> byType = new TreeMap<>();
        for (UnquotedWork work : costs.jobs().unquoted()) {
            byType.computeIfAbsent(work.repairType(), t -> new ArrayList<>()).add(work);
        }
        List<UnquotedTotal> totals = new ArrayList<>();
        byType.forEach((type, works) -> totals.add(total(type, works, year, costs.shopRate())));
        totals.sort(Comparator.comparingLong(UnquotedTotal::annualMoney)
                .reversed()
                .thenComparing(UnquotedTotal::repairType));
        return totals;
    }

    private static UnquotedTotal total(int type, List<UnquotedWork> works, LastYear year, long shopRate) {
        TreeSet<Integer> tickets = new TreeSet<>();
        long seconds = 0;
        long lastYear = 0;
        for (UnquotedWork work : works) {
            tickets.add(work.ticket());
            seconds += work.seconds();
            lastYear += year.holds(work.ticket()) ? work.seconds() : 0;
        }
        double annualHours = Hours.of(lastYear) * year.scale();
        return new UnquotedTotal(
                type, tickets.size(), seconds, annualHours, (long) StrictMath.rint(annualHours * shopRate));
    }
}
