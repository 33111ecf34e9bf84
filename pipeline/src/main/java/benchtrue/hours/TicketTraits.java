package benchtrue.hours;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Tickets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What scales a whole ticket: instrument class, quote writer and traits, coded by ticket. */
final class TicketTraits {
    private static final int LEAST_TICKETS = 5;
    private static final int MOST_CLASSES = 40;
    private static final int MOST_WRITERS = 60;
    private static final int MOST_TRAITS = 24;
    final Levels classes;
    final Levels writers;
    final Levels traits;
    final int[] classOf;
    final int[] writerOf;
    final int[] setOf;
    /** Codes of the traits of each distinct set. */
    final List<int[]> sets = new ArrayList<>();

    TicketTraits(Ledger ledger) {
        Tickets tickets = ledger.tickets();
        Map<String, Integer> classCounts = new HashMap<>();
        Map<String, Integer> writerCounts = new HashMap<>();
        Map<String, Integer> traitCounts = new HashMap<>();
        for (int ticket = 0; ticket < tickets.size(); ticket++) {
            classCounts.merge(tickets.instrumentClass(ticket), 1, Integer::sum);
            writerCounts.merge(tickets.quotedBy(ticket), 1, Integer::sum);
            for (String trait : tickets.traits(ticket)) {
                traitCounts.merge(trait, 1, Integer::sum);
            }
        }
        classes = Levels.of(classCounts, 1, MOST_CLASSES);
        writers = Levels.of(writerCounts, 1, MOST_WRITERS);
        traits = Levels.of(traitCounts, LEAST_TICKETS, MOST_TRAITS);
        classOf = new int[tickets.size()];
        writerOf = new int[tickets.size()];
        setOf = new int[tickets.size()];
        Map<List<String>, Integer> codes = new HashMap<>();
        for (int ticket = 0; ticket < tickets.size(); ticket++) {
            classOf[ticket] = classes.code(tickets.instrumentClass(ticket));
            writerOf[ticket] = writers.code(tickets.quotedBy(ticket));
            setOf[ticket] = codes.computeIfAbsent(tickets.traits(ticket), this::add);
        }
    }

    private int add(List<String> words) {
        sets.add(words.stream()
                .mapToInt(traits::code)
                .filter(code -> code < traits.size())
                .sorted()
                .toArray());
        return sets.size() - 1;
    }

    /** Words and how often they stand, coded so that codes do not depend on the order of rows. */
    static final class Levels {
        private final Map<String, Integer> codes = new HashMap<>();

        private Levels() {}

        /** Returns the words that stand often enough; the empty word never does. */
        static Levels of(Map<String, Integer> counts, int least, int most) {
            Levels levels = new Levels();
            List<Map.Entry<String, Integer>> sorted = new ArrayList<>(new TreeMap<>(counts).entrySet());
            sorted.sort(
                    Map.Entry.<String, Integer>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()));
            for (Map.Entry<String, Integer> word : sorted) {
                if (!word.getKey().isEmpty() && word.getValue() >= least && levels.codes.size() < most) {
                    levels.codes.put(word.getKey(), levels.codes.size());
                }
            }
            return levels;
        }

        int size() {
            return codes.size();
        }

        /** Returns a word's code; {@link #size} for no word, or one too rare to say anything. */
        int code(String word) {
            return codes.getOrDefault(word, codes.size());
        }
    }
}
