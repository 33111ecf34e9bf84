package benchtrue.sample;

/**
 * Expected hours over quoted hours of every repair type under a shop's mix: its technicians, quote writers, instrument
 * classes and traits as they are, but not the visits it happened to have. By simulation of many visits, without the
 * chance in a line's hours: over 25 times the shop's visits (at least 2,000, at most 300,000), so that the error of the
 * simulation is small beside the shop's own.
 */
final class MixLoads {
    private static final int TIMES = 25;
    private static final int FEWEST = 2_000;
    private static final int MOST = 300_000;
    private static final long OTHER_VISITS = 0x5DEECE66DL;

    private MixLoads() {}

    static double[] of(World world) {
        long wanted = (long) TIMES * world.options().tickets();
        int visits = (int) StrictMath.max(FEWEST, StrictMath.min(MOST, wanted));
        World many = world.withOtherVisits(visits, OTHER_VISITS);
        VisitMaker maker = new VisitMaker(many);
        double[] expected = new double[world.catalogue().size()];
        double[] quoted = new double[expected.length];
        for (int i = 0; i < visits; i++) {
            Visit visit = maker.fresh(i, Fault.NONE);
            for (Line line : visit.lines()) {
                if (line.judged()) {
                    // Found work is quoted some days later: days that matter only where the book changes.
                    Line asQuoted = line.found() ? line.quotedOn(visit.opened(), line.bookSeconds()) : line;
                    expected[line.type()] += TruthBook.expected(asQuoted);
                    quoted[line.type()] += world.rebased(asQuoted);
                }
            }
        }
        double[] loads = new double[expected.length];
        for (int k = 0; k < loads.length; k++) {
            loads[k] = expected[k] / quoted[k];
        }
        return loads;
    }
}
