package benchtrue.calendar;

import benchtrue.shop.Absent;
import benchtrue.statistics.Quantile;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * How many days a visit takes until it is ready, from what was known on a day: until work begins, as lately and moved by the
 * queue; from the first hour to the last, as on visits of as many hours; and what has its own time (humidity, glue, finish,
 * parts, a yes), as on visits with such repairs. The three are drawn from the visits that were ready last.
 */
final class PromiseModel {
    /** With fewer visits ready there is nothing to draw from. */
    static final int LEAST = 30;

    private static final int NEWEST = 400;
    /** The queue is as it was for those that came in last. */
    private static final int LATELY = 120;

    /** Visits' worth of an average repair that each repair's own waiting is leaned on. */
    private static final double PRIOR = 2;

    private static final int FEW = 5;

    private static final int ROUNDS = 20;

    /** Variance of the queue, in days, that has to be seen before it is believed. */
    private static final double QUEUE_PRIOR = 50;

    private final Visits visits;
    private final int[] lately;
    private final int today;
    private final Halfway halfway;
    private final int[] donors;
    private final int[] begin;
    private final int[] bench;
    private final int[] waited;
    private final double[] waitOf;
    private final Ordered byOwnTime;
    private final Ordered byHours;
    private final double queueSlope;

    /**
     * Takes the visits that were ready by a day.
     *
     * @param byReady all visits that were ever ready, by the day they were
     * @param types how many repair types there are
     */
    PromiseModel(Visits visits, int[] byReady, int day, int types) {
        this.visits = visits;
        today = day;
        lately = visits.latest(day, LATELY);
        halfway = new Halfway(visits, visits.latest(day, NEWEST), day);
        int known = 0;
        while (known < byReady.length && visits.ready(byReady[known]) <= day) {
            known++;
        }
        donors = IntStream.range(Math.max(0, known - NEWEST), known)
                .map(i -> byReady[i])
                .toArray();
        begin = new int[donors.length];
        bench = new int[donors.length];
        waited = new int[donors.length];
        for (int i = 0; i < donors.length; i++) {
            begin[i] = visits.begin(donors[i]);
            waited[i] = visits.waited(donors[i]);
            bench[i] = visits.bench(donors[i]);
        }
        waitOf = waits(types);
        byOwnTime =
                Ordered.by(Arrays.stream(donors).mapToDouble(this::expectedWait).toArray());
        byHours = Ordered.by(Arrays.stream(donors)
                .mapToDouble(ticket -> StrictMath.log1p(visits.quoted(ticket)))
                .toArray());
        queueSlope = queueSlope();
    }

    /** Returns all visits that are ready and were worked on, by the day they were ready. */
    static int[] byReady(Visits visits) {
        return IntStream.range(0, visits.size())
                .filter(ticket ->
                        Absent.has(visits.ready(ticket)) && visits.days().begun(ticket))
                .filter(ticket -> visits.ready(ticket) >= visits.opened(ticket))
                .boxed()
                .sorted(Comparator.comparingInt(visits::ready))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    boolean knowsEnough() {
        return donors.length >= LEAST;
    }

    /** Deals each visit's waiting over its repairs in proportion to what they usually bring (Shepp, Vardi 1982). */
    private double[] waits(int types) {
        double all = Arrays.stream(waited).sum();
        double repairs =
                Arrays.stream(donors).map(ticket -> visits.types(ticket).length).sum();
        double average = repairs > 0 ? all / repairs : 0;
        double[] wait = new double[types];
        Arrays.fill(wait, average);
        for (int round = 0; round < ROUNDS; round++) {
            double[] sum = new double[types];
            double[] count = new double[types];
            for (int i = 0; i < donors.length; i++) {
                double together = expected(wait, donors[i]);
                for (int type : visits.types(donors[i])) {
                    sum[type] += together > 0 ? waited[i] * wait[type] / together : 0;
                    count[type]++;
                }
            }
            for (int type = 0; type < types; type++) {
                wait[type] = (sum[type] + PRIOR * average) / (count[type] + PRIOR);
            }
        }
        return wait;
    }

    private double expected(double[] wait, int ticket) {
        return Arrays.stream(visits.types(ticket))
                .mapToDouble(type -> wait[type])
                .sum();
    }

    /** Returns the days that one repair alone usually waits. */
    double ownTime(int type) {
        return waitOf[type];
    }

    /** Returns the days that a visit's repairs usually wait together. */
    double expectedWait(int ticket) {
        return expected(waitOf, ticket);
    }

    /** Returns how much later work begins for each day that the queue is longer, 0 to 1. */
    private double queueSlope() {
        double meanQueue = Arrays.stream(donors)
                .mapToDouble(ticket -> visits.queue(visits.opened(ticket)))
                .average()
                .orElse(0);
        double meanBegin = Arrays.stream(begin).average().orElse(0);
        double both = 0;
        double square = QUEUE_PRIOR;
        for (int i = 0; i < donors.length; i++) {
            double off = visits.queue(visits.opened(donors[i])) - meanQueue;
            both += off * (begin[i] - meanBegin);
            square += off * off;
        }
        return Math.max(0, Math.min(1, both / square));
    }

    /**
     * A visit on a day.
     *
     * @param begun whether it was worked on
     * @param queued days that it stood without being worked on or waiting
     * @param waited days that it waited so far
     * @param hours quoted hours not yet done
     * @param ownTime days that its repairs usually wait
     * @param queue calendar days of work before the bench on the day it came in
     */
    record Case(boolean begun, int queued, int waited, double hours, double ownTime, double queue) {}

    /** Returns the chances of each number of days from the case's day until it is ready. */
    DayChances ahead(Case now) {
        DayChances rest = benchAhead(now).plus(waitAhead(now));
        return now.begun() ? rest : beginAhead(now).plus(rest);
    }

    private DayChances beginAhead(Case now) {
        return now.queued() == 0
                ? DayChances.of(IntStream.range(Math.max(0, donors.length - LATELY), donors.length)
                        .map(i -> (int) StrictMath.rint(begin[i] + moved(now, donors[i])))
                        .toArray())
                : queueAhead(now);
    }

    /** Returns the days that a visit would have queued longer with the queue of another. */
    private double moved(Case now, int ticket) {
        return queueSlope * (now.queue() - visits.queue(visits.opened(ticket)));
    }

    /** Of the visits that stood as long, those still queuing too; where hardly one of them was begun nobody knows. */
    private DayChances queueAhead(Case now) {
        Stretches left = new Stretches();
        for (int ticket : lately) {
            double queued = visits.queued(ticket, today) + moved(now, ticket);
            left.add((int) StrictMath.rint(queued) - now.queued(), visits.begun(ticket, today));
        }
        return left.over() < FEW ? DayChances.NEVER : DayChances.of(left.curve());
    }

    private DayChances benchAhead(Case now) {
        if (now.begun()) {
            return halfway.ahead(now.hours());
        }
        int[] like = byHours.nearest(StrictMath.log1p(now.hours()));
        return DayChances.of(IntStream.of(like).map(i -> bench[i]).toArray());
    }

    private DayChances waitAhead(Case now) {
        int[] like = byOwnTime.nearest(now.ownTime());
        int[] left = IntStream.of(like)
                .map(i -> waited[i] - now.waited())
                .filter(days -> now.waited() == 0 || days >= 0)
                .toArray();
        return left.length == 0 ? DayChances.NONE : DayChances.of(left);
    }

    /** Returns the middle of the days that visits with the same largest repair took once begun; of all visits where there are few. */
    double usual(int ticket) {
        int type = visits.types(ticket)[0];
        double[] alike = IntStream.range(0, donors.length)
                .filter(i -> visits.types(donors[i])[0] == type)
                .mapToDouble(i -> bench[i] + waited[i])
                .sorted()
                .toArray();
        double[] all = IntStream.range(0, donors.length)
                .mapToDouble(i -> bench[i] + waited[i])
                .sorted()
                .toArray();
        return Quantile.median(alike.length < FEW ? all : alike);
    }
}
