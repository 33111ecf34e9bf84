package benchtrue.findings;

import benchtrue.findings.Restorations.By;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitEvidence;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.statistics.BenjaminiHochberg;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Judges large visits as wholes, all groups under one control of false discoveries (Benjamini, Hochberg 1995). Which stage runs
 * over can be told only where each repair has hours of its own; visits with hours copied from the quote tell nothing.
 */
final class FindRestorations {
    private static final int MANY_LINES = 4;
    private static final double MANY_HOURS = 20;
    private static final Set<Cause.Kind> FIRST_SIGNS =
            EnumSet.of(Cause.Kind.INSTRUMENT_CLASS, Cause.Kind.TRAIT, Cause.Kind.CONDITION);

    private static final int AGES_HELD = 5;

    private final JobLines jobs;
    private final JobFactors factors;
    private final Settings settings;
    private final UnreadShares unread;
    private final double[] pace;
    private final double[] load;
    private final List<int[]> restorations;
    private final List<RestorationSums> groups = new ArrayList<>();

    /**
     * Takes a shop's jobs.
     *
     * @param pace by repair type, the factor that brings hours to today
     * @param load by repair type, hours per quoted hour as logged
     * @param copied rows of lines whose hours are likely copied from the quote
     */
    FindRestorations(
            JobLines jobs,
            JobFactors factors,
            Settings settings,
            UnreadShares unread,
            double[] pace,
            double[] load,
            Set<Integer> copied) {
        this.jobs = jobs;
        this.settings = settings;
        this.unread = unread;
        this.pace = pace;
        this.load = load;
        this.factors = factors;
        restorations = restorations(copied);
    }

    private List<int[]> restorations(Set<Integer> copied) {
        int tickets = jobs.ledger().tickets().size();
        int[] starts = jobs.ledger().lines().starts(tickets);
        return IntStream.range(0, tickets)
                .filter(ticket -> jobs.ledger().tickets().reworkOf(ticket) == Absent.INDEX)
                .mapToObj(ticket -> IntStream.range(starts[ticket], starts[ticket + 1])
                        .filter(jobs::judged)
                        .toArray())
                .filter(lines -> lines.length >= MANY_LINES
                        || IntStream.of(lines)
                                        .mapToDouble(jobs::todayQuotedHours)
                                        .sum()
                                > MANY_HOURS)
                .filter(lines -> IntStream.of(lines).noneMatch(copied::contains))
                .toList();
    }

    /** Returns all restorations, then kinds, stages and first signs; none where there are too few. */
    List<Restorations> find(List<Circumstance> circumstances) {
        RestorationSums all = sums(By.ALL, "all restorations", lines -> true);
        if (all.size() < FindVerdicts.ENOUGH_TICKETS) {
            return List.of();
        }
        groups.add(all);
        List<String> families = factors.families().all().stream()
                .filter(family -> !family.isEmpty())
                .toList();
        families.forEach(
                family -> add(sums(By.KIND, family, lines -> leading(lines).equals(family))));
        families.forEach(this::stage);
        firstSigns(circumstances).forEach(sign -> firstSign(sign.label(), sign.holds()));
        double[] adjusted = BenjaminiHochberg.adjust(
                groups.stream().mapToDouble(RestorationSums::chance).toArray());
        return IntStream.range(0, adjusted.length)
                .mapToObj(i -> groups.get(i).judged(adjusted[i], settings))
                .toList();
    }

    /** Ages hold each other: where a few tell what there is, more of them would tell the same again. */
    private static List<Circumstance> firstSigns(List<Circumstance> circumstances) {
        List<Circumstance> ages = circumstances.stream()
                .filter(sign -> sign.kind() == Cause.Kind.CONDITION)
                .toList();
        return circumstances.stream()
                .filter(sign -> FIRST_SIGNS.contains(sign.kind()))
                .filter(sign -> sign.kind() != Cause.Kind.CONDITION || ages.indexOf(sign) % AGES_HELD == 0)
                .toList();
    }

    private void add(RestorationSums group) {
        if (group.size() >= FindVerdicts.ENOUGH_TICKETS) {
            groups.add(group);
        }
    }

    private void firstSign(String words, IntPredicate holds) {
        RestorationSums others = sums(By.FIRST_SIGN, words, lines -> !holds.test(lines[0]));
        if (others.size() >= FindVerdicts.ENOUGH_TICKETS) {
            add(sums(By.FIRST_SIGN, words, lines -> holds.test(lines[0])).against(others));
        }
    }

    /** A stage counts its own repairs; it stands there too where it can't be told, since that is the answer then. */
    private void stage(String family) {
        RestorationSums stage = new RestorationSums(By.STAGE, family, jobs, unread, pace, load);
        restorations.stream()
                .filter(lines -> IntStream.of(lines).allMatch(this::ownHours))
                .map(lines -> IntStream.of(lines)
                        .filter(line -> family(line).equals(family))
                        .toArray())
                .forEach(stage::add);
        groups.add(stage);
    }

    private boolean ownHours(int line) {
        return jobs.evidence(line) == SplitEvidence.LOGGED || jobs.evidence(line) == SplitEvidence.NONE;
    }

    private RestorationSums sums(By by, String words, Predicate<int[]> which) {
        RestorationSums sums = new RestorationSums(by, words, jobs, unread, pace, load);
        restorations.stream().filter(which).forEach(sums::add);
        return sums;
    }

    /** Returns the family that most quoted hours of a restoration are of. */
    private String leading(int[] lines) {
        double[] hours = new double[factors.families().size()];
        IntStream.of(lines).forEach(line -> hours[factors.family(line)] += jobs.todayQuotedHours(line));
        int most = IntStream.range(0, hours.length)
                .reduce(0, (best, family) -> hours[family] > hours[best] ? family : best);
        return factors.families().name(most);
    }

    private String family(int line) {
        return factors.families().name(factors.family(line));
    }
}
