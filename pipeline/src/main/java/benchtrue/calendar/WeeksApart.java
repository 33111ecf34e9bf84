package benchtrue.calendar;

import benchtrue.reconcile.Ledger;
import benchtrue.statistics.BenjaminiHochberg;
import benchtrue.statistics.LogRank;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Which classes of instrument and which seasons take longer or less long beyond chance, repair by repair, all judged together
 * (log-rank: Peto, Peto 1972; Benjamini, Hochberg 1995). Visits of one quarter share its queue; so a season is told by its
 * quarters, year by year, not by its visits.
 */
final class WeeksApart {
    /** Fewer visits on either side tell nothing. */
    private static final int LEAST = 12;

    private static final int QUARTERS = 4;
    private static final int MONTHS = 3;
    private static final List<String> SEASONS =
            List.of("in January to March", "in April to June", "in July to September", "in October to December");

    private final Ledger ledger;
    private final List<Apart> all = new ArrayList<>();

    /**
     * Visits of one repair that may differ from its others.
     *
     * @param words which, after "visits"
     */
    record Apart(int type, String words, int[] tickets, double chance) {}

    WeeksApart(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Takes the visits of a repair, with how many days each lasted and whether it was ready by then. */
    void add(int type, int[] tickets, double[] lasted, boolean[] ready) {
        double[] scores = LogRank.scores(lasted, ready);
        IntStream.of(tickets)
                .mapToObj(ledger.tickets()::instrumentClass)
                .filter(name -> !name.isEmpty())
                .distinct()
                .sorted()
                .forEach(name -> {
                    boolean[] in = new boolean[tickets.length];
                    for (int i = 0; i < in.length; i++) {
                        in[i] = ledger.tickets().instrumentClass(tickets[i]).equals(name);
                    }
                    add(type, "on " + name.replace('-', ' ') + " instruments", tickets, in, LogRank.chance(scores, in));
                });
        for (int season = 0; season < QUARTERS; season++) {
            season(type, season, tickets, scores);
        }
    }

    private void season(int type, int season, int[] tickets, double[] scores) {
        TreeMap<Integer, List<Double>> quarters = new TreeMap<>();
        boolean[] in = new boolean[tickets.length];
        for (int i = 0; i < in.length; i++) {
            int quarter = quarter(tickets[i]);
            quarters.computeIfAbsent(quarter, key -> new ArrayList<>()).add(scores[i]);
            in[i] = quarter % QUARTERS == season;
        }
        double[] means = quarters.values().stream()
                .mapToDouble(list ->
                        list.stream().mapToDouble(Double::doubleValue).average().orElseThrow())
                .toArray();
        boolean[] its = new boolean[means.length];
        int at = 0;
        for (int quarter : quarters.keySet()) {
            its[at++] = quarter % QUARTERS == season;
        }
        add(type, SEASONS.get(season), tickets, in, LogRank.chance(means, its));
    }

    private int quarter(int ticket) {
        LocalDate day = LocalDate.ofEpochDay(ledger.tickets().opened(ticket));
        return day.getYear() * QUARTERS + (day.getMonthValue() - 1) / MONTHS;
    }

    private void add(int type, String words, int[] tickets, boolean[] in, double chance) {
        int[] its = IntStream.range(0, in.length)
                .filter(i -> in[i])
                .map(i -> tickets[i])
                .toArray();
        if (its.length >= LEAST && in.length - its.length >= LEAST) {
            all.add(new Apart(type, words, its, chance));
        }
    }

    /** Returns those that differ, as they were added. */
    List<Apart> found(double falseDiscovery) {
        double[] adjusted =
                BenjaminiHochberg.adjust(all.stream().mapToDouble(Apart::chance).toArray());
        return IntStream.range(0, adjusted.length)
                .filter(i -> adjusted[i] <= falseDiscovery)
                .mapToObj(all::get)
                .toList();
    }
}
