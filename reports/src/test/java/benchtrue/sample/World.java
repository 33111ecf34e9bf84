package benchtrue.sample;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.util.Arrays;
import java.util.List;

/**
 * Everything about the invented shop that is settled before its first ticket.
 *
 * @param options what was asked for
 * @param history its calendar
 * @param catalogue its repair types
 * @param staff its people
 * @param classEffects what each instrument class multiplies bench hours by
 * @param loads per repair type: true hours over today's book hours before people, classes, traits and writers
 * @param slowType the type that gets slower, or {@link Catalogue#ONE_OFF} for none
 * @param demand by book and instrument class: summed weights of the repair types
 */
record World(
        SampleOptions options,
        History history,
        Catalogue catalogue,
        Staff staff,
        double[] classEffects,
        double[] loads,
        int slowType,
        double[][][] demand) {
    /** Share of a quote's adjustment for condition (on the log scale) that the hours bear out. */
    static final double ADJUSTMENT_BORNE_OUT = 0.6;

    /** Standard deviation of a quote's adjustment for condition, on the log scale. */
    static final double ADJUSTMENT_SD = 0.10;

    /** Probabilities that a visit has 1, 2, ... 6 lines. */
    static final double[] LINES = Dice.cumulative(0.38, 0.26, 0.16, 0.11, 0.06, 0.03);

    private static final double MEAN_LINES = 2.3;
    private static final double LOAD_JITTER = 0.04;
    private static final double CLASS_JITTER = 0.02;
    private static final String GETS_SLOWER = "nut-replace";

    static World of(SampleOptions options) {
        Dice dice = new Dice(options.seed(), Dice.Stream.SHOP, 0);
        Catalogue catalogue = Catalogue.of(options.tidiness());
        double[][][] demand = {demand(catalogue, false), demand(catalogue, true)};
        double[] loads = new double[catalogue.size()];
        for (int i = 0; i < loads.length; i++) {
            loads[i] = catalogue.get(i).load() * StrictMath.exp(LOAD_JITTER * dice.normal());
        }
        double[] classes = new double[InstrumentClass.ALL.length];
        for (int i = 0; i < classes.length; i++) {
            classes[i] = InstrumentClass.ALL[i].effect() * StrictMath.exp(CLASS_JITTER * dice.normal());
        }
        double hours = options.tickets() * MEAN_LINES * meanHours(catalogue, demand[0]);
        return new World(
                options,
                History.of(options),
                catalogue,
                Staff.of(options, hours, dice),
                classes,
                loads,
                options.slowing() == Slowing.NONE ? Catalogue.ONE_OFF : catalogue.place(GETS_SLOWER),
                demand);
    }

    World withLoads(double[] other) {
        return new World(options, history, catalogue, staff, classEffects, other, slowType, demand);
    }

    /** Returns the same shop with some number of other visits over the same years. */
    World withOtherVisits(int tickets, long seedShift) {
        SampleOptions others = options.withTickets(tickets).withSeed(options.seed() ^ seedShift);
        return new World(others, History.of(others), catalogue, staff, classEffects, loads, slowType, demand);
    }

    /** Returns a line's quote on today's book, in seconds. */
    double rebased(Line line) {
        return line.type() == Catalogue.ONE_OFF
                ? line.judgedQuoteSeconds()
                : (double) line.judgedQuoteSeconds()
                        * catalogue.get(line.type()).todaySeconds()
                        / line.bookSeconds();
    }

    private static double[][] demand(Catalogue catalogue, boolean second) {
        double[][] demand = new double[InstrumentClass.ALL.length][];
        for (int c = 0; c < demand.length; c++) {
            double[] weights = new double[catalogue.size()];
            for (int k = 0; k < weights.length; k++) {
                RepairSpec type = catalogue.get(k);
                boolean offered = Absent.has(second ? type.nowSeconds() : type.thenSeconds());
                weights[k] = offered && type.fits().takes(InstrumentClass.ALL[c]) ? type.weight() : 0;
            }
            demand[c] = Dice.cumulative(weights);
        }
        return demand;
    }

    private static double meanHours(Catalogue catalogue, double[][] demand) {
        double hours = 0;
        double shares = Arrays.stream(InstrumentClass.ALL)
                .mapToDouble(InstrumentClass::share)
                .sum();
        for (int c = 0; c < demand.length; c++) {
            double[] sums = demand[c];
            for (int k = 0; k < sums.length; k++) {
                double weight = (sums[k] - (k == 0 ? 0 : sums[k - 1])) / sums[sums.length - 1];
                RepairSpec type = catalogue.get(k);
                hours += InstrumentClass.ALL[c].share() / shares * weight * type.load() * Hours.of(type.todaySeconds());
            }
        }
        return hours;
    }

    /** Returns the hours of the book in force on a day, in seconds; of the other book where that one lacks the type. */
    long bookSeconds(int type, int day) {
        RepairSpec spec = catalogue.get(type);
        return history.secondBookOn(day) ? spec.todaySeconds() : Absent.firstOf(spec.thenSeconds(), spec.nowSeconds());
    }

    /** Returns whether the book in force on a day has a repair type. */
    boolean offers(int type, int day) {
        RepairSpec spec = catalogue.get(type);
        return Absent.has(history.secondBookOn(day) ? spec.nowSeconds() : spec.thenSeconds());
    }

    /** Returns labour money an hour in the book in force on a day. */
    int shopRate(int day) {
        return history.secondBookOn(day) ? 95 : 85;
    }

    /** Returns what traits multiply the hours of a family by. */
    double traitEffect(int traits, String family) {
        double effect = 1;
        for (Trait trait : Trait.values()) {
            if ((traits & trait.bit()) != 0 && trait.families().contains(family)) {
                effect *= trait.effect();
            }
        }
        return effect;
    }

    List<RepairSpec> types() {
        return catalogue.all();
    }
}
