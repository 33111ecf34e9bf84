package benchtrue.sample;

import benchtrue.shop.TimeKind;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Runs the invented shop from its first visit to its last. */
final class ShopRun {
    private static final int BATCH_EVERY = 150;
    private static final int BATCH_AT = 70;
    private static final int BATCH = 3;

    private final World world;
    private final Bench bench;
    private final VisitMaker maker;
    private final WorkPlanner planner;
    private final ComeBacks comeBacks;
    private final FaultPlan faults;

    ShopRun(World world, Bench bench) {
        this.world = world;
        this.bench = bench;
        this.maker = new VisitMaker(world);
        this.planner = new WorkPlanner(world, bench);
        this.comeBacks = new ComeBacks(world);
        this.faults = new FaultPlan(world.options());
    }

    /** Hands every visit to a sink, filling the technicians' working days. */
    void run(VisitSink sink) throws IOException {
        int tickets = world.options().tickets();
        for (int i = 0; i < tickets; i++) {
            if (isBatch(i)) {
                spray(i, sink);
                i += BATCH - 1;
            } else {
                hand(planner.plan(visit(i)), sink);
            }
        }
    }

    private void hand(Worked worked, VisitSink sink) throws IOException {
        comeBacks.consider(worked);
        sink.take(worked);
    }

    private Visit visit(int index) {
        Fault fault = faults.at(index);
        if (fault.ownVisit()) {
            return maker.carrying(index, fault);
        }
        ComeBack back = fault == Fault.NONE ? comeBacks.next(world.history().opened(index)) : ComeBack.NONE;
        return back.is() ? maker.back(index, back) : maker.fresh(index, fault);
    }

    private boolean isBatch(int index) {
        if (!world.options().untidy() || index % BATCH_EVERY != BATCH_AT) {
            return false;
        }
        for (int i = index; i < index + BATCH; i++) {
            if (i >= world.options().tickets() || faults.at(i) != Fault.NONE) {
                return false;
            }
        }
        return true;
    }

    /** Several bodies sprayed in one session. */
    private void spray(int index, VisitSink sink) throws IOException {
        Dice dice = new Dice(world.options().seed(), Dice.Stream.BACK, -1 - index);
        int technician = world.staff().drawTechnician("finish", dice);
        List<Visit> visits = new ArrayList<>();
        for (int i = index; i < index + BATCH; i++) {
            visits.add(maker.spraying(i, technician));
        }
        int day = spraySession(visits, technician, 1 + dice.below(7), sink);
        for (Visit visit : visits) {
            hand(planner.planAfter(visit, day), sink);
        }
    }

    private int spraySession(List<Visit> visits, int technician, int queue, VisitSink sink) throws IOException {
        String tickets = visits.stream().map(Visit::ticket).collect(Collectors.joining(";"));
        long left = visits.stream()
                .mapToLong(visit -> visit.lines().get(0).loggedSeconds())
                .sum();
        int spray = visits.get(0).lines().get(0).type();
        int day = visits.get(visits.size() - 1).opened() + queue;
        List<Session> sessions = new ArrayList<>();
        while (left > 0) {
            long now = StrictMath.min(left, Bench.FULL_DAY - LineMaker.QUARTER_HOUR);
            Bench.Slot slot = bench.take(technician, day, now);
            day = slot.day();
            left -= now;
            sessions.add(new Session(technician, day, slot.fromSeconds(), now, 0, spray, TimeKind.BENCH, tickets));
        }
        if (day == Bench.NEVER) {
            return day;
        }
        for (Session session : sessions) {
            sink.takeShared(session);
        }
        return day;
    }
}
