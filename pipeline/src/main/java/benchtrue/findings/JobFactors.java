package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Names;
import benchtrue.shop.RepairType;
import benchtrue.shop.Tickets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Codes of everything that the hours of a job may depend on beside its quote. */
final class JobFactors {
    private static final int MOST_TRAITS = 63;

    private final JobLines jobs;
    private final Names families;
    private final Names classes;
    private final Names writers;
    private final Names traits;
    private final int[] familyOfType;
    private final int[] classOfTicket;
    private final int[] writerOfTicket;
    private final long[] traitsOfTicket;

    JobFactors(JobLines jobs) {
        this.jobs = jobs;
        Ledger ledger = jobs.ledger();
        Tickets tickets = ledger.tickets();
        families = Names.of(ledger.repairTypes().all().stream()
                .map(key -> family(ledger, key))
                .toList());
        familyOfType = ledger.repairTypes().all().stream()
                .mapToInt(key -> families.code(family(ledger, key)))
                .toArray();
        TreeSet<String> classNames = new TreeSet<>();
        TreeSet<String> writerNames = new TreeSet<>();
        TreeSet<String> traitNames = new TreeSet<>();
        for (int ticket = 0; ticket < tickets.size(); ticket++) {
            classNames.add(tickets.instrumentClass(ticket));
            writerNames.add(tickets.quotedBy(ticket));
            traitNames.addAll(tickets.traits(ticket));
        }
        writerNames.remove("");
        classes = Names.of(classNames);
        writers = Names.of(writerNames);
        traits = Names.of(traitNames.stream().limit(MOST_TRAITS).toList());
        classOfTicket = new int[tickets.size()];
        writerOfTicket = new int[tickets.size()];
        traitsOfTicket = new long[tickets.size()];
        for (int ticket = 0; ticket < tickets.size(); ticket++) {
            classOfTicket[ticket] = classes.code(tickets.instrumentClass(ticket));
            writerOfTicket[ticket] = writers.code(tickets.quotedBy(ticket));
            traitsOfTicket[ticket] = bits(tickets.traits(ticket));
        }
    }

    private static String family(Ledger ledger, String repairType) {
        return ledger.books()
                .type(repairType, ledger.asOf())
                .map(RepairType::family)
                .orElse("");
    }

    private long bits(List<String> words) {
        long bits = 0;
        for (String word : words) {
            int code = traits.code(word);
            bits |= code == Absent.INDEX ? 0 : 1L << code;
        }
        return bits;
    }

    Names families() {
        return families;
    }

    Names classes() {
        return classes;
    }

    Names writers() {
        return writers;
    }

    Names traits() {
        return traits;
    }

    int type(int line) {
        return jobs.ledger().lines().repairType(line);
    }

    int familyOfType(int type) {
        return familyOfType[type];
    }

    int family(int line) {
        return familyOfType[type(line)];
    }

    int instrumentClass(int line) {
        return classOfTicket[jobs.ledger().lines().ticket(line)];
    }

    /** Returns who wrote the quote, or {@link Absent#INDEX}. */
    int writer(int line) {
        return writerOfTicket[jobs.ledger().lines().ticket(line)];
    }

    /** Returns who did most of the line, or {@link Absent#INDEX}. */
    int technician(int line) {
        return jobs.mainTechnician(line);
    }

    boolean has(int line, int trait) {
        return (traitsOfTicket[jobs.ledger().lines().ticket(line)] >> trait & 1) == 1;
    }

    /** Returns ln(quote / book on that day): what the quote writer added for condition and by habit. */
    double adjustment(int line) {
        long book = jobs.bookSecondsThen(line);
        long quoted = jobs.ledger().lines().judgedSeconds(line);
        boolean both = Absent.has(book) && book > 0 && Absent.has(quoted) && quoted > 0;
        return both ? StrictMath.log(quoted / (double) book) : 0;
    }

    /** Returns every family in which a trait stands on enough of the lines, and is missing from enough. */
    List<TraitColumn> traitColumns(int[] lines, int enough) {
        int[][] with = new int[families.size()][traits.size()];
        int[] all = new int[families.size()];
        for (int line : lines) {
            all[family(line)]++;
            for (int trait = 0; trait < traits.size(); trait++) {
                with[family(line)][trait] += has(line, trait) ? 1 : 0;
            }
        }
        List<TraitColumn> columns = new ArrayList<>();
        for (int family = 0; family < all.length; family++) {
            for (int trait = 0; trait < traits.size(); trait++) {
                int without = all[family] - with[family][trait];
                if (with[family][trait] >= enough && without >= enough) {
                    columns.add(new TraitColumn(family, trait, with[family][trait], without));
                }
            }
        }
        return columns;
    }

    /**
     * A trait within a family of repairs.
     *
     * @param family code of the family
     * @param trait code of the trait
     * @param with lines of the family with the trait
     * @param without lines of the family without it
     */
    record TraitColumn(int family, int trait, int with, int without) {}
}
