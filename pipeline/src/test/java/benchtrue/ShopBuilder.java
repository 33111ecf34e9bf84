package benchtrue;

import benchtrue.reconcile.Completeness;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.CostBehaviour;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.Names;
import benchtrue.shop.Outcome;
import benchtrue.shop.Overhead;
import benchtrue.shop.PaidBy;
import benchtrue.shop.PaidHours;
import benchtrue.shop.PartKind;
import benchtrue.shop.PartUse;
import benchtrue.shop.PartUses;
import benchtrue.shop.PriceBook;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.QuoteBasis;
import benchtrue.shop.QuotedLine;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.RepairType;
import benchtrue.shop.ReturnReason;
import benchtrue.shop.Ticket;
import benchtrue.shop.TicketStatus;
import benchtrue.shop.Tickets;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeEntry;
import benchtrue.shop.TimeKind;
import benchtrue.shop.Wage;
import benchtrue.shop.Wait;
import benchtrue.shop.WaitReason;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * Builds a small shop for a test. Calls speak of the ticket, line or book version named last; what is not said is an
 * ordinary closed job of January 2026 on an acoustic guitar, in force under one price book of 2020.
 */
public final class ShopBuilder {
    private static final long HOURLY_PRICE = 100 * Money.UNIT;
    private final TreeMap<Integer, Map<String, RepairType>> books = new TreeMap<>();
    private final TreeMap<String, Ticket> tickets = new TreeMap<>();
    private final TreeMap<String, String> reworks = new TreeMap<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private final List<Use> uses = new ArrayList<>();
    private final List<WageOf> wages = new ArrayList<>();
    private final List<Overhead> overheads = new ArrayList<>();
    private final List<WaitOf> waits = new ArrayList<>();
    private final TreeSet<String> missing = new TreeSet<>();
    private Completeness read = Completeness.WHOLE;
    private int asOf = day("2026-10-31");
    private int version = day("2020-01-01");
    private String ticket = "";

    private record Line(QuotedLine row, String ticket, String type, String reworkOf, String reworkOfLine) {}

    private record Entry(List<String> tickets, String line, String type, String technician, TimeEntry row) {}

    private record Use(String ticket, String line, String part, PartUse row) {}

    private record WageOf(String technician, Wage wage, PaidHours paid) {}

    private record WaitOf(String ticket, Wait row) {}

    /** Returns days since 1970-01-01. */
    public static int day(String date) {
        return (int) LocalDate.parse(date).toEpochDay();
    }

    /** Returns {@code year * 12 + month - 1} of {@code 2026-03}. */
    public static int month(String month) {
        return Integer.parseInt(month.substring(0, 4)) * 12 + Integer.parseInt(month.substring(5)) - 1;
    }

    private static long seconds(double hours) {
        return Hours.seconds(BigDecimal.valueOf(hours));
    }

    private static long money(double amount) {
        return Money.of(BigDecimal.valueOf(amount));
    }

    public ShopBuilder asOf(String date) {
        asOf = day(date);
        return this;
    }

    /** Speaks of the price book of a date from here on. */
    public ShopBuilder book(String effective) {
        version = day(effective);
        return this;
    }

    /** Adds a repair type of the family fretwork at 100 an hour. */
    public ShopBuilder type(String key, double bookHours) {
        return type(key, bookHours, "fretwork");
    }

    public ShopBuilder type(String key, double bookHours, String family) {
        long seconds = seconds(bookHours);
        return type(new RepairType(
                key,
                key.replace('-', ' '),
                family,
                seconds,
                Money.perHour(HOURLY_PRICE, seconds),
                Absent.AMOUNT,
                List.of(),
                Absent.AMOUNT,
                0));
    }

    public ShopBuilder type(RepairType type) {
        books.computeIfAbsent(version, v -> new HashMap<>()).put(type.repairType(), type);
        return this;
    }

    /** Begins a closed ticket opened on 2026-01-10. */
    public ShopBuilder ticket(String key) {
        ticket = key;
        int opened = day("2026-01-10");
        tickets.put(
                key,
                new Ticket(
                        key,
                        opened,
                        Absent.DAY,
                        opened + 14,
                        Absent.DAY,
                        TicketStatus.CLOSED,
                        "acoustic-guitar",
                        Absent.DAY,
                        List.of(),
                        "",
                        Absent.INDEX));
        return this;
    }

    /** Changes the ticket named last. */
    public ShopBuilder with(UnaryOperator<Ticket> change) {
        tickets.computeIfPresent(ticket, (key, row) -> change.apply(row));
        return this;
    }

    /** The ticket named last was opened on a date and closed two weeks later. */
    public ShopBuilder opened(String date) {
        return dates(day(date), day(date) + 14, TicketStatus.CLOSED);
    }

    public ShopBuilder closed(String date) {
        return dates(tickets.get(ticket).opened(), day(date), TicketStatus.CLOSED);
    }

    public ShopBuilder stillOpen() {
        return dates(tickets.get(ticket).opened(), Absent.DAY, TicketStatus.OPEN);
    }

    public ShopBuilder voided() {
        return dates(tickets.get(ticket).opened(), tickets.get(ticket).closed(), TicketStatus.VOID);
    }

    /** The bench work on the ticket named last is done; its owner has not come yet. */
    public ShopBuilder finished(String date) {
        return with(t -> new Ticket(
                t.ticket(),
                t.opened(),
                t.promised(),
                t.closed(),
                day(date),
                t.status(),
                t.instrumentClass(),
                t.builtYear(),
                t.traits(),
                t.quotedBy(),
                t.reworkOf()));
    }

    /** The ticket named last was promised for a date. */
    public ShopBuilder promised(String date) {
        return with(t -> new Ticket(
                t.ticket(),
                t.opened(),
                day(date),
                t.closed(),
                t.finished(),
                t.status(),
                t.instrumentClass(),
                t.builtYear(),
                t.traits(),
                t.quotedBy(),
                t.reworkOf()));
    }

    private ShopBuilder dates(int opened, int closed, TicketStatus status) {
        return with(t -> new Ticket(
                t.ticket(),
                opened,
                t.promised(),
                closed,
                t.finished(),
                status,
                t.instrumentClass(),
                t.builtYear(),
                t.traits(),
                t.quotedBy(),
                t.reworkOf()));
    }

    /** The ticket named last is of an instrument class, with a quote writer and traits. */
    public ShopBuilder of(String instrumentClass, String quotedBy, String... traits) {
        return with(t -> new Ticket(
                t.ticket(),
                t.opened(),
                t.promised(),
                t.closed(),
                t.finished(),
                t.status(),
                instrumentClass,
                t.builtYear(),
                List.of(traits),
                quotedBy,
                t.reworkOf()));
    }

    /** The ticket named last puts an earlier ticket right. */
    public ShopBuilder putsRight(String earlierTicket) {
        reworks.put(ticket, earlierTicket);
        return this;
    }

    /** Adds an accepted line, numbered from 1 within its ticket, at 100 an hour. */
    public ShopBuilder line(String type, double quotedHours) {
        long count = lines.stream().filter(l -> l.ticket.equals(ticket)).count();
        long quoted = seconds(quotedHours);
        QuotedLine row = new QuotedLine(
                Absent.INDEX,
                Long.toString(count + 1),
                Absent.INDEX,
                quoted,
                Money.perHour(HOURLY_PRICE, quoted),
                Absent.AMOUNT,
                Outcome.ACCEPTED,
                Absent.DAY,
                Absent.AMOUNT,
                Absent.AMOUNT,
                Absent.AMOUNT,
                Absent.AMOUNT,
                ChargeKind.REPAIR,
                QuoteBasis.FIXED,
                PaidBy.CUSTOMER,
                Absent.INDEX,
                Absent.INDEX,
                null);
        lines.add(new Line(row, ticket, type, "", ""));
        return this;
    }

    /** Changes the line named last. */
    public ShopBuilder withLine(UnaryOperator<QuotedLine> change) {
        Line last = lines.remove(lines.size() - 1);
        lines.add(new Line(change.apply(last.row), last.ticket, last.type, last.reworkOf, last.reworkOfLine));
        return this;
    }

    public ShopBuilder declined() {
        return withLine(q -> rewrite(q, q.quotedSeconds(), Outcome.DECLINED, q.quotedOn(), q.chargeKind(), q.paidBy()));
    }

    public ShopBuilder charged(ChargeKind kind) {
        return withLine(q -> rewrite(q, q.quotedSeconds(), q.outcome(), q.quotedOn(), kind, q.paidBy()));
    }

    public ShopBuilder paidBy(PaidBy payer) {
        return withLine(q -> rewrite(q, q.quotedSeconds(), q.outcome(), q.quotedOn(), q.chargeKind(), payer));
    }

    /** The line named last was found on the bench and quoted on a later date. */
    public ShopBuilder foundOn(String date) {
        return withLine(q -> rewrite(q, q.quotedSeconds(), q.outcome(), day(date), q.chargeKind(), q.paidBy()));
    }

    public ShopBuilder withoutQuotedHours() {
        return withLine(q -> rewrite(q, Absent.AMOUNT, q.outcome(), q.quotedOn(), q.chargeKind(), q.paidBy()));
    }

    public ShopBuilder withoutPrice() {
        return withLine(q -> new QuotedLine(
                q.ticket(),
                q.line(),
                q.repairType(),
                q.quotedSeconds(),
                Absent.AMOUNT,
                q.quotedParts(),
                q.outcome(),
                q.quotedOn(),
                q.firstQuotedSeconds(),
                q.firstQuotedLabour(),
                q.billedLabour(),
                q.billedParts(),
                q.chargeKind(),
                q.quoteBasis(),
                q.paidBy(),
                q.reworkOf(),
                q.reworkOfLine(),
                q.returnReason()));
    }

    private static QuotedLine rewrite(
            QuotedLine q, long quoted, Outcome outcome, int quotedOn, ChargeKind charge, PaidBy payer) {
        return new QuotedLine(
                q.ticket(),
                q.line(),
                q.repairType(),
                quoted,
                q.quotedLabour(),
                q.quotedParts(),
                outcome,
                quotedOn,
                q.firstQuotedSeconds(),
                q.firstQuotedLabour(),
                q.billedLabour(),
                q.billedParts(),
                charge,
                q.quoteBasis(),
                payer,
                q.reworkOf(),
                q.reworkOfLine(),
                q.returnReason());
    }

    /** The line named last puts a line of an earlier ticket right; without a line's key, the ticket as a whole. */
    public ShopBuilder putsRight(String earlierTicket, String earlierLine, ReturnReason reason) {
        Line last = lines.remove(lines.size() - 1);
        QuotedLine q = last.row;
        QuotedLine row = new QuotedLine(
                q.ticket(),
                q.line(),
                q.repairType(),
                q.quotedSeconds(),
                q.quotedLabour(),
                q.quotedParts(),
                q.outcome(),
                q.quotedOn(),
                q.firstQuotedSeconds(),
                q.firstQuotedLabour(),
                q.billedLabour(),
                q.billedParts(),
                q.chargeKind(),
                q.quoteBasis(),
                q.paidBy(),
                Absent.INDEX,
                Absent.INDEX,
                reason);
        lines.add(new Line(row, last.ticket, last.type, earlierTicket, earlierLine));
        return this;
    }

    /** Logs bench time to a line of the ticket named last. */
    public ShopBuilder logged(String technician, String line, double hours) {
        return entry(List.of(ticket), line, "", technician, TimeKind.BENCH, hours);
    }

    /** Logs bench time to a line of the ticket named last on a date of its own. */
    public ShopBuilder loggedOn(String date, String technician, String line, double hours) {
        logged(technician, line, hours);
        Entry last = entries.remove(entries.size() - 1);
        TimeEntry row = last.row;
        entries.add(new Entry(
                last.tickets,
                line,
                last.type,
                technician,
                new TimeEntry(
                        row.ticket(),
                        row.line(),
                        row.repairType(),
                        row.technician(),
                        day(date),
                        row.seconds(),
                        row.kind())));
        return this;
    }

    /** Logs bench time to the ticket named last as a whole. */
    public ShopBuilder whole(String technician, double hours) {
        return entry(List.of(ticket), "", "", technician, TimeKind.BENCH, hours);
    }

    /** Logs bench time on the ticket named last that names a repair type. */
    public ShopBuilder did(String technician, String type, double hours) {
        return entry(List.of(ticket), "", type, technician, TimeKind.BENCH, hours);
    }

    /** Logs one entry over several tickets. */
    public ShopBuilder shared(String technician, double hours, String... over) {
        return entry(List.of(over), "", "", technician, TimeKind.BENCH, hours);
    }

    /** Logs time of another kind to the ticket named last, or to none where no ticket was named yet. */
    public ShopBuilder time(String technician, TimeKind kind, double hours) {
        return entry(ticket.isEmpty() ? List.of() : List.of(ticket), "", "", technician, kind, hours);
    }

    private ShopBuilder entry(
            List<String> over, String line, String type, String technician, TimeKind kind, double hours) {
        int worked =
                over.isEmpty() ? day("2026-01-12") : tickets.get(over.get(0)).opened() + 2;
        TimeEntry row =
                new TimeEntry(Absent.INDEX, Absent.INDEX, Absent.INDEX, Absent.INDEX, worked, seconds(hours), kind);
        entries.add(new Entry(over, line, type, technician, row));
        return this;
    }

    /** Draws a part for a line of the ticket named last. */
    public ShopBuilder part(String line, String part, double quantity, double unitCost) {
        uses.add(new Use(
                ticket,
                line,
                part,
                new PartUse(
                        Absent.INDEX,
                        Absent.INDEX,
                        Absent.INDEX,
                        money(quantity),
                        money(unitCost),
                        Absent.AMOUNT,
                        ticket.isEmpty()
                                ? day("2026-01-12")
                                : tickets.get(ticket).opened() + 2,
                        PartKind.PART)));
        return this;
    }

    public ShopBuilder wage(String technician, double hourly, String from) {
        Wage wage = new Wage(Absent.INDEX, money(hourly), day(from), seconds(30), "technician", null);
        wages.add(new WageOf(technician, wage, null));
        return this;
    }

    public ShopBuilder paid(String technician, String month, double hours) {
        wages.add(new WageOf(technician, null, new PaidHours(Absent.INDEX, month(month), seconds(hours))));
        return this;
    }

    public ShopBuilder overhead(String month, String account, double amount, CostBehaviour behaviour) {
        overheads.add(new Overhead(month(month), account, money(amount), behaviour));
        return this;
    }

    public ShopBuilder waited(String from, String to, WaitReason reason) {
        waits.add(new WaitOf(ticket, new Wait(Absent.INDEX, day(from), day(to), reason)));
        return this;
    }

    /** The ticket named last still waits. */
    public ShopBuilder waits(String from, WaitReason reason) {
        waits.add(new WaitOf(ticket, new Wait(Absent.INDEX, day(from), Absent.DAY, reason)));
        return this;
    }

    /** So much could be read. */
    public ShopBuilder read(Completeness completeness) {
        read = completeness;
        return this;
    }

    /** An optional table was not in the inbox. */
    public ShopBuilder without(String table) {
        missing.add(table);
        return this;
    }

    /** Returns the ledger of this shop. */
    public Ledger build() {
        return new Build(this).ledger();
    }

    /** Resolves keys to indices. */
    private static final class Build {
        private final ShopBuilder shop;
        private final Names types;
        private final Names technicians;
        private final Names parts;
        private final List<String> tickets;
        private final List<Line> lines;

        Build(ShopBuilder shop) {
            this.shop = shop;
            TreeSet<String> typeKeys = new TreeSet<>();
            shop.books.values().forEach(b -> typeKeys.addAll(b.keySet()));
            shop.lines.forEach(l -> typeKeys.add(l.type));
            types = Names.of(typeKeys);
            TreeSet<String> people = new TreeSet<>();
            shop.entries.forEach(e -> people.add(e.technician));
            shop.wages.forEach(w -> people.add(w.technician));
            technicians = Names.of(people);
            parts = Names.of(shop.uses.stream().map(Use::part).toList());
            tickets = List.copyOf(shop.tickets.keySet());
            lines = new ArrayList<>(shop.lines);
            lines.sort(Comparator.comparing(Line::ticket).thenComparing(l -> l.row.line()));
        }

        private int ticket(String key) {
            return key.isEmpty() ? Absent.INDEX : tickets.indexOf(key);
        }

        private int line(String ticket, String line) {
            for (int i = 0; i < lines.size(); i++) {
                if (lines.get(i).ticket.equals(ticket)
                        && lines.get(i).row.line().equals(line)) {
                    return i;
                }
            }
            return Absent.INDEX;
        }

        Ledger ledger() {
            return new Ledger(
                    shop.asOf,
                    types,
                    technicians,
                    parts,
                    new PriceBooks(shop.books.entrySet().stream()
                            .map(b -> new PriceBook(b.getKey(), b.getValue()))
                            .toList()),
                    ticketColumns(),
                    lineColumns(),
                    timeColumns(),
                    partColumns(),
                    shop.wages.stream()
                            .filter(w -> w.wage != null)
                            .map(this::wage)
                            .sorted(Comparator.comparingInt(Wage::technician).thenComparingInt(Wage::effectiveFrom))
                            .toList(),
                    shop.wages.stream()
                            .filter(w -> w.paid != null)
                            .map(w -> new PaidHours(technicians.code(w.technician), w.paid.month(), w.paid.seconds()))
                            .toList(),
                    shop.overheads,
                    shop.waits.stream()
                            .map(w -> new Wait(ticket(w.ticket), w.row.from(), w.row.to(), w.row.reason()))
                            .toList(),
                    shop.read,
                    shop.missing);
        }

        private Wage wage(WageOf w) {
            Wage wage = w.wage;
            return new Wage(
                    technicians.code(w.technician),
                    wage.hourlyWage(),
                    wage.effectiveFrom(),
                    wage.weeklyBenchSeconds(),
                    wage.grade(),
                    wage.payBasis());
        }

        private Tickets ticketColumns() {
            List<Ticket> rows = new ArrayList<>();
            for (Ticket t : shop.tickets.values()) {
                rows.add(new Ticket(
                        t.ticket(),
                        t.opened(),
                        t.promised(),
                        t.closed(),
                        t.finished(),
                        t.status(),
                        t.instrumentClass(),
                        t.builtYear(),
                        t.traits(),
                        t.quotedBy(),
                        ticket(shop.reworks.getOrDefault(t.ticket(), ""))));
            }
            return new Tickets(rows);
        }

        private QuotedLines lineColumns() {
            List<QuotedLine> rows = new ArrayList<>();
            for (Line l : lines) {
                QuotedLine q = l.row;
                rows.add(new QuotedLine(
                        ticket(l.ticket),
                        q.line(),
                        types.code(l.type),
                        q.quotedSeconds(),
                        q.quotedLabour(),
                        q.quotedParts(),
                        q.outcome(),
                        q.quotedOn(),
                        q.firstQuotedSeconds(),
                        q.firstQuotedLabour(),
                        q.billedLabour(),
                        q.billedParts(),
                        q.chargeKind(),
                        q.quoteBasis(),
                        q.paidBy(),
                        ticket(l.reworkOf),
                        line(l.reworkOf, l.reworkOfLine),
                        q.returnReason()));
            }
            return new QuotedLines(rows);
        }

        private TimeEntries timeColumns() {
            List<Entry> sorted = new ArrayList<>(shop.entries);
            sorted.sort(Comparator.comparingInt((Entry e) -> place(e)).thenComparingInt(e -> e.row.workDay()));
            TimeEntries.Builder rows = new TimeEntries.Builder();
            for (Entry e : sorted) {
                TimeEntry row = new TimeEntry(
                        place(e),
                        e.tickets.isEmpty() ? Absent.INDEX : line(e.tickets.get(0), e.line),
                        types.code(e.type),
                        technicians.code(e.technician),
                        e.row.workDay(),
                        e.row.seconds(),
                        e.row.kind());
                if (e.tickets.size() > 1) {
                    rows.addShared(
                            row,
                            e.tickets.stream().mapToInt(this::ticket).sorted().toArray());
                } else {
                    rows.add(row);
                }
            }
            return rows.build();
        }

        private int place(Entry e) {
            return switch (e.tickets.size()) {
                case 0 -> Absent.INDEX;
                case 1 -> ticket(e.tickets.get(0));
                default -> TimeEntries.SHARED;
            };
        }

        private PartUses partColumns() {
            List<Use> sorted = new ArrayList<>(shop.uses);
            sorted.sort(Comparator.comparingInt(u -> ticket(u.ticket)));
            List<PartUse> rows = new ArrayList<>();
            for (Use u : sorted) {
                PartUse row = u.row;
                rows.add(new PartUse(
                        ticket(u.ticket),
                        line(u.ticket, u.line),
                        parts.code(u.part),
                        row.quantity(),
                        row.unitCost(),
                        row.unitCharge(),
                        row.usedOn(),
                        row.kind()));
            }
            return new PartUses(rows);
        }
    }
}
