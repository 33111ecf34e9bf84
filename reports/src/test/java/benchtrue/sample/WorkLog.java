package benchtrue.sample;

import benchtrue.shop.Absent;
import benchtrue.shop.TimeKind;
import benchtrue.shop.WaitReason;
import java.util.ArrayList;
import java.util.List;

/** The work on one visit as it proceeds: sessions at the bench, and the days between them. Mutable, one a visit. */
final class WorkLog {
    private static final int SHORTEST_SITTING = 3 * 3_600;
    private static final int SITTINGS = 11;
    private static final int TAIL = 1_800;

    private final Visit visit;
    private final Bench bench;
    private final Dice dice;
    private final List<Session> sessions = new ArrayList<>(4);
    private final List<Pause> pauses = new ArrayList<>(2);
    private final long[] logged;
    private final long[] open;

    private int cursor;
    private int lastDay;
    private int technician;
    private int label;
    private int named = Catalogue.ONE_OFF;
    private long sitting;
    private long limit;

    WorkLog(Visit visit, Bench bench, Dice dice) {
        this.visit = visit;
        this.bench = bench;
        this.dice = dice;
        this.logged = new long[visit.lines().size()];
        this.open = new long[logged.length];
        this.cursor = visit.opened();
        this.lastDay = visit.opened();
    }

    /** Returns the day on which work could go on. */
    int cursor() {
        return cursor;
    }

    /** Returns the day of the last session, {@link Bench#NEVER} once one fell after the end of the history. */
    int lastDay() {
        return lastDay;
    }

    long[] logged() {
        return logged;
    }

    List<Session> sessions() {
        return sessions;
    }

    List<Pause> pauses() {
        return pauses;
    }

    /** Stops the work for some days, for a reason that the exports give. */
    void pause(WaitReason reason, int days) {
        flush();
        int from = cursor;
        skip(days);
        if (from <= History.AS_OF) {
            pauses.add(new Pause(from, cursor <= History.AS_OF ? cursor : Bench.NEVER, reason));
        }
    }

    /** Lets some days pass. */
    void skip(int days) {
        cursor = StrictMath.min(Bench.NEVER, cursor + days);
    }

    /** Lets the work rest for good. */
    void stop() {
        flush();
        cursor = Bench.NEVER;
        lastDay = Bench.NEVER;
    }

    /** Goes on no earlier than a day. */
    void resume(int day, long[] alreadyLogged) {
        cursor = day;
        lastDay = day;
        System.arraycopy(alreadyLogged, 0, logged, 0, alreadyLogged.length);
    }

    /** Works on a line, by its place; hours without a label run on from the line before. */
    void work(int place, Line line, long seconds) {
        int line0 = line.label() == Label.LINE ? line.number() : 0;
        int type0 = line.label() == Label.TYPE ? line.type() : Catalogue.ONE_OFF;
        boolean runsOn = technician == line.technician() && line.label() == Label.NONE && label == 0 && named == type0;
        if (!runsOn) {
            flush();
        }
        technician = line.technician();
        label = line0;
        named = type0;
        long left = line.copied() ? seconds : sit(place, seconds);
        if (left > 0) {
            open[place] += left;
            sitting += left;
        }
        if (line.copied()) {
            flush();
        }
    }

    /** Takes whole sittings off some work and returns what is left for the one that stays open. */
    private long sit(int place, long seconds) {
        long left = seconds;
        if (sitting == 0) {
            limit = limit();
        }
        while (sitting + left > limit && left > TAIL) {
            long now = StrictMath.max(0, StrictMath.min(left, limit - sitting));
            open[place] += now;
            sitting += now;
            left -= now;
            flush();
            limit = limit();
        }
        if (sitting + left > Bench.FULL_DAY) {
            flush();
        }
        return left;
    }

    private long limit() {
        return SHORTEST_SITTING + dice.below(SITTINGS) * LineMaker.QUARTER_HOUR;
    }

    /** Logs the sitting that is still open. */
    void flush() {
        if (sitting > 0 && log(technician, sitting, label, named, TimeKind.BENCH)) {
            for (int i = 0; i < open.length; i++) {
                logged[i] += open[i];
            }
        }
        java.util.Arrays.fill(open, 0);
        sitting = 0;
    }

    /** Logs one stretch of time from the cursor on; returns whether it falls within the history. */
    boolean log(int person, long seconds, int line, int type, TimeKind kind) {
        Bench.Slot slot = bench.take(person, cursor, seconds);
        cursor = slot.day();
        lastDay = slot.day();
        if (slot.day() == Bench.NEVER) {
            return false;
        }
        sessions.add(new Session(person, slot.day(), slot.fromSeconds(), seconds, line, type, kind, visit.ticket()));
        return true;
    }

    /** Returns the day a found line is quoted, {@link Absent#DAY} where that is yet to come. */
    int today() {
        flush();
        return cursor <= History.AS_OF ? cursor : Absent.DAY;
    }
}
