package benchtrue.findings;

import benchtrue.costing.CostedLines;
import benchtrue.hours.JobLines;
import benchtrue.statistics.Coverage;
import benchtrue.statistics.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * Counts how often one repair type is found on the bench while another is done (methods, section 3a). Kept are pairs seen
 * at least three times whose share is surely above that of tickets without the first type.
 */
final class FindFoundWork {
    private static final int SEEN = 3;
    private static final double LEVEL = 0.90;

    private final CostedLines costs;
    private final JobLines jobs;
    private final LastYear year;
    private final int types;
    private final int[] ticketsWith;
    private final int[] ticketsFinding;
    private final TreeMap<Integer, Pair> pairs = new TreeMap<>();
    private int tickets;

    /** Sums of one pair of types. */
    private static final class Pair {
        private int times;
        private double annualHours;
    }

    private FindFoundWork(CostedLines costs) {
        this.costs = costs;
        jobs = costs.jobs();
        year = LastYear.of(jobs);
        types = jobs.ledger().repairTypes().size();
        ticketsWith = new int[types];
        ticketsFinding = new int[types];
    }

    /** Returns the pairs, the most money first. */
    static List<FoundWork> of(CostedLines costs) {
        FindFoundWork counts = new FindFoundWork(costs);
        int tickets = costs.jobs().ledger().tickets().size();
        int[] starts = costs.jobs().ledger().lines().starts(tickets);
        for (int ticket = 0; ticket < tickets; ticket++) {
            counts.count(ticket, starts[ticket], starts[ticket + 1]);
        }
        return counts.kept();
    }

    private void count(int ticket, int from, int to) {
        List<Integer> first = new ArrayList<>(to - from);
        TreeMap<Integer, Double> found = new TreeMap<>();
        for (int line = from; line < to; line++) {
            if (!jobs.state(line).accepted()) {
                continue;
            }
            int type = jobs.ledger().lines().repairType(line);
            if (jobs.foundLater(line)) {
                double hours = jobs.todayQuotedHours(line);
                found.merge(type, Double.isNaN(hours) ? 0 : hours, Double::sum);
            } else if (!first.contains(type)) {
                first.add(type);
            }
        }
        tickets += first.isEmpty() ? 0 : 1;
        first.forEach(type -> ticketsWith[type]++);
        found.keySet().forEach(type -> ticketsFinding[type]++);
        found.forEach((type, hours) -> first.forEach(quoted -> add(ticket, quoted, type, hours)));
    }

    private void add(int ticket, int quoted, int found, double hours) {
        Pair pair = pairs.computeIfAbsent(quoted * types + found, key -> new Pair());
        pair.times++;
        pair.annualHours += year.holds(ticket) ? hours * year.scale() : 0;
    }

    private List<FoundWork> kept() {
        List<FoundWork> kept = new ArrayList<>();
        pairs.forEach((key, pair) -> {
            FoundWork work = work(key / types, key % types, pair);
            int elsewhere = tickets - work.tickets();
            double usual = (ticketsFinding[work.found()] - work.times()) / StrictMath.max(1.0, elsewhere);
            if (pair.times >= SEEN && work.lower() > usual) {
                kept.add(work);
            }
        });
        kept.sort(Comparator.comparingLong(FoundWork::annualMoney).reversed().thenComparing(FoundWork::quoted));
        return kept;
    }

    private FoundWork work(int quoted, int found, Pair pair) {
        Interval share = Coverage.of(pair.times, ticketsWith[quoted], LEVEL).interval();
        long money = (long) StrictMath.rint(pair.annualHours * costs.shopRate());
        return new FoundWork(
                quoted, found, ticketsWith[quoted], pair.times, share.low(), share.high(), pair.annualHours, money);
    }
}
