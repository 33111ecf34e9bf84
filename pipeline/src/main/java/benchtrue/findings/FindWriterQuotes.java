package benchtrue.findings;

import benchtrue.costing.CostedLines;
import benchtrue.hours.JobLines;
import benchtrue.hours.UnquotedWork;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.statistics.RatioOfSums;
import benchtrue.statistics.StudentT;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Sums quotes by writer and family, only where the settings ask for figures about people: writers with at least thirty jobs over
 * at least three kinds of repair, in the order of names.
 */
final class FindWriterQuotes {
    private static final int ENOUGH_JOBS = 30;
    private static final int SEVERAL_TYPES = 3;
    private static final int FEWEST_OF_A_FAMILY = 5;
    private static final double TAIL = 0.05;
    private final JobLines jobs;
    private final JobFactors factors;
    private final LastYear year;
    private final long shopRate;
    private final Map<String, Map<String, Sums>> sums = new TreeMap<>();

    private FindWriterQuotes(CostedLines costs, JobFactors factors) {
        jobs = costs.jobs();
        shopRate = costs.shopRate();
        this.factors = factors;
        year = LastYear.of(jobs);
    }

    static List<WriterQuotes> of(CostedLines costs, JobFactors factors, Settings settings) {
        return settings.people() == Disclosure.SHOWN ? new FindWriterQuotes(costs, factors).find() : List.of();
    }

    private List<WriterQuotes> find() {
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line) && factors.writer(line) != Absent.INDEX) {
                at(factors.writer(line), factors.family(line)).add(line);
            }
        }
        for (UnquotedWork work : jobs.unquoted()) {
            int writer = factors.writers().code(jobs.ledger().tickets().quotedBy(work.ticket()));
            if (writer != Absent.INDEX) {
                at(writer, factors.familyOfType(work.repairType())).unquoted += Hours.of(work.seconds());
            }
        }
        List<WriterQuotes> found = new ArrayList<>();
        sums.forEach((writer, families) -> {
            int all = families.values().stream().mapToInt(Sums::jobs).sum();
            Set<Integer> types = new HashSet<>();
            families.values().forEach(family -> types.addAll(family.types));
            if (all >= ENOUGH_JOBS && types.size() >= SEVERAL_TYPES) {
                families.forEach((family, sum) -> sum.tell(writer, family, found));
            }
        });
        return found;
    }

    private Sums at(int writer, int family) {
        return sums.computeIfAbsent(factors.writers().name(writer), name -> new TreeMap<>())
                .computeIfAbsent(factors.families().name(family), name -> new Sums());
    }

    /** Jobs of one writer in one family. Mutable. */
    private final class Sums {
        private final List<Integer> lines = new ArrayList<>();
        private final Set<Integer> types = new HashSet<>();
        private double quoted;
        private double book;
        private double taken;
        private double belowBook;
        private double unquoted;

        private int jobs() {
            return lines.size();
        }

        private void add(int line) {
            double hours = jobs.todayQuotedHours(line);
            double atBook = hours / StrictMath.exp(factors.adjustment(line));
            lines.add(line);
            types.add(factors.type(line));
            quoted += hours;
            book += atBook;
            taken += Hours.of(jobs.actualSeconds(line));
            belowBook += year.holds(jobs.ledger().lines().ticket(line)) ? (atBook - hours) * year.scale() : 0;
        }

        private void tell(String writer, String family, List<WriterQuotes> found) {
            if (jobs() >= FEWEST_OF_A_FAMILY) {
                double load = taken / quoted;
                double reach = -StudentT.quantile(TAIL, jobs() - 1.0) * error();
                found.add(new WriterQuotes(
                        writer,
                        family,
                        jobs(),
                        quoted / book,
                        load,
                        load * StrictMath.exp(-reach),
                        load * StrictMath.exp(reach),
                        unquoted,
                        (long) StrictMath.rint(belowBook * shopRate)));
            }
        }

        private double error() {
            return RatioOfSums.logError(
                    lines.stream()
                            .mapToDouble(line -> Hours.of(jobs.actualSeconds(line)))
                            .toArray(),
                    lines.stream().mapToDouble(jobs::todayQuotedHours).toArray());
        }
    }
}
