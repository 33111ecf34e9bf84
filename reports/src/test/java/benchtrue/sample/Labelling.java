package benchtrue.sample;

import java.util.List;

/**
 * How one visit's hours are labelled.
 *
 * @param none share of its lines whose hours name the ticket only
 * @param type share of the others whose hours name the repair type instead of the line
 */
record Labelling(double none, double type) {
    private static final double PARTLY = 0.4;
    private static final double NAMES_TYPE = 0.2;
    private static final double SINGLE_WHOLE = 0.5;

    /** Draws how a visit of some lines is labelled. */
    static Labelling draw(World world, Dice dice, int lines) {
        double whole = world.options().wholeTicketShare();
        double at = dice.uniform();
        double type = dice.chance(NAMES_TYPE) ? 1 : 0;
        if (lines == 1) {
            return new Labelling(at < SINGLE_WHOLE ? 1 : 0, type);
        }
        if (at < whole) {
            return new Labelling(1, type);
        }
        // Partly labelled tickets are as common as the shop is of two minds.
        return new Labelling(at < whole + PARTLY * whole * (1 - whole) ? 0.5 : 0, type);
    }

    /** Returns what is written beside the hours of the next line. */
    Label label(Dice dice) {
        boolean unlabelled = dice.chance(none);
        boolean named = dice.chance(type);
        return unlabelled ? Label.NONE : named ? Label.TYPE : Label.LINE;
    }

    /** Returns a visit that began with one line, labelled as one of several lines where it has become one. */
    static Visit settle(Visit visit, World world, Dice dice) {
        boolean whole = dice.chance(world.options().wholeTicketShare());
        if (visit.lines().size() == 1 || whole) {
            return visit;
        }
        List<Line> named = visit.lines().stream()
                .map(line -> line.label() == Label.NONE ? line.with(Label.LINE) : line)
                .toList();
        return visit.with(named, visit.fate());
    }
}
