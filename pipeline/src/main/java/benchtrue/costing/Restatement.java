package benchtrue.costing;

import benchtrue.costing.SealedMonth.Figure;
import benchtrue.costing.SealedMonth.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * A figure of a sealed month that the records now tell otherwise. The sealed figure stands; this says what changed and why.
 *
 * @param month {@code year * 12 + month - 1}
 * @param figure what changed, such as {@code earned labour_cost}
 * @param sealed the figure as sealed, empty where it was not known
 * @param now the figure as the records tell it now, empty where it is not known
 * @param causes the tickets, accounts, rates and settings that differ, in plain words
 */
public record Restatement(int month, String figure, String sealed, String now, List<String> causes) {
    private static final int MOST = 20;
    /** Rates that a figure is reckoned with. */
    private static final Map<String, Set<String>> RATES_OF = Map.of(
            "labour_cost", Set.of("burden"),
            "wages", Set.of("burden"),
            "overtime_premium", Set.of("burden"),
            "overhead_cost", Set.of("overhead_rate"),
            "carried", Set.of("overhead_rate"),
            "margin", Set.of("burden", "overhead_rate"));

    public Restatement {
        causes = List.copyOf(causes);
    }

    /** Returns what differs between a month as sealed and as the records tell it now. */
    public static List<Restatement> between(SealedMonth sealed, SealedMonth now) {
        List<Restatement> found = new ArrayList<>();
        totals(sealed, now).forEach((figure, values) -> {
            if (!values[0].equals(values[1])) {
                found.add(new Restatement(
                        sealed.month(),
                        figure.part().name().toLowerCase(Locale.ROOT) + " " + figure.name(),
                        values[0],
                        values[1],
                        causes(sealed, now, figure)));
            }
        });
        return found;
    }

    /** What names a figure. */
    private record Name(Part part, String key, String name) implements Comparable<Name> {
        @Override
        public int compareTo(Name other) {
            int byPart = part.compareTo(other.part);
            int byName = byPart != 0 ? byPart : name.compareTo(other.name);
            return byName != 0 ? byName : key.compareTo(other.key);
        }
    }

    private static Map<Name, String[]> pairs(SealedMonth sealed, SealedMonth now) {
        Map<Name, String[]> pairs = new TreeMap<>();
        put(pairs, sealed, 0);
        put(pairs, now, 1);
        return pairs;
    }

    private static void put(Map<Name, String[]> pairs, SealedMonth month, int place) {
        for (Figure figure : month.figures()) {
            pairs.computeIfAbsent(new Name(figure.part(), figure.key(), figure.name()), name -> new String[] {"", ""})[
                            place] =
                    figure.value();
        }
    }

    private static Map<Name, String[]> totals(SealedMonth sealed, SealedMonth now) {
        Map<Name, String[]> totals = pairs(sealed, now);
        totals.keySet().removeIf(name -> !name.key().isEmpty() || name.part() == Part.RATE);
        return totals;
    }

    private static List<String> causes(SealedMonth sealed, SealedMonth now, Name total) {
        List<String> causes = new ArrayList<>();
        List<String> details = new ArrayList<>();
        Set<String> rates = RATES_OF.getOrDefault(total.name(), Set.of());
        pairs(sealed, now).forEach((name, values) -> {
            if (values[0].equals(values[1])) {
                return;
            }
            if (name.part() == Part.RATE && rates.contains(name.name())) {
                causes.add(words(name.name().replace('_', ' '), values));
            } else if (!name.key().isEmpty() && behind(total, name)) {
                details.add(words(noun(name) + name.key() + " " + name.name().replace('_', ' '), values));
            }
        });
        causes.addAll(details.subList(0, Math.min(MOST, details.size())));
        if (details.size() > MOST) {
            causes.add("and " + (details.size() - MOST) + " more");
        }
        return causes.isEmpty() ? List.of("reckoned otherwise by this version of the program") : causes;
    }

    /** Overhead carried by the month's hours moves with the time worked, not with the accounts. */
    private static boolean behind(Name total, Name detail) {
        if (total.part() == Part.OVERHEAD && total.name().equals("carried")) {
            return detail.part() == Part.WORKED && detail.name().equals("logged_hours");
        }
        return detail.part() == total.part() && detail.name().equals(total.name());
    }

    private static String noun(Name name) {
        return name.part() == Part.OVERHEAD ? "account " : name.key().startsWith("(") ? "" : "ticket ";
    }

    private static String words(String what, String[] values) {
        return what + ": " + known(values[0]) + " sealed, " + known(values[1]) + " now";
    }

    private static String known(String value) {
        return value.isEmpty() ? "nothing" : value;
    }
}
