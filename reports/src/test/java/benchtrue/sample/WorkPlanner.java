package benchtrue.sample;

import benchtrue.shop.Absent;
import benchtrue.shop.TimeKind;
import benchtrue.shop.WaitReason;
import java.util.ArrayList;
import java.util.List;

/** Plans the work on each visit: when it is done, in which sessions, and what the instrument waits for. */
final class WorkPlanner {
    private static final double QUEUE_DAYS = 7;
    private static final double PICK_UP_DAYS = 5;
    private static final double QUOTING = 0.10;
    private static final double HANDLING = 0.13;
    private static final double UNQUOTED = 0.025;
    private static final double ACCLIMATISING = 0.12;
    private static final double WAITS_FOR_PARTS = 0.08;
    private static final double WAIT_WRITTEN = 0.2;
    private static final List<String> GIVEN_AWAY =
            List.of("truss-rod-adjust", "fret-reseat", "action-adjust", "drop-fill");

    private final World world;
    private final Bench bench;

    WorkPlanner(World world, Bench bench) {
        this.world = world;
        this.bench = bench;
    }

    /** Plans one visit. */
    Worked plan(Visit visit) {
        Dice dice = dice(visit);
        WorkLog log = new WorkLog(visit, bench, dice);
        if (dice.chance(QUOTING) && !visit.lines().isEmpty()) {
            log.log(visit.lines().get(0).technician(), LineMaker.QUARTER_HOUR, 0, Catalogue.ONE_OFF, TimeKind.QUOTING);
        }
        queue(visit, log, dice);
        return rest(visit, log, dice, 0);
    }

    /** Plans a visit whose first line was done on a day in a session shared with other visits. */
    Worked planAfter(Visit visit, int day) {
        Dice dice = dice(visit);
        WorkLog log = new WorkLog(visit, bench, dice);
        long[] done = new long[visit.lines().size()];
        done[0] = day == Bench.NEVER ? 0 : visit.lines().get(0).loggedSeconds();
        log.resume(day, done);
        cure(visit.lines().get(0), log);
        return rest(visit, log, dice, 1);
    }

    private Dice dice(Visit visit) {
        return new Dice(world.options().seed(), Dice.Stream.WORK, visit.index());
    }

    private void queue(Visit visit, WorkLog log, Dice dice) {
        boolean written = dice.chance(WAIT_WRITTEN);
        int days = 1 + (int) dice.exponential(QUEUE_DAYS);
        if (visit.fault().ownVisit()) {
            log.skip(1);
        } else if (visit.fate() == Fate.IDLE) {
            log.stop();
        } else if (written) {
            log.pause(WaitReason.BENCH, days);
        } else {
            log.skip(days);
        }
        boolean structural =
                visit.lines().stream().anyMatch(line -> family(line).equals("structural"));
        if (structural && dice.chance(ACCLIMATISING)) {
            log.pause(WaitReason.ACCLIMATISING, 14 + dice.below(29));
        }
    }

    private String family(Line line) {
        return line.type() == Catalogue.ONE_OFF
                ? ""
                : world.catalogue().get(line.type()).family();
    }

    private Worked rest(Visit visit, WorkLog log, Dice dice, int from) {
        List<Line> lines = new ArrayList<>(visit.lines().subList(0, from));
        long stopAfter = stopAfter(visit, dice);
        for (int i = from; i < visit.lines().size(); i++) {
            Line line = visit.lines().get(i);
            if (line.found()) {
                int day = log.today();
                if (!Absent.has(day)) {
                    continue;
                }
                line = line.quotedOn(day, world.bookSeconds(line.type(), day));
            }
            lines.add(line);
            if (line.accepted()) {
                stopAfter -= work(lines.size() - 1, line, log, dice, stopAfter);
            }
        }
        log.flush();
        return finish(visit, lines, log, dice);
    }

    private static long quarters(long seconds) {
        return seconds / LineMaker.QUARTER_HOUR * LineMaker.QUARTER_HOUR;
    }

    /** Returns the bench time after which the work is left. */
    private static long stopAfter(Visit visit, Dice dice) {
        double share = 0.3 + 0.5 * dice.uniform();
        long all = visit.lines().stream().mapToLong(Line::loggedSeconds).sum();
        boolean left = visit.fate() == Fate.HALF_FINISHED || visit.fate() == Fate.VOID;
        return left ? (long) (share * all) : Long.MAX_VALUE;
    }

    /** Works on a line, but for no longer than {@code most}; returns the time it took. */
    private long work(int place, Line line, WorkLog log, Dice dice, long most) {
        if (dice.chance(WAITS_FOR_PARTS) && !partOf(line).isEmpty()) {
            log.pause(WaitReason.PARTS, 4 + dice.below(14));
        }
        long seconds = line.loggedSeconds() <= most ? line.loggedSeconds() : quarters(most);
        if (seconds > 0) {
            log.work(place, line, seconds);
        }
        if (seconds < line.loggedSeconds()) {
            log.stop();
        } else if (line.type() != Catalogue.ONE_OFF) {
            cure(line, log);
        }
        return seconds;
    }

    private String partOf(Line line) {
        return line.type() == Catalogue.ONE_OFF
                ? ""
                : world.catalogue().get(line.type()).part();
    }

    private void cure(Line line, WorkLog log) {
        RepairSpec spec = world.catalogue().get(line.type());
        if (spec.cureDays() > 0) {
            log.pause(spec.cure(), spec.cureDays());
        }
    }

    private Worked finish(Visit visit, List<Line> lines, WorkLog log, Dice dice) {
        boolean handled = dice.chance(HANDLING);
        boolean given = dice.chance(UNQUOTED);
        int pickUp = 1 + (int) dice.exponential(PICK_UP_DAYS);
        if (!lines.isEmpty() && log.lastDay() <= History.AS_OF) {
            int technician = lines.get(lines.size() - 1).technician();
            if (given) {
                giveAway(lines, log, dice, technician);
            }
            if (handled) {
                long seconds = (1 + dice.below(2)) * LineMaker.QUARTER_HOUR;
                log.log(technician, seconds, 0, Catalogue.ONE_OFF, TimeKind.HANDLING);
            }
        }
        int finished = log.lastDay();
        int collected = StrictMath.max(log.cursor(), finished) + pickUp;
        boolean never = finished == Bench.NEVER || visit.fate() == Fate.UNCLAIMED || collected > History.AS_OF;
        int closed = never ? Bench.NEVER : History.workday(collected);
        if (dice.chance(WAIT_WRITTEN) && finished <= History.AS_OF && !lines.isEmpty()) {
            log.pauses().add(new Pause(finished, closed, WaitReason.PICK_UP));
        }
        return new Worked(visit, lines, log.logged(), log.sessions(), log.pauses(), finished, closed);
    }

    /** Work on a repair type that no line quotes. */
    private void giveAway(List<Line> lines, WorkLog log, Dice dice, int technician) {
        int type = world.catalogue().place(GIVEN_AWAY.get(dice.below(GIVEN_AWAY.size())));
        long seconds = (1 + dice.below(4)) * LineMaker.QUARTER_HOUR;
        if (lines.stream().noneMatch(line -> line.type() == type)) {
            log.log(technician, seconds, 0, type, TimeKind.BENCH);
        }
    }
}
