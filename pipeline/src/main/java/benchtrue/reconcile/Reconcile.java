package benchtrue.reconcile;

import benchtrue.format.Spelling;
import benchtrue.intake.Exports;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.PartColumn;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.settings.FamilyPolicy;
import benchtrue.settings.Policy;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Notice;
import benchtrue.shop.Overhead;
import benchtrue.shop.PaidHours;
import benchtrue.shop.PartUses;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.Refusal;
import benchtrue.shop.Tickets;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.Wage;
import benchtrue.shop.Wait;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ForkJoinTask;
import java.util.function.IntUnaryOperator;
import java.util.function.LongUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Brings all rows together into one ledger. */
public final class Reconcile {
    /**
     * Decides which rows count, resolves every reference and proves the balances.
     *
     * @param exports everything that stands in the shop's files
     * @param settings the shop's settings
     * @param asOf the as-of date in days since 1970-01-01; later rows enter no figure
     * @throws benchtrue.shop.Refusal where a version of the price book holds nothing that can be used, and where the settings name
     *     a family that stands in no version
     * @throws IllegalStateException where a balance fails: a fault of the program
     */
    public Reconciled reconcile(Exports exports, Settings settings, int asOf) {
        Reconciled reconciled = new BuildLedger(exports, settings, asOf).build();
        KnownFamilies.check(settings.policy(), reconciled.ledger().books());
        return reconciled;
    }

    /** Holds the families that have a policy of their own against those of the price book. */
    static final class KnownFamilies {
        private KnownFamilies() {}

        /**
         * Does nothing where every family stands in some version of the price book: one that fell out of use stops no night.
         *
         * @throws Refusal naming the line, where a family stands in none
         */
        static void check(Policy policy, PriceBooks books) {
            TreeSet<String> known = new TreeSet<>();
            books.versions().forEach(version -> version.types().values().forEach(type -> known.add(type.family())));
            for (FamilyPolicy family : policy.families()) {
                if (!known.contains(family.family())) {
                    String advice = Spelling.nearest(family.family(), known)
                            .map(near -> "Did you mean \"" + near + "\"? ")
                            .orElse("");
                    throw new Refusal(
                            ExitCode.SETTINGS,
                            ReadSettings.FILE + ", line " + family.line() + ": found [policy.family." + family.family()
                                    + "], a family that no repair of the price book has. " + advice
                                    + "Expected one of: "
                                    + String.join(", ", known) + ".");
                }
            }
        }
    }

    /** Builds the ledger table by table: what others refer to comes first. */
    static final class BuildLedger {
        private final Exports exports;
        private final Settings settings;
        private final int asOf;
        private final Map<Table, RowDispositions> tables = new EnumMap<>(Table.class);
        private final List<Balance> balances = new ArrayList<>();
        private final List<Notice> derived = new ArrayList<>();

        BuildLedger(Exports exports, Settings settings, int asOf) {
            this.exports = exports;
            this.settings = settings;
            this.asOf = asOf;
        }

        Reconciled build() {
            for (Table table : Table.values()) {
                tables.put(table, new RowDispositions(exports.rows(table)));
            }
            tables.values().parallelStream().forEach(BuildLedger::sift);
            Ledger ledger = ledger();
            tables.values().forEach(RefuseAlike::check);
            tables.values().forEach(table -> balances.addAll(Balances.rows(table)));
            balances.stream().filter(balance -> !balance.holds()).findFirst().ifPresent(failed -> {
                throw new IllegalStateException("The balance fails: " + failed);
            });
            return new Reconciled(ledger, balances, notices(), new SetAside(tables), exports.files());
        }

        private static void sift(RowDispositions table) {
            ResolveVersions.resolve(table);
            switch (table.rows().table()) {
                case TIME_LOG -> FindCopies.mark(table, TimeColumn.WORK_DATE);
                case PARTS_USAGE -> FindCopies.mark(table, PartColumn.USED_ON);
                default -> {}
            }
            table.setAsideUnreadable();
        }

        private RowDispositions table(Table table) {
            return tables.get(table);
        }

        private Ledger ledger() {
            UntoldTickets untold = new UntoldTickets(
                    table(Table.TICKETS),
                    () -> new TicketDays(
                            table(Table.QUOTED_LINES), table(Table.TIME_LOG), asOf, settings.finishedAfterDays()));
            Tickets tickets = new BuildTickets(table(Table.TICKETS), asOf, untold).build();
            TicketKeys keys = new TicketKeys(tickets, table(Table.TICKETS));
            derived.addAll(untold.notices());
            Optional<UsualQuotes> usual = usualQuotes(tickets, keys);
            PriceBooks books = usual.map(UsualQuotes::books)
                    .orElseGet(() -> new BuildBooks(table(Table.PRICE_BOOK), table(Table.SURCHARGES)).build());
            usual.ifPresent(quotes -> derived.addAll(quotes.notices(books)));
            TypeKeys types =
                    new TypeKeys(books, usual.map(UsualQuotes::withoutQuote).orElse(Set.of()));
            BuildLines buildLines = new BuildLines(table(Table.QUOTED_LINES), tickets, keys, types);
            LongUnaryOperator priced =
                    usual.<LongUnaryOperator>map(quotes -> quotes::seconds).orElse(labour -> Absent.AMOUNT);
            QuotedLines lines = buildLines.build(books, asOf, priced);
            LineKeys lineKeys = buildLines.lineKeys();
            // Tables that only refer to tickets and lines are built side by side.
            BuildParts buildParts = new BuildParts(table(Table.PARTS_USAGE), keys, lineKeys);
            ForkJoinTask<PartUses> building =
                    ForkJoinTask.adapt(() -> buildParts.build(asOf)).fork();
            BuildShop shop = new BuildShop(asOf);
            ForkJoinTask<List<Wait>> waiting = ForkJoinTask.adapt(() -> shop.waits(table(Table.WAITS), keys))
                    .fork();
            People people = new People(table(Table.TIME_LOG), table(Table.TECHNICIANS), table(Table.PAID_HOURS));
            List<Wage> wages = shop.wages(table(Table.TECHNICIANS), people);
            List<PaidHours> paid = shop.paid(table(Table.PAID_HOURS), people);
            EntrySpans spans = new EntrySpans(exports.rows(Table.TIME_LOG), settings);
            EntryHours hours = new EntryHours(exports.rows(Table.TIME_LOG), settings.zone(), spans);
            BuildTime buildTime = new BuildTime(table(Table.TIME_LOG), keys, types, lineKeys, people, hours, spans);
            TimeEntries time = time(buildTime, tickets, lines, wages, people);
            derived.addAll(spans.notices(buildTime.spread()));
            balances.add(Balances.hours(table(Table.TIME_LOG), hours, buildTime.sharedAway(), seconds(time)));
            List<Overhead> overheads = shop.overheads(table(Table.OVERHEADS));
            PartUses parts = building.join();
            List<Wait> waits = waiting.join();
            balances.addAll(Balances.lines(table(Table.QUOTED_LINES), lines));
            balances.add(Balances.parts(table(Table.PARTS_USAGE), parts));
            balances.add(Balances.overheads(table(Table.OVERHEADS), overheads));
            balances.add(Balances.paid(table(Table.PAID_HOURS), paid));
            Completeness completeness = new WeighUnread(
                            table(Table.TIME_LOG), table(Table.QUOTED_LINES), hours, types, settings.mostUnreadShare())
                    .weigh(tables, tickets, lines, time);
            return new Ledger(
                    asOf,
                    types.names(),
                    people.names(),
                    buildParts.names(),
                    books,
                    tickets,
                    lines,
                    time,
                    parts,
                    wages,
                    paid,
                    overheads,
                    waits,
                    completeness,
                    missing());
        }

        /** Returns what was usually quoted, where no price book is there. */
        private Optional<UsualQuotes> usualQuotes(Tickets tickets, TicketKeys keys) {
            boolean there = exports.rows(Table.PRICE_BOOK).files().stream().anyMatch(file -> Absent.has(file.day()));
            if (there) {
                return Optional.empty();
            }
            RowDispositions quotes = table(Table.QUOTED_LINES);
            IntUnaryOperator day = row -> {
                int ticket = keys.find(quotes.rows().text(LineColumn.TICKET, row));
                return Absent.firstOf(
                        quotes.rows().day(LineColumn.QUOTED_ON, row), ticket < 0 ? asOf : tickets.opened(ticket));
            };
            return Optional.of(new UsualQuotes(quotes, day, settings, asOf));
        }

        private TimeEntries time(BuildTime build, Tickets tickets, QuotedLines lines, List<Wage> wages, People people) {
            TimeEntries time = build.build(asOf);
            TimeDoubts doubts = new TimeDoubts(table(Table.TIME_LOG), build.rowsInOrder(), time);
            doubts.outsideTicket(tickets);
            doubts.longDays();
            doubts.equalToQuote(lines);
            doubts.perhapsOfAnother(tickets, lines);
            if (!missing().contains(Table.TECHNICIANS.title())) {
                doubts.withoutWage(wages, people.names().size());
                doubts.keyUsedAgain(wages);
            }
            return time;
        }

        private static long seconds(TimeEntries time) {
            long seconds = 0;
            for (int entry = 0; entry < time.size(); entry++) {
                seconds += time.seconds(entry);
            }
            return seconds;
        }

        private Set<String> missing() {
            return Stream.of(Table.values())
                    .filter(table -> table.need() == Need.DERIVED || table.need() == Need.OPTIONAL)
                    .filter(table -> !exports.tables().containsKey(table))
                    .map(Table::title)
                    .collect(Collectors.toSet());
        }

        private List<Notice> notices() {
            List<Notice> notices = new ArrayList<>(exports.notices());
            notices.addAll(derived);
            Doubts all = new Doubts();
            tables.values().forEach(table -> all.addAll(table.doubts()));
            notices.addAll(all.notices());
            return Collections.unmodifiableList(notices);
        }
    }
}
