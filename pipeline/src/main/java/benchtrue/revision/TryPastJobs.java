package benchtrue.revision;

import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Policy.FallBack;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.QuotedLines;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ForkJoinTask;
import java.util.stream.IntStream;

/**
 * Tries proposals on past jobs (methods, section 9): at each cut-off the hours are split and studied again with what was known
 * the day before, and the jobs quoted in the quarter after are held against what each method would have said.
 *
 * <p>Work is bounded: the newest {@value #MOST_CUT_OFFS} cut-offs, each with the newest {@value #MOST_LINES} lines before it,
 * and no more than {@value #MOST_IN_ALL} lines in all: a shop so large tells enough in its newest quarters.
 */
final class TryPastJobs {
    private static final int MOST_CUT_OFFS = 40;
    private static final int MOST_LINES = 20_000;
    private static final int MOST_IN_ALL = 240_000;

    /** What was known at the end of a day, of visits that came in from a day on. */
    interface Known {
        Ledger of(Ledger ledger, int openedFrom, int day);
    }

    private final JobLines jobs;
    private final Settings settings;
    private final Known known;

    TryPastJobs(JobLines jobs, Settings settings) {
        this(jobs, settings, LedgerAsOf::of);
    }

    TryPastJobs(JobLines jobs, Settings settings, Known known) {
        this.jobs = jobs;
        this.settings = settings;
        this.known = known;
    }

    /** Returns how every method did; no cut-off where the history is too short. */
    BackTest test() {
        List<LocalDate> days = days();
        return days.isEmpty() ? BackTest.none() : test(days, factors(days));
    }

    /** Returns the cut-offs, oldest first. */
    List<LocalDate> days() {
        List<LocalDate> all = Quarters.of(jobs);
        int[] opened = opened();
        int oldest = all.size();
        int lines = 0;
        while (oldest > 0 && all.size() - oldest < MOST_CUT_OFFS && lines < MOST_IN_ALL) {
            oldest--;
            lines += Math.min(MOST_LINES, before(opened, (int) all.get(oldest).toEpochDay() - 1));
        }
        return all.subList(oldest, all.size());
    }

    /** Returns how every method did with its factors at some cut-offs. */
    BackTest test(List<LocalDate> days, List<FactorsAsOf> factors) {
        ScoredJobs scored = ScoredJobs.of(jobs);
        double[] share = shares();
        List<CutOff> cutOffs = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            cutOffs.add(score(days.get(i), factors.get(i), scored, share, used(cutOffs)));
        }
        return DescribePastJobs.tell(cutOffs, used(cutOffs), settings);
    }

    /** Returns the factors of each cut-off. */
    List<FactorsAsOf> factors(List<LocalDate> days) {
        int[] opened = opened();
        // A parallel stream would hand them out by threes, and one thread would wait for the other's last.
        List<ForkJoinTask<FactorsAsOf>> trying = days.stream()
                .map(day -> (int) day.toEpochDay() - 1)
                .map(day -> ForkJoinTask.adapt(() -> factors(opened, day)))
                .toList();
        return ForkJoinTask.invokeAll(trying).stream().map(ForkJoinTask::join).toList();
    }

    private FactorsAsOf factors(int[] opened, int day) {
        return FactorsAsOf.of(known.of(jobs.ledger(), openedFrom(opened, day), day), settings);
    }

    /** Returns the day each line's visit came in, sorted. */
    private int[] opened() {
        return IntStream.range(0, jobs.size())
                .map(line ->
                        jobs.ledger().tickets().opened(jobs.ledger().lines().ticket(line)))
                .sorted()
                .toArray();
    }

    private static int openedFrom(int[] opened, int day) {
        int before = before(opened, day);
        return before > MOST_LINES ? opened[before - MOST_LINES] : Absent.DAY;
    }

    /** Returns how many lines came in up to a day. */
    static int before(int[] opened, int day) {
        int place = Arrays.binarySearch(opened, day + 1);
        int before = place < 0 ? -place - 1 : place;
        while (before > 0 && opened[before - 1] > day) {
            before--;
        }
        return before;
    }

    private PastMethod used(List<CutOff> before) {
        return settings.policy().fallBack() == FallBack.NEVER
                ? PastMethod.PROPOSAL
                : BackTest.standsOn(before, settings.policy().rule());
    }

    /** Returns by code the share of jobs of a repair type that should fit. */
    private double[] shares() {
        Ledger ledger = jobs.ledger();
        double[] shares = new double[ledger.repairTypes().size()];
        Arrays.setAll(
                shares,
                type -> FactorsAsOf.policy(ledger, type, settings.policy()).coverage());
        return shares;
    }

    private CutOff score(LocalDate day, FactorsAsOf factors, ScoredJobs scored, double[] share, PastMethod used) {
        int first = (int) day.toEpochDay();
        int next = (int) day.plusMonths(Quarters.MONTHS).toEpochDay();
        List<ScoredJobs.Job> quoted = scored.quoted(first, next);
        double[] bookThen =
                factors.bookThenPer(jobs.ledger().books(), jobs.ledger().asOf());
        Map<PastMethod, PastScore> raw = new EnumMap<>(PastMethod.class);
        Map<PastMethod, PastScore> railed = new EnumMap<>(PastMethod.class);
        for (PastMethod method : PastMethod.values()) {
            if (method != PastMethod.POLICY) {
                raw.put(method, scored.score(quoted, factors.raw(method), bookThen, share));
                railed.put(method, scored.score(quoted, factors.railed(method), bookThen, share));
            }
        }
        raw.put(PastMethod.POLICY, railed.get(used));
        return new CutOff(first, raw, railed);
    }

    /**
     * The cut-offs of the back-test: first days of calendar quarters with at least twelve months of closed lines before them and
     * at least {@value #ENOUGH} lines quoted in them that are closed by now.
     */
    static final class Quarters {
        /** Months in one. */
        static final int MONTHS = 3;

        private static final int ENOUGH = 5;
        private static final int HISTORY_MONTHS = 12;

        private Quarters() {}

        /** Returns the first days, oldest first. */
        static List<LocalDate> of(JobLines jobs) {
            QuotedLines lines = jobs.ledger().lines();
            TreeMap<LocalDate, Integer> quoted = new TreeMap<>();
            int firstClosed = Integer.MAX_VALUE;
            for (int line = 0; line < jobs.size(); line++) {
                if (jobs.judged(line)) {
                    int opened = jobs.ledger().tickets().opened(lines.ticket(line));
                    int closed = jobs.ledger().tickets().closed(lines.ticket(line));
                    firstClosed = Math.min(firstClosed, Absent.has(closed) ? closed : firstClosed);
                    quoted.merge(begin(Absent.firstOf(lines.quotedOn(line), opened)), 1, Integer::sum);
                }
            }
            List<LocalDate> days = new ArrayList<>();
            if (firstClosed < Integer.MAX_VALUE) {
                LocalDate first = LocalDate.ofEpochDay(firstClosed).plusMonths(HISTORY_MONTHS);
                quoted.tailMap(first, true).forEach((day, count) -> {
                    if (count >= ENOUGH) {
                        days.add(day);
                    }
                });
            }
            return days;
        }

        private static LocalDate begin(int day) {
            LocalDate date = LocalDate.ofEpochDay(day);
            return LocalDate.of(date.getYear(), date.getMonthValue() - (date.getMonthValue() - 1) % MONTHS, 1);
        }
    }
}
