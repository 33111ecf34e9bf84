package benchtrue.sample;

import benchtrue.shop.Absent;

/**
 * Makes the lines of a visit: what is quoted for a repair type, and what it takes.
 *
 * <p>The quote is book × writer's habit × exp(a), rounded to quarter hours; the hours are today's book × load × exp(0.6 a)
 * × class × traits × technician × slowing × noise, where the noise is log-normal with mean 1.
 */
final class LineMaker {
    static final long QUARTER_HOUR = 900;

    private static final double COPIED_SHARE = 0.22;
    private static final long LONGEST_COPY = 6 * 3_600L;
    static final double RETURN_SHARE = 0.45;

    private final World world;

    LineMaker(World world) {
        this.world = world;
    }

    /** Returns hours quoted: the book's, adjusted, to the nearest quarter hour, at least one. */
    static long quote(long bookSeconds, double adjustment) {
        double quarters = bookSeconds * StrictMath.exp(adjustment) / QUARTER_HOUR;
        return StrictMath.max(1, StrictMath.round(quarters)) * QUARTER_HOUR;
    }

    /** Returns a line for a repair type in the catalogue. */
    Line line(Draft draft, int number, int type, int technician, Label label, boolean found) {
        RepairSpec spec = world.catalogue().get(type);
        Dice dice = draft.dice();
        double condition = World.ADJUSTMENT_SD * dice.normal();
        double adjustment = condition + StrictMath.log(world.staff().habits()[draft.writer()]);
        long book = world.bookSeconds(type, draft.opened());
        Technician person = world.staff().technicians().get(technician);
        double expected = expected(draft, type, technician) * StrictMath.exp(World.ADJUSTMENT_BORNE_OUT * condition);
        double noise = StrictMath.exp(spec.sd() * dice.normal() - spec.sd() * spec.sd() / 2);
        int grid = person.grid(expected);
        long worked = StrictMath.max(grid, dice.toGrid(expected * noise, grid));
        long quoted = quote(book, adjustment);
        boolean copied =
                dice.chance(COPIED_SHARE) && person.copies() && label != Label.NONE && quoted <= LONGEST_COPY && !found;
        return new Line(
                number,
                type,
                technician,
                adjustment,
                book,
                quoted,
                expected,
                worked,
                copied ? quoted : worked,
                copied,
                found,
                Absent.DAY,
                Terms.PLAIN,
                QuoteForm.PLAIN,
                label);
    }

    private double expected(Draft draft, int type, int technician) {
        RepairSpec spec = world.catalogue().get(type);
        boolean slow =
                type == world.slowType() && draft.opened() >= world.history().slowFrom();
        return spec.todaySeconds()
                * world.loads()[type]
                * world.classEffects()[draft.instrument()]
                * world.traitEffect(draft.traits(), spec.family())
                * world.staff().technicians().get(technician).effect()
                * (slow ? world.options().slowing().factor() : 1);
    }

    /** Returns the line that puts an earlier one right, at about half the hours. */
    Line comeBack(Draft draft, int type, int technician, Label label) {
        RepairSpec spec = world.catalogue().get(type);
        Dice dice = draft.dice();
        double expected = expected(draft, type, technician) * RETURN_SHARE;
        int grid = world.staff().technicians().get(technician).grid(expected);
        double noise = StrictMath.exp(spec.sd() * dice.normal() - spec.sd() * spec.sd() / 2);
        long worked = StrictMath.max(grid, dice.toGrid(expected * noise, grid));
        long book = world.bookSeconds(type, draft.opened());
        return plain(1, type, technician, book, quote(book, StrictMath.log(RETURN_SHARE)), expected, worked, label);
    }

    /** Returns a line that stands in no price book: quoted hours, and hours that take about as long. */
    Line oneOff(Draft draft, int number, long quoted, int technician, Label label) {
        double sd = 0.3;
        double noise = StrictMath.exp(sd * draft.dice().normal() - sd * sd / 2);
        int grid = world.staff().technicians().get(technician).grid(quoted);
        long worked = quoted == 0 ? 0 : StrictMath.max(grid, draft.dice().toGrid(quoted * noise, grid));
        // Nobody names a repair type that does not exist.
        Label named = label == Label.TYPE ? Label.LINE : label;
        return plain(number, Catalogue.ONE_OFF, technician, 0, quoted, quoted, worked, named);
    }

    private static Line plain(
            int number, int type, int technician, long book, long quoted, double expected, long worked, Label label) {
        return new Line(
                number,
                type,
                technician,
                0,
                book,
                quoted,
                expected,
                worked,
                worked,
                false,
                false,
                Absent.DAY,
                Terms.PLAIN,
                QuoteForm.PLAIN,
                label);
    }
}
