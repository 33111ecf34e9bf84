package benchtrue;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** A time log as shops keep it by hand, each form as tables by name; a row is its cells with {@code |} between them. */
final class ShapedLog {
    /** Whether a month ends with its sums. */
    enum Subtotals {
        NONE,
        MONTHLY
    }

    /**
     * One stretch.
     *
     * @param ticket empty for time that is no ticket's
     * @param hours of two decimals
     */
    record Entry(LocalDate day, String technician, String ticket, BigDecimal hours) {
        LocalDate monday() {
            return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        }

        String month() {
            return day.toString().substring(0, 7);
        }

        String who() {
            return technician + "|" + ticket;
        }
    }

    private final List<Entry> entries;
    private final Words words;
    private final Subtotals subtotals;

    /** The language that a shop writes its own sheets in. */
    enum Words {
        ENGLISH(
                "Week of|Tech|Job|Mon|Tue|Wed|Thu|Fri|Sat|Sun|Total",
                "Date|Job",
                "Tech|Job",
                "Tech",
                "Hours",
                "Total "),
        GERMAN(
                "Woche ab|Mitarbeiter|Auftrag|Mo|Di|Mi|Do|Fr|Sa|So|Summe",
                "Datum|Auftrag",
                "Mitarbeiter|Auftrag",
                "Mitarbeiter",
                "Stunden",
                "Summe ");

        private final String week;
        private final String day;
        private final String who;
        private final String person;
        private final String hours;
        private final String total;

        Words(String week, String day, String who, String person, String hours, String total) {
            this.week = week;
            this.day = day;
            this.who = who;
            this.person = person;
            this.hours = hours;
            this.total = total;
        }

        /** Returns a day as the shop writes it; empty where it is. */
        String date(String day) {
            return this == GERMAN && !day.isEmpty()
                    ? day.substring(8) + "." + day.substring(5, 7) + "." + day.substring(0, 4)
                    : day;
        }
    }

    ShapedLog(List<Entry> entries, Words words, Subtotals subtotals) {
        this.entries = entries;
        this.words = words;
        this.subtotals = subtotals;
    }

    /** Returns the sum of all hours. */
    BigDecimal hours() {
        return entries.stream().map(Entry::hours).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** A row a week, person and ticket, a column a weekday, and a title above. */
    List<String> weeks() {
        List<String> rows =
                new ArrayList<>(words == Words.GERMAN ? List.of("Zeiterfassung der Werkstatt", "") : List.of());
        rows.add(words.week);
        by(Entry::monday, monday -> monday.toString().substring(0, 7)).forEach((month, weeks) -> {
            rows.addAll(subtotals == Subtotals.NONE ? List.of() : List.of(month));
            BigDecimal[] sums = new BigDecimal[8];
            weeks.forEach((monday, inside) -> sums(
                            inside,
                            Entry::who,
                            7,
                            entry -> entry.day().getDayOfWeek().getValue() - 1)
                    .forEach((who, days) -> {
                        BigDecimal sum = total(days);
                        rows.add(words.date(monday.toString()) + "|" + who + cells(days) + "|" + sum.toPlainString());
                        for (int day = 0; day < 7; day++) {
                            sums[day] = add(sums[day], days[day]);
                        }
                        sums[7] = add(sums[7], sum);
                    }));
            rows.addAll(subtotals == Subtotals.NONE ? List.of() : List.of(words.total + month + "||" + cells(sums)));
        });
        return rows;
    }

    /** A table a month with a row a person and ticket and a column a day of the month. */
    SortedMap<String, List<String>> months() {
        SortedMap<String, List<String>> sheets = new TreeMap<>();
        by(Entry::month).forEach((month, inside) -> {
            StringBuilder header = new StringBuilder(words.who);
            for (int day = 1; day <= 31; day++) {
                header.append('|').append(day);
            }
            List<String> rows = new ArrayList<>(List.of(header.toString()));
            sums(inside, Entry::who, 31, entry -> entry.day().getDayOfMonth() - 1)
                    .forEach((who, days) -> rows.add(who + cells(days)));
            sheets.put(month, rows);
        });
        return sheets;
    }

    /** A table a week with a row a person and ticket and the dates of its days for headers. */
    SortedMap<String, List<String>> dates() {
        SortedMap<String, List<String>> sheets = new TreeMap<>();
        by(Entry::monday).forEach((monday, inside) -> {
            StringBuilder header = new StringBuilder(words.who);
            for (int day = 0; day < 7; day++) {
                header.append('|').append(words.date(monday.plusDays(day).toString()));
            }
            List<String> rows = new ArrayList<>(List.of(header.toString()));
            sums(inside, Entry::who, 7, entry -> entry.day().getDayOfWeek().getValue() - 1)
                    .forEach((who, days) -> rows.add(who + cells(days)));
            sheets.put("W " + monday, rows);
        });
        return sheets;
    }

    /** A row a day and ticket, a column a person. */
    List<String> people() {
        SortedSet<String> people = new TreeSet<>();
        entries.forEach(entry -> people.add(entry.technician()));
        List<String> names = List.copyOf(people);
        List<String> rows = new ArrayList<>(List.of(words.day + "|" + String.join("|", names)));
        sums(
                        entries,
                        entry -> entry.day() + "|" + entry.ticket(),
                        names.size(),
                        entry -> names.indexOf(entry.technician()))
                .forEach((where, hours) ->
                        rows.add(words.date(where.substring(0, 10)) + where.substring(10) + cells(hours)));
        return rows;
    }

    /** A row an entry, its ticket inside a text, first and last name apart. */
    List<String> texts() {
        List<String> rows = new ArrayList<>(List.of("Day|First name|Last name|What|Hours"));
        by(Entry::month).forEach((month, inside) -> {
            inside.forEach(entry -> rows.add(String.join(
                    "|",
                    entry.day().toString(),
                    entry.technician(),
                    "of the shop",
                    entry.ticket().isEmpty() ? "sweeping up" : "Order " + entry.ticket() + " - at the bench",
                    entry.hours().toPlainString())));
            BigDecimal sum = inside.stream().map(Entry::hours).reduce(BigDecimal.ZERO, BigDecimal::add);
            rows.addAll(subtotals == Subtotals.NONE ? List.of() : List.of("Subtotal||||" + sum.toPlainString()));
        });
        return rows;
    }

    /** A table a person with a row an entry. */
    SortedMap<String, List<String>> sheets() {
        SortedMap<String, List<String>> sheets = new TreeMap<>();
        by(Entry::technician).forEach((technician, inside) -> {
            List<String> rows = new ArrayList<>(List.of(words.day + "|" + words.hours));
            inside.forEach(entry -> rows.add(words.date(entry.day().toString()) + "|" + entry.ticket() + "|"
                    + entry.hours().toPlainString()));
            sheets.put(technician, rows);
        });
        return sheets;
    }

    /** A row an entry, its day written once above the others of the day. */
    List<String> daysOnce() {
        List<String> rows = new ArrayList<>(List.of(words.day + "|" + words.person + "|" + words.hours));
        by(Entry::day)
                .forEach((day, inside) -> inside.forEach(entry ->
                        rows.add((entry == inside.get(0) ? words.date(day.toString()) : "") + "|" + entry.ticket() + "|"
                                + entry.technician() + "|" + entry.hours().toPlainString())));
        return rows;
    }

    private <K extends Comparable<? super K>> SortedMap<K, List<Entry>> by(Function<Entry, K> key) {
        SortedMap<K, List<Entry>> by = new TreeMap<>();
        entries.forEach(entry ->
                by.computeIfAbsent(key.apply(entry), fresh -> new ArrayList<>()).add(entry));
        return by;
    }

    private <K extends Comparable<? super K>> SortedMap<String, SortedMap<K, List<Entry>>> by(
            Function<Entry, K> key, Function<K, String> group) {
        SortedMap<String, SortedMap<K, List<Entry>>> groups = new TreeMap<>();
        by(key).forEach((one, inside) -> groups.computeIfAbsent(group.apply(one), fresh -> new TreeMap<>())
                .put(one, inside));
        return groups;
    }

    /** Returns hours by row and column; null where there are none. */
    private static Map<String, BigDecimal[]> sums(
            List<Entry> entries, Function<Entry, String> row, int columns, Function<Entry, Integer> column) {
        Map<String, BigDecimal[]> sums = new TreeMap<>();
        for (Entry entry : entries) {
            BigDecimal[] cells = sums.computeIfAbsent(row.apply(entry), fresh -> new BigDecimal[columns]);
            int at = column.apply(entry);
            cells[at] = add(cells[at], entry.hours());
        }
        return sums;
    }

    private static String cells(BigDecimal... hours) {
        StringBuilder cells = new StringBuilder();
        for (BigDecimal cell : hours) {
            cells.append('|').append(cell == null ? "" : cell.toPlainString());
        }
        return cells.toString();
    }

    private static BigDecimal total(BigDecimal... hours) {
        BigDecimal sum = BigDecimal.ZERO;
        for (BigDecimal cell : hours) {
            sum = add(sum, cell);
        }
        return sum;
    }

    private static BigDecimal add(BigDecimal sum, BigDecimal more) {
        BigDecimal start = sum == null ? BigDecimal.ZERO : sum;
        return more == null ? start : start.add(more);
    }
}
