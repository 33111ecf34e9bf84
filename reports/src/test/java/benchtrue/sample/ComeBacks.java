package benchtrue.sample;

import benchtrue.shop.ReturnReason;
import java.util.Comparator;
import java.util.PriorityQueue;

/** The instruments that will be back, soonest first. Mutable: filled as visits close, emptied as later ones begin. */
final class ComeBacks {
    private static final double SHARE = 0.035;
    private static final double LINE_KNOWN = 0.75;
    private static final double[] REASONS = Dice.cumulative(0.20, 0.45, 0.20, 0.15);

    private final World world;
    private final PriorityQueue<ComeBack> waiting =
            new PriorityQueue<>(Comparator.comparingInt(ComeBack::due).thenComparingInt(ComeBack::ticket));

    /**
     * Returns what share of a line's hours is spent on putting it right later, in the mean.
     *
     * @param lines lines on its ticket: one of them may fail
     * @param freeWeeks weeks of free adjustment: without any, nothing settles and the shop is at fault
     */
    static double reworkShare(int lines, int freeWeeks) {
        double settling = 7 * freeWeeks > 7 ? REASONS[0] : 0;
        double failed = REASONS[2] - settling;
        return SHARE / lines * failed * LineMaker.RETURN_SHARE;
    }

    ComeBacks(World world) {
        this.world = world;
    }

    /** Returns the next instrument that is back by a day, or {@link ComeBack#NONE}. */
    ComeBack next(int day) {
        boolean due = !waiting.isEmpty() && waiting.peek().due() <= day;
        return due ? waiting.poll() : ComeBack.NONE;
    }

    /** Decides whether a closed visit's instrument will be back. */
    void consider(Worked worked) {
        Visit visit = worked.visit();
        Dice dice = new Dice(world.options().seed(), Dice.Stream.BACK, visit.index());
        int place = worked.lines().isEmpty() ? 0 : dice.below(worked.lines().size());
        if (dice.chance(SHARE) && !worked.lines().isEmpty() && worked.judged(place)) {
            waiting.add(why(worked, worked.lines().get(place), dice));
        }
    }

    private ComeBack why(Worked worked, Line line, Dice dice) {
        Visit visit = worked.visit();
        int freeDays = 7 * world.catalogue().get(line.type()).freeWeeks();
        ReturnReason drawn = ReturnReason.values()[dice.pick(REASONS)];
        boolean settling = drawn == ReturnReason.SETTLING && freeDays > 7;
        ReturnReason reason = drawn == ReturnReason.SETTLING && !settling ? ReturnReason.OUR_FAULT : drawn;
        int after = settling ? 5 + dice.below(freeDays - 6) : 5 + dice.below(75);
        return new ComeBack(
                visit.index(),
                line.number(),
                line.type(),
                visit.instrument(),
                visit.traits(),
                worked.closed() + after,
                reason,
                dice.chance(LINE_KNOWN));
    }
}
