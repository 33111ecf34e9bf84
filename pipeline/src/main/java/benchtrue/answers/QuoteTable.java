package benchtrue.answers;

import benchtrue.findings.Findings;
import benchtrue.findings.FoundWork;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.format.Figures;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.ComingBook;
import benchtrue.revision.JobsThatFit;
import benchtrue.revision.Revision;
import benchtrue.shop.Absent;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import benchtrue.shop.Surcharge;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What whoever writes quotes needs of each repair: the book's hours and price, hours that fit so many jobs, and what to look
 * for at the counter. Wages, margins and who did the work do not stand here.
 *
 * @param families its repairs by family, in the order of their names
 */
public record QuoteTable(List<Family> families) {
    /** Shares of jobs for which the hours that fit are told. */
    public static final List<Double> SHARES = List.of(0.6, 0.8);

    /** Work that shows up more rarely is not worth a look at every instrument. */
    public static final double OFTEN = 0.10;

    private static final double ONE_IN = 0.55;

    public QuoteTable {
        families = List.copyOf(families);
    }

    /**
     * The repairs of one family.
     *
     * @param name empty where the book has none
     * @param longer traits that surely make its repairs longer, in words
     * @param rows by title
     */
    public record Family(String name, List<String> longer, List<Row> rows) {
        public Family {
            longer = List.copyOf(longer);
            rows = List.copyOf(rows);
        }
    }

    /**
     * One repair.
     *
     * @param now as the book in force has it; empty where it is only to come
     * @param coming as each book to come has it, where that differs from the one before, the earliest first
     * @param jobs finished jobs that tell how many hours fit
     * @param fitting how many of those fit the hours in force; 0 where there are none
     * @param hoursThatFit seconds that fit the {@link #SHARES} of jobs, as a book is written; absent where too little is known
     * @param lookFor what to look for at the counter, in words: what the book adds on a condition, then what is found most often
     */
    public record Row(
            Optional<RepairType> now,
            List<From> coming,
            int jobs,
            int fitting,
            List<Long> hoursThatFit,
            List<String> lookFor) {
        public Row {
            coming = List.copyOf(coming);
            hoursThatFit = List.copyOf(hoursThatFit);
            lookFor = List.copyOf(lookFor);
        }

        /** Returns the repair as the earliest of its books has it. */
        public RepairType repair() {
            return now.orElseGet(() -> coming.get(0).repair());
        }
    }

    /**
     * A repair as a book to come has it.
     *
     * @param effective first day of the book
     */
    public record From(int effective, RepairType repair) {}

    /** Selects and orders the rows. */
    public static QuoteTable of(JobLines jobs, Findings findings, Revision revision, Figures figures) {
        Ledger ledger = jobs.ledger();
        Set<String> keys =
                new TreeSet<>(ledger.books().inForce(ledger.asOf()).types().keySet());
        revision.coming().forEach(book -> keys.addAll(book.book().types().keySet()));
        Rows rows = new Rows(ledger, findings, revision, JobsThatFit.of(jobs, findings), figures);
        Map<String, List<Row>> families = new TreeMap<>();
        keys.stream()
                .map(rows::row)
                .sorted(Comparator.comparing(row -> row.repair().title()))
                .forEach(row -> families.computeIfAbsent(row.repair().family(), fresh -> new ArrayList<>())
                        .add(row));
        return new QuoteTable(families.entrySet().stream()
                .map(family -> new Family(family.getKey(), rows.longer(family.getKey()), family.getValue()))
                .toList());
    }

    /** Returns the work that is found often enough to look for, the most often first. */
    public static List<FoundWork> often(List<FoundWork> found) {
        return found.stream()
                .filter(pair -> pair.share() >= OFTEN)
                .sorted(Comparator.comparingDouble(FoundWork::share).reversed().thenComparingInt(FoundWork::found))
                .toList();
    }

    /** Returns how often, in words: up to every second, as one in so many; more often, as a share. */
    public static String often(double share, Figures figures) {
        return share > ONE_IN ? figures.percent(share) : "one in " + figures.count((long) StrictMath.rint(1 / share));
    }

    /** Makes the rows. */
    private record Rows(Ledger ledger, Findings findings, Revision revision, JobsThatFit fit, Figures figures) {
        Row row(String key) {
            Optional<RepairType> now = ledger.books().inForce(ledger.asOf()).type(key);
            List<From> coming = coming(key, now);
            int code = ledger.repairTypes().code(key);
            return new Row(
                    now,
                    coming,
                    fit.jobs(code),
                    now.map(type -> fit.within(code, type.bookSeconds())).orElse(0),
                    SHARES.stream().map(share -> hours(code, share)).toList(),
                    lookFor(code, now.orElseGet(() -> coming.get(0).repair())));
        }

        private List<From> coming(String key, Optional<RepairType> now) {
            List<From> coming = new ArrayList<>();
            Optional<RepairType> before = now;
            for (ComingBook book : revision.coming()) {
                Optional<RepairType> then = book.book().type(key);
                if (then.isPresent() && !before.map(then.get()::quotesAs).orElse(false)) {
                    coming.add(new From(book.book().effective(), then.get()));
                }
                before = then;
            }
            return coming;
        }

        private long hours(int code, double share) {
            boolean judged =
                    findings.repairs().stream().anyMatch(finding -> finding.repairType() == code && isJudged(finding));
            return revision.changes().stream()
                    .filter(change -> judged && change.repairType() == code)
                    .map(change -> change.secondsThatFit(share))
                    .findFirst()
                    .orElse(Absent.AMOUNT);
        }

        private static boolean isJudged(RepairFinding finding) {
            return finding.verdict() != Verdict.TOO_FEW_JOBS && finding.verdict() != Verdict.NOT_JUDGED;
        }

        private List<String> lookFor(int code, RepairType type) {
            List<String> words = new ArrayList<>(accepted(type.repairType()));
            often(findings.foundWork()).stream()
                    .filter(pair -> pair.quoted() == code)
                    .forEach(pair -> words.add(ledger.title(pair.found()) + " too: " + often(pair.share(), figures)));
            if (!type.hazards().isEmpty()) {
                words.add(
                        "mind " + type.hazards().stream().map(QuoteTable::plain).collect(Collectors.joining(", ")));
            }
            return words;
        }

        /** Returns what the books in force and to come add where a condition holds, in words. */
        private List<String> accepted(String key) {
            PriceBook now = ledger.books().inForce(ledger.asOf());
            Stream<String> added = now.surcharges().stream()
                    .filter(line -> line.repairType().equals(key))
                    .map(this::words);
            Stream<String> later = revision.coming().stream()
                    .map(ComingBook::book)
                    .flatMap(book -> book.surcharges().stream()
                            .filter(line -> line.repairType().equals(key)
                                    && !now.surcharges().contains(line))
                            .map(line -> words(line) + " from " + figures.day(book.effective())));
            return Stream.concat(added, later).distinct().toList();
        }

        private String words(Surcharge line) {
            return line.title() + ": add " + figures.hours(line.seconds()) + ", " + figures.money(line.labour());
        }

        private List<String> longer(String family) {
            return revision.surcharges().stream()
                    .filter(line -> line.family().equals(family))
                    .map(line -> plain(line.trait()) + " takes longer, by " + figures.number(line.lowerHours(), 2)
                            + " to " + figures.hours(line.upperHours()))
                    .toList();
        }
    }

    private static String plain(String word) {
        return word.replace('-', ' ');
    }
}
