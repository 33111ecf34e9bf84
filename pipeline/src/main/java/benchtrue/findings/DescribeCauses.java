package benchtrue.findings;

import benchtrue.costing.CostedLines;
import benchtrue.findings.Cause.Kind;
import benchtrue.findings.Causes.Named;
import benchtrue.hours.JobLines;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.statistics.RatioOfSums;
import benchtrue.statistics.StudentT;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Says of each cause how many jobs, hours and how much money lie with it, and what a proposal leaves out for it. */
final class DescribeCauses {
    private static final double TAIL = 0.05;
    private static final int FEWEST_OF_A_GROUP = 4;
    /** Of these a job has one only. */
    private static final Set<Kind> EXCLUSIVE =
            Set.of(Kind.INSTRUMENT_CLASS, Kind.TECHNICIAN, Kind.QUOTE_WRITER, Kind.PAYER);
    /** Jobs with hours of their own below which nothing says where an excess lies, or that it lies nowhere. */
    private static final int ENOUGH = 12;

    private final JobLines jobs;
    private final Settings settings;
    private final Causes causes;
    private final long shopRate;
    private final LastYear year;
    private final Map<Integer, Slowing> slowings = new HashMap<>();
    private final List<List<Integer>> judged = new ArrayList<>();

    DescribeCauses(CostedLines costs, Settings settings, Causes causes, List<Slowing> slowings) {
        jobs = costs.jobs();
        shopRate = costs.shopRate();
        this.settings = settings;
        this.causes = causes;
        year = LastYear.of(jobs);
        slowings.forEach(slowing -> this.slowings.put(slowing.repairType(), slowing));
        jobs.ledger().repairTypes().all().forEach(name -> judged.add(new ArrayList<>()));
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line)) {
                judged.get(jobs.ledger().lines().repairType(line)).add(line);
            }
        }
    }

    /** Sums over some jobs. */
    private record Sum(int jobs, double hours, double quoted, double yearly) {
        double load() {
            return hours / quoted;
        }
    }

    private Sum sum(int type, IntPredicate counts) {
        return sum(type, counts, line -> causes.hours(jobs, line));
    }

    private Sum sum(int type, IntPredicate counts, IntToDoubleFunction taken) {
        int count = 0;
        double hours = 0;
        double quoted = 0;
        double yearly = 0;
        for (int line : judged.get(type)) {
            if (counts.test(line)) {
                count++;
                hours += taken.applyAsDouble(line);
                quoted += jobs.todayQuotedHours(line);
                yearly +=
                        year.holds(jobs.ledger().lines().ticket(line)) ? jobs.todayQuotedHours(line) * year.scale() : 0;
            }
        }
        return new Sum(count, hours, quoted, yearly);
    }

    /** Returns sums over the jobs without any of some causes; over all where there is none. */
    private Sum without(int type, List<Named> left, IntPredicate counts) {
        Sum others = sum(type, line -> counts.test(line) && left.stream().noneMatch(cause -> cause.has(line)));
        return others.hours > 0 ? others : sum(type, counts);
    }

    /** Returns the causes of a repair; where it runs over or under for none that shows, what is told instead. */
    List<Cause> all(RepairFinding finding) {
        List<Cause> found = of(finding.repairType());
        if (!found.isEmpty() || finding.lines() < ENOUGH) {
            return found;
        }
        boolean fewOwn = causes.ownJobs()[finding.repairType()] < ENOUGH;
        return switch (finding.verdict()) {
            case UNDER_QUOTED, OVER_QUOTED ->
                List.of(fewOwn ? unmeasured(finding.repairType(), Kind.UNKNOWN) : spread(finding));
            case LEANING_UNDER, LEANING_OVER ->
                fewOwn ? List.of(unmeasured(finding.repairType(), Kind.UNKNOWN)) : List.of();
            default -> List.of();
        };
    }

    private List<Cause> of(int type) {
        return causes.of(type).stream()
                .map(cause -> hidden(cause) ? unmeasured(type, Kind.FEW_HANDS) : told(cause))
                .toList();
    }

    private boolean hidden(Named cause) {
        return cause.circumstance().kind().personal() && settings.people() == Disclosure.HIDDEN;
    }

    private Cause told(Named cause) {
        int type = cause.repairType();
        Sum with = sum(type, cause::has);
        double load = without(type, causes.of(type), line -> true).load();
        double reach = -StudentT.quantile(TAIL, cause.freedom()) * cause.error();
        double size = StrictMath.exp(cause.size());
        double lower = StrictMath.exp(cause.size() - reach);
        double upper = StrictMath.exp(cause.size() + reach);
        double yearly = with.yearly * load * shopRate;
        return new Cause(
                type,
                cause.circumstance().kind(),
                cause.circumstance().value(),
                cause.circumstance().label(),
                with.jobs,
                judged.get(type).size(),
                size,
                lower,
                upper,
                load * size,
                load * lower,
                load * upper,
                cause.adjustedP(),
                money(yearly * (size - 1)),
                money(yearly * (lower - 1)),
                money(yearly * (upper - 1)),
                remedy(cause),
                groups(cause));
    }

    /** Where each job is of one group alone, all groups; else those with the cause and the others. */
    private List<Cause.Group> groups(Named cause) {
        int type = cause.repairType();
        List<Cause.Group> groups = new ArrayList<>();
        groups.add(group(type, cause.circumstance().label(), cause::has));
        if (EXCLUSIVE.contains(cause.circumstance().kind())) {
            causes.all().stream()
                    .filter(other -> cause.of(other.kind()))
                    .filter(other -> !other.value().equals(cause.circumstance().value()))
                    .map(other -> group(type, other.label(), other.holds()))
                    .filter(group -> group.jobs() >= FEWEST_OF_A_GROUP)
                    .forEach(groups::add);
        } else {
            groups.add(group(type, "all others", line -> !cause.has(line)));
        }
        return groups;
    }

    private Cause.Group group(int type, String label, IntPredicate holds) {
        Sum sum = sum(type, holds);
        double load = sum.load();
        int[] lines = judged.get(type).stream()
                .mapToInt(Integer::intValue)
                .filter(holds)
                .toArray();
        double error = RatioOfSums.logError(
                IntStream.of(lines)
                        .mapToDouble(line -> causes.hours(jobs, line))
                        .toArray(),
                IntStream.of(lines).mapToDouble(jobs::todayQuotedHours).toArray());
        double reach = -StudentT.quantile(TAIL, sum.jobs - 1.0) * error;
        return new Cause.Group(label, sum.jobs, load, load * StrictMath.exp(-reach), load * StrictMath.exp(reach));
    }

    private static long money(double amount) {
        return Double.isFinite(amount) ? (long) StrictMath.rint(amount) : Absent.AMOUNT;
    }

    private String remedy(Named cause) {
        int since = cause.circumstance().since();
        if (!cause.of(Kind.PERIOD)) {
            return cause.circumstance().kind().remedy();
        }
        if (!Absent.has(since)) {
            return "it is over, the price stays";
        }
        return "watch it since " + settings.figures().monthOf(since)
                + (current(cause.repairType()) ? ", the price follows the newest jobs" : ", the price stays");
    }

    private Cause unmeasured(int type, Kind kind) {
        double none = Double.NaN;
        long unknown = Absent.AMOUNT;
        int all = judged.get(type).size();
        return new Cause(
                type,
                kind,
                "",
                "",
                0,
                all,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                unknown,
                unknown,
                unknown,
                kind.remedy(),
                List.of());
    }

    private static Cause spread(RepairFinding finding) {
        return new Cause(
                finding.repairType(),
                Kind.SPREAD,
                "",
                "",
                finding.lines(),
                finding.lines(),
                Double.NaN,
                Double.NaN,
                Double.NaN,
                finding.loadFactor(),
                finding.lower(),
                finding.upper(),
                finding.adjustedP(),
                finding.annualShortfall(),
                finding.annualShortfallLower(),
                finding.annualShortfallUpper(),
                Kind.SPREAD.remedy(),
                List.of());
    }

    /** Whether only the jobs since a confirmed slowing count for the repair. */
    private boolean current(int type) {
        Slowing slowing = slowings.get(type);
        return slowing != null && Double.isFinite(slowing.loadSince());
    }

    /** Returns what proposals leave out, by repair type. */
    List<LeftOut> leftOut() {
        List<LeftOut> found = new ArrayList<>();
        for (int type = 0; type < judged.size(); type++) {
            int repair = type;
            List<Named> left = causes.of(type).stream()
                    .filter(cause -> !(cause.of(Kind.PERIOD) && current(repair)))
                    .toList();
            if (!left.isEmpty()) {
                leftOut(type, left, found);
            }
        }
        return found;
    }

    private void leftOut(int type, List<Named> left, List<LeftOut> found) {
        int from = current(type) ? slowings.get(type).startDay() : Integer.MIN_VALUE;
        IntPredicate counts =
                line -> jobs.ledger().tickets().opened(jobs.ledger().lines().ticket(line)) >= from;
        double variance = 0;
        List<String> words = new ArrayList<>();
        for (Named cause : left) {
            double share =
                    sum(type, cause::has).jobs / (double) judged.get(type).size();
            variance += share * (1 - share) * cause.size() * cause.size();
            words.add(
                    hidden(cause)
                            ? "that lie with few hands"
                            : cause.circumstance().label());
        }
        Set<Integer> lines = IntStream.range(0, jobs.size())
                .filter(line -> jobs.ledger().lines().repairType(line) == type
                        && left.stream().anyMatch(cause -> cause.has(line)))
                .boxed()
                .collect(Collectors.toSet());
        double logged = sum(type, counts, line -> Hours.of(jobs.actualSeconds(line) + jobs.reworkSeconds(line)))
                .load();
        double load = without(type, left, counts).load() / logged;
        found.add(new LeftOut(type, String.join(" and ", words), Double.isFinite(load) ? load : 1, lines, variance));
    }
}
