package benchtrue.calendar;

import benchtrue.costing.Families;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.WaitReason;
import benchtrue.statistics.CompetingEnds;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Sums how many days visits take, repair by repair and kind by kind. */
final class SumWeeks {
    private static final int YEARS = 3 * 365;
    private static final int READY = 1;
    private static final int WITHDRAWN = 2;
    private static final double HALF = 0.5;

    private final Ledger ledger;
    private final Visits visits;
    private final GivePromises promises;
    private final Families families;
    private final double falseDiscovery;

    SumWeeks(Ledger ledger, Visits visits, GivePromises promises, Families families, double falseDiscovery) {
        this.falseDiscovery = falseDiscovery;
        this.ledger = ledger;
        this.visits = visits;
        this.promises = promises;
        this.families = families;
    }

    /** Returns a row a family, in the order of names, each before those of its repairs, and these before those of their visits that differ. */
    List<RepairWeeks> sum() {
        Map<String, Map<Integer, List<Integer>>> byFamily = new TreeMap<>();
        for (int ticket = 0; ticket < visits.size(); ticket++) {
            int type = visits.largest(ticket);
            if (type != Absent.INDEX && visits.opened(ticket) > ledger.asOf() - YEARS) {
                byFamily.computeIfAbsent(families.ofType(type), key -> new TreeMap<>())
                        .computeIfAbsent(type, key -> new ArrayList<>())
                        .add(ticket);
            }
        }
        WeeksApart apart = new WeeksApart(ledger);
        byFamily.values()
                .forEach(types -> types.forEach((type, tickets) -> {
                    int[] its = tickets.stream().mapToInt(Integer::intValue).toArray();
                    Lasted lasted = lasted(its);
                    boolean[] ready = new boolean[its.length];
                    for (int i = 0; i < ready.length; i++) {
                        ready[i] = lasted.ends[i] == READY;
                    }
                    apart.add(type, its, lasted.days, ready);
                }));
        List<WeeksApart.Apart> found = apart.found(falseDiscovery);
        List<RepairWeeks> rows = new ArrayList<>();
        byFamily.forEach((family, types) -> {
            int[] all = types.values().stream()
                    .flatMap(List::stream)
                    .mapToInt(Integer::intValue)
                    .toArray();
            rows.add(row(Absent.INDEX, family, "", all));
            types.forEach((type, tickets) -> {
                rows.add(row(
                        type,
                        family,
                        "",
                        tickets.stream().mapToInt(Integer::intValue).toArray()));
                found.stream()
                        .filter(group -> group.type() == type)
                        .forEach(group -> rows.add(row(type, family, group.words(), group.tickets())));
            });
        });
        return rows;
    }

    /** How many days visits lasted, and how they ended. */
    private record Lasted(double[] days, int[] ends) {}

    private Lasted lasted(int[] tickets) {
        double[] lasted = new double[tickets.length];
        int[] ends = new int[tickets.length];
        for (int i = 0; i < tickets.length; i++) {
            int ready = visits.ready(tickets[i]);
            int gone = visits.gone(tickets[i]);
            ends[i] = Absent.has(ready) ? READY : Absent.has(gone) ? WITHDRAWN : CompetingEnds.OPEN;
            int end = Absent.firstOf(ready, Absent.firstOf(gone, ledger.asOf()));
            lasted[i] = Math.max(0, end - visits.opened(tickets[i]));
        }
        return new Lasted(lasted, ends);
    }

    private RepairWeeks row(int type, String family, String group, int[] tickets) {
        Lasted each = lasted(tickets);
        double[] lasted = each.days;
        int[] ends = each.ends;
        CompetingEnds ready = CompetingEnds.of(lasted, ends, READY);
        int[] done = IntStream.of(tickets)
                .filter(ticket ->
                        Absent.has(visits.ready(ticket)) && visits.days().begun(ticket))
                .toArray();
        double queue = average(done, ticket -> visits.begin(ticket));
        return new RepairWeeks(
                type,
                family,
                tickets.length,
                (int) IntStream.of(ends)
                        .filter(end -> end == CompetingEnds.OPEN)
                        .count(),
                ready.quantile(HALF),
                ready.quantile(UsualLengths.USUAL),
                CompetingEnds.of(lasted, ends, WITHDRAWN).by(Double.MAX_VALUE),
                queue,
                average(done, ticket -> visits.bench(ticket)),
                waits(done),
                type == Absent.INDEX || !group.isEmpty() ? Absent.DAY : promises.fresh(type),
                group);
    }

    private static double average(int[] tickets, IntToDoubleFunction days) {
        return IntStream.of(tickets).mapToDouble(days).average().orElse(Double.NaN);
    }

    private Map<WaitReason, Double> waits(int[] done) {
        Map<WaitReason, Double> waits = new EnumMap<>(WaitReason.class);
        for (WaitReason reason : TicketDays.OF_ITS_OWN) {
            double days = average(
                    done,
                    ticket -> visits.days()
                            .waited(ticket, visits.opened(ticket), visits.ready(ticket), EnumSet.of(reason)));
            if (days > 0) {
                waits.put(reason, days);
            }
        }
        return waits;
    }
}
