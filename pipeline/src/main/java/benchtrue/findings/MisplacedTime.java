package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Ints;
import benchtrue.shop.TicketStatus;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeKind;
import benchtrue.statistics.Mad;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What time on wrong tickets does to each repair's load. An entry that names no line was for its own ticket, or for another that its
 * technician worked on within three days. How likely each is follows from how usual both tickets' hours are with and without it:
 * ln(hours / expected hours) is normal, bounded far out. A mixture, fitted by EM (Dempster, Laird, Rubin 1977) together with the
 * share of entries that are wrong; hours are moved between tickets and never lost. What stays far off after that weighs less (Huber
 * 1964), since the ticket that it came from may have been left without any. A ticket that has no hours lacks none: most such were
 * never logged.
 */
final class MisplacedTime {
    /** Share of wrong entries below which chance may have made them: at most 0.2 % were seen in shops without any. */
    private static final double LEAST_SHARE = 0.01;

    private static final double FIRST_SHARE = 0.03;
    private static final int ROUNDS = 8;
    private static final int REFITS = 3;
    private static final int NEAR_DAYS = 3;
    /** Spreads beyond which a ticket is no odder. */
    private static final double BOUND = 7;
    /** Spreads beyond which a ticket weighs less. */
    private static final double FAR = 2;

    private final Ledger ledger;
    private final double[] logged;
    private final double[] expected;
    private final double spread;
    /** By ticket, hours as far as moved. */
    private final double[] hours;

    private final List<Move> moves = new ArrayList<>();
    private int unnamed;

    private MisplacedTime(JobLines jobs, double[] load) {
        ledger = jobs.ledger();
        logged = new double[ledger.tickets().size()];
        expected = new double[logged.length];
        for (int line = 0; line < jobs.size(); line++) {
            int ticket = ledger.lines().ticket(line);
            int type = ledger.lines().repairType(line);
            logged[ticket] += Hours.of(jobs.actualSeconds(line));
            expected[ticket] += jobs.expectedHours(line) * (type == Absent.INDEX ? 1 : load[type]);
        }
        hours = logged.clone();
        double[] off = IntStream.range(0, logged.length)
                .filter(ticket -> done(ticket) && logged[ticket] > 0)
                .mapToDouble(ticket -> StrictMath.log(logged[ticket] / expected[ticket]))
                .toArray();
        spread = off.length == 0 ? 0 : Mad.scaled(off);
    }

    /**
     * Returns what putting time back where it probably belongs makes of each load. What is found is too little where it lowers a
     * load, since a ticket that was left without hours gets none back, and mostly chance where it raises one. In shops with known
     * wrong tickets a load that is lowered by a factor is really lower by 1.7 to 1.9 times as much, as ln; one that is raised is
     * higher by 0.1 to 0.3 times as much. So loads lie between once and twice what lowers them, and between nothing and what
     * raises them.
     */
    static LoadReach of(JobLines jobs) {
        double[] once = factors(jobs);
        double[] orElse = new double[once.length];
        Arrays.setAll(orElse, type -> Math.min(1, once[type] * once[type]));
        return LoadReach.between(once, orElse);
    }

    /** Returns by repair-type code the load with time put back, over that as logged. */
    private static double[] factors(JobLines jobs) {
        double[] factor = new double[jobs.ledger().repairTypes().size()];
        Arrays.fill(factor, 1);
        for (int fit = 0; fit < REFITS; fit++) {
            MisplacedTime time = new MisplacedTime(jobs, factor);
            if (!(time.spread > 0) || time.fit() < LEAST_SHARE) {
                break;
            }
            factor = time.perLogged(jobs);
        }
        return factor;
    }

    private boolean done(int ticket) {
        return ledger.tickets().status(ticket) == TicketStatus.CLOSED && expected[ticket] > 0;
    }

    /** Moves what is probably misplaced; returns the share of entries that are. */
    private double fit() {
        findMoves();
        double share = FIRST_SHARE;
        for (int round = 0; round < ROUNDS && !moves.isEmpty(); round++) {
            double moved = 0;
            for (Move move : moves) {
                moved += move.weigh(share);
            }
            share = moved / unnamed;
        }
        return moves.isEmpty() ? 0 : share;
    }

    private void findMoves() {
        TimeEntries time = ledger.time();
        Ints much = new Ints();
        List<ByDay> lacking =
                Stream.generate(ByDay::new).limit(ledger.technicians().size()).toList();
        for (int entry = 0; entry < time.size(); entry++) {
            int ticket = time.ticket(entry);
            if (ticket >= 0 && done(ticket) && time.kind(entry) == TimeKind.BENCH && time.seconds(entry) > 0) {
                boolean free = time.line(entry) == Absent.INDEX && time.repairType(entry) == Absent.INDEX;
                unnamed += free ? 1 : 0;
                if (free && logged[ticket] > expected[ticket]) {
                    much.add(entry);
                } else if (logged[ticket] < expected[ticket]) {
                    lacking.get(time.technician(entry)).add(time.workDay(entry), ticket);
                }
            }
        }
        for (int entry : much.toArray()) {
            int day = time.workDay(entry);
            int[] others = lacking.get(time.technician(entry)).within(day - NEAR_DAYS, day + NEAR_DAYS);
            if (others.length > 0) {
                moves.add(new Move(time.ticket(entry), Hours.of(time.seconds(entry)), others));
            }
        }
    }

    /** Tickets by day. */
    private static final class ByDay {
        private final TreeMap<Integer, Set<Integer>> tickets = new TreeMap<>();

        void add(int day, int ticket) {
            tickets.computeIfAbsent(day, key -> new TreeSet<>()).add(ticket);
        }

        int[] within(int from, int to) {
            return tickets.subMap(from, true, to, true).values().stream()
                    .flatMap(Set::stream)
                    .mapToInt(Integer::intValue)
                    .distinct()
                    .toArray();
        }
    }

    /** Returns by how many spreads hours lie off what is expected of a ticket. */
    private double odd(int ticket, double hours) {
        return StrictMath.log(Math.max(0, hours) / expected[ticket]) / spread;
    }

    /** Returns the log density of hours of a ticket, but for a constant. */
    private double usual(int ticket, double hours) {
        double off = odd(ticket, hours);
        return -0.5 * Math.min(BOUND * BOUND, off * off);
    }

    private double[] perLogged(JobLines jobs) {
        double[][] sums = new double[4][ledger.repairTypes().size()];
        for (int line = 0; line < jobs.size(); line++) {
            int ticket = ledger.lines().ticket(line);
            if (jobs.judged(line) && logged[ticket] > 0) {
                int type = ledger.lines().repairType(line);
                double weight = Math.min(1, FAR / Math.abs(odd(ticket, hours[ticket])));
                double actual = jobs.actualSeconds(line);
                double moved = actual * (hours[ticket] / logged[ticket]) + jobs.reworkSeconds(line);
                sums[0][type] += weight * moved;
                sums[1][type] += weight * jobs.todayQuotedHours(line);
                sums[2][type] += actual + jobs.reworkSeconds(line);
                sums[3][type] += jobs.todayQuotedHours(line);
            }
        }
        double[] factors = new double[sums[0].length];
        Arrays.setAll(factors, type -> {
            double factor = sums[0][type] / sums[1][type] / (sums[2][type] / sums[3][type]);
            return factor > 0 && Double.isFinite(factor) ? factor : 1;
        });
        return factors;
    }

    /** One entry that may belong to other tickets. */
    private final class Move {
        private final int own;
        private final double entry;
        private final int[] others;
        private final double[] chance;

        Move(int own, double entry, int[] others) {
            this.own = own;
            this.entry = entry;
            this.others = others;
            chance = new double[others.length];
        }

        /** Weighs again where the entry belongs, all else as it stands; returns the chance that it is elsewhere. */
        double weigh(double share) {
            double away = Arrays.stream(chance).sum();
            double without = hours[own] - (1 - away) * entry;
            double left = usual(own, without) - usual(own, without + entry);
            double[] odds = new double[others.length];
            double sum = 1 - share;
            for (int i = 0; i < odds.length; i++) {
                double lacks = hours[others[i]] - chance[i] * entry;
                double gain = left + usual(others[i], lacks + entry) - usual(others[i], lacks);
                odds[i] = share / odds.length * StrictMath.exp(gain);
                sum += odds[i];
                hours[others[i]] = lacks;
            }
            double now = 0;
            for (int i = 0; i < odds.length; i++) {
                chance[i] = odds[i] / sum;
                hours[others[i]] += chance[i] * entry;
                now += chance[i];
            }
            hours[own] = without + (1 - now) * entry;
            return now;
        }
    }
}
