package benchtrue.findings;

import benchtrue.findings.Cause.Kind;
import benchtrue.format.Figures;
import benchtrue.format.Words;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.LineState;
import benchtrue.shop.PaidBy;
import benchtrue.shop.RepairType;
import benchtrue.shop.Tickets;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Lists everything that may set jobs of one repair apart from its others and stands in the records. */
final class Circumstances {
    /** Quotes over the book, and prices of an hour over the book's, from which on jobs may differ. */
    private static final List<String> LEVELS = List.of(
            "0.75", "0.8", "0.85", "0.9", "0.925", "0.95", "0.975", "1", "1.025", "1.05", "1.075", "1.1", "1.15", "1.2",
            "1.25");

    private static final double EXACT = 1e-6;
    private static final int MONTHS_A_QUARTER = 3;
    private static final int[] QUARTERS = {1, 2, 3, 4, 6};
    /** Parts into which years of building are cut, each with about as many visits. */
    private static final int YEARS = 25;

    private final JobLines jobs;
    private final Ledger ledger;
    private final Tickets tickets;
    private final JobModel model;
    private final Figures figures;
    private final int[] opened;
    private final List<Circumstance> all = new ArrayList<>();

    private Circumstances(JobLines jobs, JobModel model, Figures figures) {
        this.jobs = jobs;
        this.model = model;
        this.figures = figures;
        ledger = jobs.ledger();
        tickets = ledger.tickets();
        opened = IntStream.range(0, jobs.size())
                .map(line -> tickets.opened(ticket(line)))
                .toArray();
    }

    /** Returns them all; which jobs have one does not depend on hours. */
    static List<Circumstance> of(JobLines jobs, JobModel model, Figures figures) {
        Circumstances found = new Circumstances(jobs, model, figures);
        found.instruments();
        found.years();
        found.people();
        found.levels();
        found.periods();
        found.agreed();
        found.pairs();
        return found.all;
    }

    private int ticket(int line) {
        return ledger.lines().ticket(line);
    }

    private void instruments() {
        JobFactors factors = model.rows().factors();
        for (int code = 0; code < factors.classes().size(); code++) {
            int level = code;
            String name = factors.classes().name(code);
            if (!name.isEmpty()) {
                all.add(Circumstance.of(
                        Kind.INSTRUMENT_CLASS,
                        name,
                        "on " + plain(name) + " instruments",
                        line -> factors.instrumentClass(line) == level,
                        line -> model.fit().effect(JobRows.CLASS, factors.instrumentClass(line))));
            }
        }
        for (int code = 0; code < factors.traits().size(); code++) {
            int trait = code;
            String name = factors.traits().name(code);
            all.add(Circumstance.of(
                    Kind.TRAIT,
                    name,
                    "with " + plain(name),
                    line -> factors.has(line, trait),
                    line -> model.traitEffect(line, trait)));
        }
    }

    private static String plain(String word) {
        return word.replace('-', ' ');
    }

    private void years() {
        int[] known = IntStream.range(0, tickets.size())
                .map(tickets::builtYear)
                .filter(Absent::has)
                .sorted()
                .toArray();
        IntStream.range(1, known.length > 0 ? YEARS : 0)
                .map(part -> known[(int) ((long) part * known.length / YEARS)])
                .distinct()
                .filter(year -> year > known[0])
                .forEach(year -> all.add(Circumstance.of(
                        Kind.CONDITION, "built-before-" + year, "of instruments built before " + year, line -> {
                            int built = tickets.builtYear(ticket(line));
                            return Absent.has(built) && built < year;
                        })));
    }

    private void people() {
        JobFactors factors = model.rows().factors();
        for (int code = 0; code < ledger.technicians().size(); code++) {
            int person = code;
            String name = ledger.technicians().name(code);
            all.add(Circumstance.of(
                    Kind.TECHNICIAN,
                    name,
                    "done by " + name,
                    line -> factors.technician(line) == person,
                    line -> effect(JobRows.TECHNICIAN, factors.technician(line))));
        }
        for (int code = 0; code < factors.writers().size(); code++) {
            int person = code;
            String name = factors.writers().name(code);
            all.add(Circumstance.of(
                    Kind.QUOTE_WRITER,
                    name,
                    "quoted by " + name,
                    line -> factors.writer(line) == person,
                    line -> effect(JobRows.WRITER, factors.writer(line))));
        }
    }

    private double effect(int factor, int level) {
        return level == Absent.INDEX ? 0 : model.fit().effect(factor, level);
    }

    private void levels() {
        JobFactors factors = model.rows().factors();
        for (String level : LEVELS) {
            double bound = StrictMath.log(Double.parseDouble(level)) - EXACT;
            String book = figures.ratio(new BigDecimal(level).doubleValue()) + " of the book's ";
            all.add(Circumstance.of(
                            Kind.PRICE_LEVEL,
                            "hours-from-" + level,
                            "quoted at " + book + "hours or more",
                            line -> factors.adjustment(line) >= bound)
                    .orElse("hours-below-" + level, "quoted below " + book + "hours"));
            all.add(Circumstance.of(
                            Kind.PRICE_LEVEL,
                            "price-from-" + level,
                            "quoted at " + book + "price of an hour or more",
                            line -> rate(line) >= bound)
                    .orElse("price-below-" + level, "quoted below " + book + "price of an hour"));
        }
    }

    /** Returns ln(price of a quoted hour over the book's on that day); 0 where either is not known. */
    private double rate(int line) {
        long labour = ledger.lines().quotedLabour(line);
        long seconds = ledger.lines().quotedSeconds(line);
        if (!Absent.has(labour) || !Absent.has(seconds) || labour <= 0 || seconds <= 0) {
            return 0;
        }
        return ledger.books()
                .type(
                        ledger.repairTypes().name(ledger.lines().repairType(line)),
                        Absent.firstOf(ledger.lines().quotedOn(line), opened[line]))
                .filter(type -> type.bookSeconds() > 0 && type.bookLabour() > 0)
                .map(type -> StrictMath.log(labour / (double) seconds * type.bookSeconds() / type.bookLabour()))
                .orElse(0.0);
    }

    private void periods() {
        int[] days = Arrays.stream(model.rows().line())
                .map(line -> opened[line])
                .sorted()
                .toArray();
        if (days.length == 0) {
            return;
        }
        LocalDate last = LocalDate.ofEpochDay(days[days.length - 1]);
        LocalDate first = LocalDate.ofEpochDay(days[0]).withDayOfMonth(1);
        for (LocalDate month = first.plusMonths(1); !month.isAfter(last); month = month.plusMonths(1)) {
            all.add(since(month));
        }
        LocalDate quarter = first.withMonth((first.getMonthValue() - 1) / MONTHS_A_QUARTER * MONTHS_A_QUARTER + 1);
        for (; !quarter.isAfter(last); quarter = quarter.plusMonths(MONTHS_A_QUARTER)) {
            for (int quarters : QUARTERS) {
                LocalDate end = quarter.plusMonths((long) quarters * MONTHS_A_QUARTER);
                if (end.isBefore(last)) {
                    all.add(during(quarter, end));
                }
            }
        }
    }

    private Circumstance since(LocalDate month) {
        int from = (int) month.toEpochDay();
        return Circumstance.of(
                        Kind.PERIOD,
                        "since-" + month,
                        "that came in since " + figures.monthOf(from),
                        line -> opened[line] >= from)
                .orElse("before-" + month, "that came in before " + figures.monthOf(from))
                .since(from);
    }

    private Circumstance during(LocalDate begin, LocalDate end) {
        int from = (int) begin.toEpochDay();
        int until = (int) end.toEpochDay();
        return Circumstance.of(
                Kind.PERIOD,
                begin + "-to-" + end,
                "that came in from " + figures.monthOf(from) + " to " + figures.monthOf(until - 1),
                line -> opened[line] >= from && opened[line] < until);
    }

    /** Who pays, and whether the instrument was here before. */
    private void agreed() {
        for (PaidBy payer : PaidBy.values()) {
            String word = Words.of(payer);
            IntPredicate pays = line -> ledger.lines().paidBy(line) == payer;
            all.add(Circumstance.of(Kind.PAYER, word, "paid by " + plain(word), pays));
        }
        IntPredicate back =
                line -> tickets.reworkOf(ticket(line)) >= 0 || ledger.lines().reworkOf(line) >= 0;
        all.add(Circumstance.of(Kind.RETURNING, "returning", "on instruments that were here before", back)
                .orElse("new", "on instruments that are new here"));
    }

    private void pairs() {
        int[] starts = ledger.lines().starts(tickets.size());
        for (int code = 0; code < ledger.repairTypes().size(); code++) {
            int other = code;
            String key = ledger.repairTypes().name(code);
            String title = ledger.books()
                    .type(key, ledger.asOf())
                    .map(RepairType::title)
                    .orElse(plain(key));
            all.add(Circumstance.of(
                    Kind.PAIRING, key, "done together with " + title, line -> onTicket(starts, line, other)));
        }
    }

    private boolean onTicket(int[] starts, int line, int type) {
        for (int other = starts[ticket(line)]; other < starts[ticket(line) + 1]; other++) {
            boolean accepted = jobs.state(other) == LineState.CLOSED || jobs.state(other) == LineState.OPEN;
            if (other != line && accepted && ledger.lines().repairType(other) == type) {
                return true;
            }
        }
        return false;
    }
}
