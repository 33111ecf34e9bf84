package benchtrue.truth;

import benchtrue.findings.Cause;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.sample.LineTruth;
import benchtrue.shop.Absent;
import benchtrue.shop.Outcome;
import benchtrue.shop.PaidBy;
import benchtrue.shop.QuotedLine;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.ReturnReason;
import benchtrue.shop.Ticket;
import benchtrue.shop.Tickets;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeEntry;
import benchtrue.shop.TimeKind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Jobs of one repair that take some times as long as they did, whatever their time was logged to.
 *
 * @param kind what they have in common
 * @param value as {@link Cause#value}; empty where only the kind can be named
 * @param type code of their repair
 * @param holds which lines they are
 */
record PlantedCause(Cause.Kind kind, String value, int type, IntPredicate holds) {
    private static final int FEWEST = 20;
    private static final int FEWEST_OF = 30;
    private static final double LEAST_SHARE = 0.1;
    private static final double MOST_SHARE = 0.4;

    /** Returns one cause of a kind that holds in 10 to 40 % of a repair's jobs and at least 20; null where there is none. */
    static PlantedCause any(Cause.Kind kind, JobLines jobs, Random random) {
        List<PlantedCause> found = new ArrayList<>();
        for (int code = 0; code < jobs.ledger().repairTypes().size(); code++) {
            int type = code;
            int[] lines = IntStream.range(0, jobs.size())
                    .filter(line -> jobs.judged(line) && jobs.ledger().lines().repairType(line) == type)
                    .toArray();
            if (lines.length >= FEWEST_OF) {
                of(kind, jobs, lines, random).forEach((value, holds) -> {
                    long with = IntStream.of(lines).filter(holds).count();
                    boolean fits = with >= LEAST_SHARE * lines.length && with <= MOST_SHARE * lines.length;
                    if (with >= FEWEST && fits) {
                        found.add(new PlantedCause(kind, value, type, holds));
                    }
                });
            }
        }
        return found.isEmpty() ? null : found.get(random.nextInt(found.size()));
    }

    private static Map<String, IntPredicate> of(Cause.Kind kind, JobLines jobs, int[] lines, Random random) {
        Ledger ledger = jobs.ledger();
        Tickets tickets = ledger.tickets();
        QuotedLines quoted = ledger.lines();
        Map<String, IntPredicate> all = new TreeMap<>();
        double share = LEAST_SHARE + (MOST_SHARE - LEAST_SHARE) * random.nextDouble();
        switch (kind) {
            case INSTRUMENT_CLASS -> words(lines, line -> List.of(tickets.instrumentClass(quoted.ticket(line))), all);
            case TRAIT -> words(lines, line -> tickets.traits(quoted.ticket(line)), all);
            case QUOTE_WRITER -> words(lines, line -> List.of(tickets.quotedBy(quoted.ticket(line))), all);
            case TECHNICIAN -> words(lines, line -> List.of(ledger.technicians().name(jobs.mainTechnician(line))), all);
            case PAYER -> words(lines, line -> List.of(benchtrue.format.Words.of(quoted.paidBy(line))), all);
            case PAIRING -> words(lines, line -> fellows(ledger, line), all);
            case RETURNING -> all.put("", line -> tickets.reworkOf(quoted.ticket(line)) >= 0);
            case CONDITION -> {
                int year = 1925 + random.nextInt(90);
                all.put("", line -> {
                    int built = tickets.builtYear(quoted.ticket(line));
                    return Absent.has(built) && built < year;
                });
            }
            case PRICE_LEVEL -> {
                double[] levels = IntStream.of(lines)
                        .mapToDouble(line -> level(jobs, line))
                        .sorted()
                        .toArray();
                double cut = levels[(int) (levels.length * (1 - share))];
                all.put("", line -> level(jobs, line) >= cut);
            }
            case PERIOD -> {
                int[] days = IntStream.of(lines)
                        .map(line -> tickets.opened(quoted.ticket(line)))
                        .sorted()
                        .toArray();
                int from = days[(int) (days.length * (1 - share))];
                all.put("", line -> tickets.opened(quoted.ticket(line)) >= from);
            }
            default -> throw new IllegalArgumentException(kind.toString());
        }
        return all;
    }

    private interface WordsOf {
        List<String> of(int line);
    }

    private static void words(int[] lines, WordsOf words, Map<String, IntPredicate> all) {
        TreeSet<String> names = new TreeSet<>();
        IntStream.of(lines).forEach(line -> names.addAll(words.of(line)));
        names.forEach(name -> all.put(name, line -> words.of(line).contains(name)));
    }

    private static List<String> fellows(Ledger ledger, int line) {
        int ticket = ledger.lines().ticket(line);
        return IntStream.range(Math.max(0, line - 12), Math.min(ledger.lines().size(), line + 12))
                .filter(other -> other != line && ledger.lines().ticket(other) == ticket)
                .filter(other -> ledger.lines().outcome(other) == Outcome.ACCEPTED)
                .mapToObj(other -> ledger.repairTypes().name(ledger.lines().repairType(other)))
                .toList();
    }

    private static double level(JobLines jobs, int line) {
        return jobs.ledger().lines().judgedSeconds(line) / (double) jobs.bookSecondsThen(line);
    }

    /** Returns whether a cause that was found is this one. */
    boolean is(Cause found) {
        return found.repairType() == type
                && found.kind() == kind
                && (value.isEmpty() || found.value().equals(value));
    }

    /** Returns a shop in which what is told of an instrument is that of another, so that no sign makes a difference. */
    static Ledger withOthersSigns(Ledger shop, Random random) {
        List<Ticket> tickets = new ArrayList<>();
        List<Integer> order = new ArrayList<>(
                IntStream.range(0, shop.tickets().size()).boxed().toList());
        Collections.shuffle(order, random);
        for (int i = 0; i < order.size(); i++) {
            Ticket row = shop.tickets().get(i);
            Ticket other = shop.tickets().get(order.get(i));
            tickets.add(new Ticket(
                    row.ticket(),
                    row.opened(),
                    row.promised(),
                    row.closed(),
                    row.finished(),
                    row.status(),
                    other.instrumentClass(),
                    other.builtYear(),
                    other.traits(),
                    row.quotedBy(),
                    row.reworkOf()));
        }
        return with(shop, new Tickets(tickets), shop.lines(), shop.time());
    }

    /** Returns a shop with one visit in five of an instrument that was there before, and one in three not paid by its owner. */
    static Ledger withReturnsAndPayers(Ledger shop, Random random) {
        List<Ticket> tickets = new ArrayList<>();
        List<QuotedLine> lines = new ArrayList<>();
        boolean[] back = new boolean[shop.tickets().size()];
        PaidBy[] payer = new PaidBy[back.length];
        for (int i = 0; i < back.length; i++) {
            Ticket row = shop.tickets().get(i);
            back[i] = i > 0 && row.reworkOf() < 0 && random.nextInt(5) == 0;
            payer[i] = random.nextInt(3) > 0 ? PaidBy.CUSTOMER : PaidBy.values()[random.nextInt(3)];
            tickets.add(new Ticket(
                    row.ticket(),
                    row.opened(),
                    row.promised(),
                    row.closed(),
                    row.finished(),
                    row.status(),
                    row.instrumentClass(),
                    row.builtYear(),
                    row.traits(),
                    row.quotedBy(),
                    back[i] ? i - 1 : row.reworkOf()));
        }
        for (int i = 0; i < shop.lines().size(); i++) {
            QuotedLine row = shop.lines().get(i);
            lines.add(new QuotedLine(
                    row.ticket(),
                    row.line(),
                    row.repairType(),
                    row.quotedSeconds(),
                    row.quotedLabour(),
                    row.quotedParts(),
                    row.outcome(),
                    row.quotedOn(),
                    row.firstQuotedSeconds(),
                    row.firstQuotedLabour(),
                    row.billedLabour(),
                    row.billedParts(),
                    row.chargeKind(),
                    row.quoteBasis(),
                    payer[row.ticket()],
                    row.reworkOf(),
                    row.reworkOfLine(),
                    back[row.ticket()] ? ReturnReason.NEW_DAMAGE : row.returnReason()));
        }
        return with(shop, new Tickets(tickets), new QuotedLines(lines), shop.time());
    }

    private static Ledger with(Ledger shop, Tickets tickets, QuotedLines lines, TimeEntries time) {
        return new Ledger(
                shop.asOf(),
                shop.repairTypes(),
                shop.technicians(),
                shop.parts(),
                shop.books(),
                tickets,
                lines,
                time,
                shop.partUses(),
                shop.wages(),
                shop.paidHours(),
                shop.overheads(),
                shop.waits(),
                shop.completeness(),
                shop.missing());
    }

    /**
     * Returns the shop with these jobs taking so many times as long. Of time on a ticket as a whole, the jobs' own part is what the
     * truth says that they worked.
     */
    Ledger in(Ledger shop, List<LineTruth> truth, double times) {
        Map<String, Long> worked = new HashMap<>();
        truth.forEach(line -> worked.put(line.ticket() + "/" + line.line(), line.workedSeconds()));
        QuotedLines lines = shop.lines();
        int[] starts = lines.starts(shop.tickets().size());
        long[] named = new long[lines.size()];
        long[] whole = new long[shop.tickets().size()];
        TimeEntries time = shop.time();
        for (int entry = 0; entry < time.size(); entry++) {
            if (time.ticket(entry) >= 0 && time.kind(entry) == TimeKind.BENCH) {
                int line = line(lines, starts, time, entry);
                named[Math.max(0, line)] += line >= 0 ? time.seconds(entry) : 0;
                whole[time.ticket(entry)] += line >= 0 ? 0 : time.seconds(entry);
            }
        }
        double[] more = new double[whole.length];
        for (int line = 0; line < named.length; line++) {
            int ticket = lines.ticket(line);
            if (hits(lines, line) && whole[ticket] > 0) {
                String key = shop.tickets().ticket(ticket) + "/" + lines.line(line);
                boolean alone = starts[ticket + 1] - starts[ticket] == 1;
                long part = alone ? whole[ticket] : Math.max(0, worked.getOrDefault(key, 0L) - named[line]);
                more[ticket] += (times - 1) * part / whole[ticket];
            }
        }
        TimeEntries.Builder rows = new TimeEntries.Builder();
        for (int entry = 0; entry < time.size(); entry++) {
            double factor = 1;
            if (time.ticket(entry) >= 0 && time.kind(entry) == TimeKind.BENCH) {
                int line = line(lines, starts, time, entry);
                factor = line < 0 ? 1 + more[time.ticket(entry)] : hits(lines, line) ? times : 1;
            }
            add(rows, time, entry, factor);
        }
        return with(shop, shop.tickets(), lines, rows.build());
    }

    private boolean hits(QuotedLines lines, int line) {
        return lines.repairType(line) == type && holds.test(line);
    }

    private static void add(TimeEntries.Builder rows, TimeEntries time, int entry, double factor) {
        TimeEntry row = time.get(entry);
        long seconds = 36 * Math.round(row.seconds() * factor / 36);
        TimeEntry longer = new TimeEntry(
                row.ticket(), row.line(), row.repairType(), row.technician(), row.workDay(), seconds, row.kind());
        if (row.ticket() == TimeEntries.SHARED) {
            rows.addShared(longer, time.sharedTickets(entry));
        } else {
            rows.add(longer);
        }
    }

    private static int line(QuotedLines lines, int[] starts, TimeEntries time, int entry) {
        if (time.line(entry) >= 0 || time.repairType(entry) < 0) {
            return time.line(entry);
        }
        int ticket = time.ticket(entry);
        return IntStream.range(starts[ticket], starts[ticket + 1])
                .filter(line -> lines.repairType(line) == time.repairType(entry))
                .findFirst()
                .orElse(Absent.INDEX);
    }
}
