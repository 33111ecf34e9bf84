package benchtrue.sample;

/**
 * Expected hours over quoted hours of every repair type under a shop's mix: its technicians, quote writers, instrument
 * classes and traits as they are, quotes after rounding, rework included, but not the visits it happened to have. By
 * simulation of other visits, 25 times as many (at least 2,000, at most 300,000) and without the chance in a line's hours,
 * so that the error of the simulation is small beside the shop's own.
 */
final class TrueLoads {
    private static final int TIMES = 25;
    private static final int FEWEST = 2_000;
    private static final int MOST = 300_000;
    private static final int USUAL_RETURN_DAYS = 80;
    private static final long OTHER_VISITS = 0x5DEECE66DL;

    private final double[] worked;
    private final double[] copied;
    private final double[] quoted;

    private TrueLoads(int types) {
        worked = new double[types];
        copied = new double[types];
        quoted = new double[types];
    }

    static TrueLoads of(World world) {
        long wanted = (long) TIMES * world.options().tickets();
        int visits = (int) StrictMath.max(FEWEST, StrictMath.min(MOST, wanted));
        VisitMaker maker = new VisitMaker(world.withOtherVisits(visits, OTHER_VISITS));
        TrueLoads loads = new TrueLoads(world.catalogue().size());
        for (int i = 0; i < visits; i++) {
            Visit visit = maker.fresh(i, Fault.NONE);
            for (Line line : visit.lines()) {
                if (line.judged()) {
                    loads.add(world, visit, line);
                }
            }
        }
        return loads;
    }

    private void add(World world, Visit visit, Line line) {
        int type = line.type();
        // Found work is quoted some days later: days that matter only where the book changes.
        Line asQuoted = line.found() ? line.quotedOn(visit.opened(), line.bookSeconds()) : line;
        boolean mayReturn = visit.opened() < History.AS_OF - USUAL_RETURN_DAYS;
        int freeWeeks = world.catalogue().get(type).freeWeeks();
        double rework = mayReturn ? ComeBacks.reworkShare(visit.lines().size(), freeWeeks) : 0;
        if (line.copied()) {
            copied[type] += line.loggedSeconds();
            worked[type] += rework * line.expectedSeconds();
        } else {
            worked[type] += (1 + rework) * line.expectedSeconds();
        }
        quoted[type] += world.rebased(asQuoted);
    }

    /** Returns the load of a type; NaN where nobody asks for it. */
    double load(int type) {
        return (worked[type] + copied[type]) / quoted[type];
    }

    /** Returns what a type's hours must be multiplied by for its load to be as wanted; copied quotes stay as they are. */
    double scaleTo(int type, double wanted) {
        return worked[type] > 0 ? (wanted * quoted[type] - copied[type]) / worked[type] : 1;
    }
}
