package benchtrue.reconcile;

import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.reconcile.Completeness.Part;
import benchtrue.shop.Absent;
import benchtrue.shop.Months;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.Tickets;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Weighs the hours that were set aside: how many, of which month, technician and repair, as far as their rows say. */
final class WeighUnread {
    private static final Pattern FOUND = Pattern.compile("found \"[^\"]*\"|found [0-9]+|\\(the nearest[^)]*\\)");
    private static final TimeKind[] KINDS = TimeKind.values();

    private final RowDispositions time;
    private final RowDispositions quotes;
    private final EntryHours hours;
    private final TypeKeys types;
    private final double[] missing;
    private final double[] foreign;
    private final SortedMap<Integer, Part> months = new TreeMap<>();
    private final SortedMap<String, Part> technicians = new TreeMap<>();
    private final Map<String, Double> reasons = new LinkedHashMap<>();
    private final Map<String, Map<Integer, Double>> typesOfTicket = new HashMap<>();
    private final Map<String, Integer> typeOfLine = new HashMap<>();
    private final double most;
    private double missingAnywhere;
    private long read;
    private double unread;

    WeighUnread(RowDispositions time, RowDispositions quotes, EntryHours hours, TypeKeys types, double most) {
        this.most = most;
        this.time = time;
        this.quotes = quotes;
        this.hours = hours;
        this.types = types;
        missing = new double[types.names().size()];
        foreign = new double[types.names().size()];
    }

    /**
     * Returns what is known of it.
     *
     * @param all every table, to count its rows
     */
    Completeness weigh(Map<Table, RowDispositions> all, Tickets tickets, QuotedLines lines, TimeEntries entries) {
        if (time.count(RowStatus.SET_ASIDE) > 0 || !time.perhapsCopies().isEmpty()) {
            takeQuotes();
            takeTime();
        } else {
            for (int entry = 0; entry < entries.size(); entry++) {
                read += Math.max(0, entries.seconds(entry));
            }
        }
        if (quotes.count(RowStatus.SET_ASIDE) > 0) {
            takeForeign(tickets, lines, entries);
        }
        return new Completeness(
                read,
                unread,
                commonest(reasons),
                months,
                technicians,
                missing,
                foreign,
                missingAnywhere,
                most,
                tables(all));
    }

    /** Learns from the quotes, read or not, which repairs stand on a ticket. */
    private void takeQuotes() {
        int[] typeOf = types.find(quotes.rows().column(LineColumn.REPAIR_TYPE));
        for (int row = 0; row < quotes.size(); row++) {
            int type = typeOf[quotes.rows().code(LineColumn.REPAIR_TYPE, row)];
            String ticket = quotes.rows().text(LineColumn.TICKET, row);
            boolean counts = quotes.accepted(row) || quotes.fate(row) == RowStatus.SET_ASIDE;
            if (counts && type >= 0 && !ticket.isEmpty()) {
                long quoted = quotes.rows().value(LineColumn.QUOTED_HOURS, row);
                typesOfTicket
                        .computeIfAbsent(ticket, first -> new TreeMap<>())
                        .merge(type, (double) Math.max(1, Absent.firstOf(quoted, 1)), Double::sum);
                typeOfLine.put(ticket + '\n' + quotes.rows().text(LineColumn.LINE, row), type);
            }
        }
    }

    private void takeTime() {
        double mean = mean();
        int[] typeOf = types.find(time.rows().column(TimeColumn.REPAIR_TYPE));
        for (int row = 0; row < time.size(); row++) {
            long seconds = hours.seconds(row);
            if (time.accepted(row)) {
                takePart(row, new Part(0, Math.max(0, seconds)));
                read += Math.max(0, seconds);
                if (time.perhapsCopies().get(row) && isBench(row)) {
                    take(row, seconds, typeOf[time.rows().code(TimeColumn.REPAIR_TYPE, row)], foreign);
                }
            } else if (time.fate(row) == RowStatus.SET_ASIDE) {
                double lost = Absent.has(seconds) && seconds > 0 ? seconds : mean;
                unread += lost;
                takePart(row, new Part(lost, 0));
                reasons.merge(reason(time.reasons(row)), lost, Double::sum);
                if (isBench(row)) {
                    missingAnywhere += take(row, lost, typeOf[time.rows().code(TimeColumn.REPAIR_TYPE, row)], missing);
                }
            }
        }
        months.values().removeIf(part -> part.unread() == 0);
        technicians.values().removeIf(part -> part.unread() == 0);
    }

    private double mean() {
        double sum = 0;
        int count = 0;
        for (int row = 0; row < time.size(); row++) {
            if (time.accepted(row) && hours.seconds(row) > 0) {
                sum += hours.seconds(row);
                count++;
            }
        }
        return count == 0 ? 3_600 : sum / count;
    }

    private void takePart(int row, Part part) {
        int day = time.rows().day(TimeColumn.WORK_DATE, row);
        if (Absent.has(day)) {
            months.merge(Months.of(day), part, Part::plus);
        }
        technicians.merge(time.rows().text(TimeColumn.TECHNICIAN, row), part, Part::plus);
    }

    private boolean isBench(int row) {
        boolean shop =
                time.rows().code(TimeColumn.TICKET, row) == 0 && time.rows().raggedDigest(row) == 0;
        if (shop) {
            return false;
        }
        long kind = time.rows().value(TimeColumn.KIND, row);
        return !Absent.has(kind) || KINDS[(int) kind] == TimeKind.BENCH;
    }

    /** Gives a row's seconds to the repairs that it may belong to; returns those of which it does not say that. */
    private double take(int row, double seconds, int type, double[] to) {
        String ticket = time.rows().text(TimeColumn.TICKET, row);
        Integer ofLine = typeOfLine.get(ticket + '\n' + time.rows().text(TimeColumn.LINE, row));
        Map<Integer, Double> onTicket = typesOfTicket.getOrDefault(ticket, Map.of());
        if (type >= 0 || ofLine != null) {
            to[type >= 0 ? type : ofLine] += seconds;
            return 0;
        }
        double sum = onTicket.values().stream().mapToDouble(Double::doubleValue).sum();
        onTicket.forEach((repair, quoted) -> to[repair] += seconds * quoted / sum);
        return onTicket.isEmpty() ? seconds : 0;
    }

    /** Time of a ticket of which a quoted line was not read goes to its other lines, which is not theirs for sure. */
    private void takeForeign(Tickets tickets, QuotedLines lines, TimeEntries entries) {
        Map<String, Integer> places = new HashMap<>();
        for (int ticket = 0; ticket < tickets.size(); ticket++) {
            places.put(tickets.ticket(ticket), ticket);
        }
        boolean[] touched = new boolean[tickets.size()];
        for (int row = 0; row < quotes.size(); row++) {
            Integer place = places.get(quotes.rows().text(LineColumn.TICKET, row));
            if (quotes.fate(row) == RowStatus.SET_ASIDE && place != null) {
                touched[place] = true;
            }
        }
        double[] whole = new double[tickets.size()];
        for (int entry = 0; entry < entries.size(); entry++) {
            int ticket = entries.ticket(entry);
            if (ticket >= 0 && touched[ticket] && entries.line(entry) < 0 && entries.repairType(entry) < 0) {
                whole[ticket] += entries.seconds(entry);
            }
        }
        double[] quoted = new double[tickets.size()];
        for (int line = 0; line < lines.size(); line++) {
            quoted[lines.ticket(line)] += weight(lines, line);
        }
        for (int line = 0; line < lines.size(); line++) {
            int ticket = lines.ticket(line);
            if (touched[ticket]) {
                foreign[lines.repairType(line)] += whole[ticket] * weight(lines, line) / quoted[ticket];
            }
        }
    }

    private static double weight(QuotedLines lines, int line) {
        return Math.max(1, Absent.firstOf(lines.judgedSeconds(line), 1));
    }

    /** Returns what reasons have in common: the first, without what was found. */
    static String reason(List<String> reasons) {
        return reasons.isEmpty()
                ? ""
                : FOUND.matcher(reasons.get(0))
                        .replaceAll("")
                        .replaceAll("\\s*,\\s*expected", " expected")
                        .strip();
    }

    private static String commonest(Map<String, Double> weights) {
        return weights.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
    }

    private static List<Completeness.RowsRead> tables(Map<Table, RowDispositions> all) {
        List<Completeness.RowsRead> tables = new ArrayList<>();
        all.forEach((table, rows) -> {
            long setAside = rows.count(RowStatus.SET_ASIDE);
            if (setAside > 0) {
                Map<String, Double> counts = new LinkedHashMap<>();
                for (int row = 0; row < rows.size(); row++) {
                    if (rows.fate(row) == RowStatus.SET_ASIDE) {
                        counts.merge(reason(rows.reasons(row)), 1.0, Double::sum);
                    }
                }
                tables.add(new Completeness.RowsRead(table.title(), rows.size(), setAside, commonest(counts)));
            }
        });
        return tables;
    }
}
