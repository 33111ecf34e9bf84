package benchtrue.revision;

import benchtrue.format.Figures;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitEvidence;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.LineState;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.Ticket;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Follows the last change of the price book up: hours, acceptance and money before and since. */
final class FollowLastChange {
    private static final int YEAR = 365;

    private final JobLines jobs;
    private final QuotedLines lines;
    private final ChangedTypes changed;
    private final int days;
    private final SpanSums[] before;
    private final SpanSums[] since;
    private final int[] yearBefore;
    private final long[] surchargesBefore;
    private final long[] surchargesSince;

    private FollowLastChange(JobLines jobs, ChangedTypes changed) {
        this.jobs = jobs;
        this.changed = changed;
        lines = jobs.ledger().lines();
        days = jobs.ledger().asOf() - changed.effective() + 1;
        int types = changed.before().length;
        before = new SpanSums[types];
        since = new SpanSums[types];
        yearBefore = new int[types];
        surchargesBefore = new long[types];
        surchargesSince = new long[types];
        Arrays.setAll(before, type -> new SpanSums());
        Arrays.setAll(since, type -> new SpanSums());
    }

    /** Returns what became of the last change; empty where there was none. */
    static Optional<LastChange> follow(JobLines jobs, Figures figures) {
        return ChangedTypes.of(jobs.ledger()).map(changed -> new FollowLastChange(jobs, changed).follow(figures));
    }

    private LastChange follow(Figures figures) {
        int first = Integer.MAX_VALUE;
        for (int line = 0; line < jobs.size(); line++) {
            int day = jobs.ledger().quotedOn(line);
            first = StrictMath.min(first, day);
            if (changed.changed(lines.repairType(line))
                    && day >= changed.from()
                    && jobs.state(line) != LineState.VOID) {
                add(line, day);
            }
        }
        double yearsBefore =
                StrictMath.min(1, (changed.effective() - StrictMath.max(first, changed.from())) / (double) YEAR);
        Map<Integer, FollowUp> byType = new TreeMap<>();
        SpanSums allBefore = new SpanSums();
        SpanSums allSince = new SpanSums();
        long forecast = 0;
        long realised = 0;
        for (int type = 0; type < before.length; type++) {
            if (changed.changed(type)) {
                FollowUp one = of(before[type], since[type], forecast(type, yearsBefore), realised(type));
                byType.put(type, one);
                allBefore.addAll(before[type]);
                allSince.addAll(since[type]);
                forecast += one.forecast();
                realised += one.realised();
            }
        }
        FollowUp together = of(allBefore, allSince, forecast, realised);
        String sentence = new DescribeLastChange(figures).tell(changed, together);
        return new LastChange(changed.effective(), days, byType, together, sentence);
    }

    private static FollowUp of(SpanSums before, SpanSums since, long forecast, long realised) {
        return new FollowUp(
                before.hours(),
                since.hours(),
                before.acceptance(),
                since.acceptance(),
                since.conditioned,
                since.following,
                forecast,
                realised);
    }

    private void add(int line, int day) {
        int type = lines.repairType(line);
        boolean accepted = jobs.state(line) != LineState.DECLINED;
        SpanSums sums = day < changed.effective() ? before[type] : since[type];
        sums.quoted(accepted);
        if (accepted && day >= changed.effective() - YEAR && day < changed.effective()) {
            yearBefore[type]++;
            surchargesBefore[type] += surcharges(line);
        }
        long labour = Absent.firstOf(lines.billedLabour(line), lines.quotedLabour(line));
        if (accepted && Absent.has(labour)) {
            sums.charged(labour);
            if (day >= changed.effective() && surcharges(line) != 0) {
                boolean follows = changed.follows(labour, type, key(line), ticket(line));
                sums.conditioned(follows);
                surchargesSince[type] += follows ? surcharges(line) : 0;
            }
        }
        if (jobs.judged(line) && jobs.evidence(line) == SplitEvidence.LOGGED && jobs.bookSecondsThen(line) > 0) {
            sums.took(Hours.of(jobs.actualSeconds(line)), Hours.of(jobs.bookSecondsThen(line)));
        }
    }

    private long surcharges(int line) {
        return changed.surcharges(key(line), ticket(line));
    }

    private String key(int line) {
        return jobs.ledger().repairTypes().name(lines.repairType(line));
    }

    private Ticket ticket(int line) {
        return jobs.ledger().tickets().get(lines.ticket(line));
    }

    private long forecast(int type, double yearsBefore) {
        long step = changed.since()[type].bookLabour() - changed.before()[type].bookLabour();
        double jobsADay = yearsBefore > 0 ? yearBefore[type] / (yearsBefore * YEAR) : 0;
        double surchargesADay = yearsBefore > 0 ? surchargesBefore[type] / (yearsBefore * YEAR) : 0;
        return (long) StrictMath.rint((step * jobsADay + surchargesADay) * days);
    }

    /** Lines quoted above or below the book moved by the same share as the book did. */
    private long realised(int type) {
        double is = changed.since()[type].bookLabour();
        double was = changed.before()[type].bookLabour();
        long standard = since[type].labour() - surchargesSince[type];
        return surchargesSince[type] + (is > 0 ? (long) StrictMath.rint(standard * (1 - was / is)) : 0);
    }

    /** Quotes and jobs of one span of time, added up. Mutable. */
    static final class SpanSums {
        private final List<Double> taken = new ArrayList<>();
        private final List<Double> booked = new ArrayList<>();
        private int quotes;
        private int accepted;
        private long labour;
        private int conditioned;
        private int following;

        void quoted(boolean wasAccepted) {
            quotes++;
            accepted += wasAccepted ? 1 : 0;
        }

        void charged(long amount) {
            labour = Math.addExact(labour, amount);
        }

        void conditioned(boolean follows) {
            conditioned++;
            following += follows ? 1 : 0;
        }

        void took(double hours, double bookHours) {
            taken.add(hours);
            booked.add(bookHours);
        }

        void addAll(SpanSums other) {
            taken.addAll(other.taken);
            booked.addAll(other.booked);
            quotes += other.quotes;
            accepted += other.accepted;
            labour = Math.addExact(labour, other.labour);
            conditioned += other.conditioned;
            following += other.following;
        }

        long labour() {
            return labour;
        }

        BookedHours hours() {
            return BookedHours.of(array(taken), array(booked));
        }

        Acceptance acceptance() {
            return Acceptance.of(quotes, accepted);
        }

        private static double[] array(List<Double> values) {
            return values.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }
}
