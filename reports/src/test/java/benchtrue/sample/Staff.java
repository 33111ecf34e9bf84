package benchtrue.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The invented people: six technicians, or as many times six as a larger shop needs, and four quote writers.
 *
 * @param technicians everyone at the bench; person {@code i} works like person {@code i % 6}
 * @param weeklyBenchSeconds bench time planned a week for each
 * @param habits what each quote writer multiplies the book's hours by
 */
record Staff(List<Technician> technicians, long weeklyBenchSeconds, double[] habits) {
    /** Names of the quote writers. */
    static final List<String> WRITERS = List.of("Wren", "Odile", "Tobias", "Lena");

    /** Kinds of technician. */
    static final int KINDS = 6;

    private static final double[] WRITER_SHARES = Dice.cumulative(0.25, 0.20, 0.25, 0.30);
    private static final double[] HABITS = {1.02, 0.95, 1.06, 0.89};
    private static final double JITTER = 0.025;
    private static final double HOURS_A_WEEK = 21;
    private static final double PLANNED_OVER_WORKED = 1.15;

    private static final Technician[] TEAM = {
        new Technician("Wren", "senior", 0.90, 3_600, 180, LogStyle.DECIMAL, false, "owner"),
        new Technician("Marek", "technician", 0.98, 2_700, 180, LogStyle.DECIMAL, true, "hourly"),
        new Technician("Ines", "technician", 1.03, 2_650, 300, LogStyle.HOURS_AND_MINUTES, false, "hourly"),
        new Technician("Tobias", "senior", 0.94, 3_300, 300, LogStyle.CLOCK, false, "salary"),
        new Technician("Odile", "technician", 1.05, 2_600, 900, LogStyle.DECIMAL, false, "hourly"),
        new Technician("Yusuf", "trainee", 1.24, 1_900, 36, LogStyle.DECIMAL, false, "hourly")
    };

    private static final int TIDY_GRID = 180;

    private static final Map<String, double[]> PREFERENCES = Map.of(
            "setup", Dice.cumulative(0.4, 1.2, 1.2, 0.4, 1.0, 2.2),
            "fretwork", Dice.cumulative(1.0, 1.0, 1.0, 1.2, 0.8, 0.4),
            "structural", Dice.cumulative(1.6, 0.6, 0.5, 1.6, 0.5, 0.15),
            "finish", Dice.cumulative(0.8, 0.6, 1.2, 1.2, 1.2, 0.2),
            "electronics", Dice.cumulative(0.4, 1.2, 1.0, 0.3, 1.2, 1.2),
            "fitting", Dice.cumulative(0.4, 1.0, 1.0, 0.5, 1.0, 1.6));

    static Staff of(SampleOptions options, double benchHours, Dice dice) {
        double weekly = benchHours / (options.years() * 52.0);
        int teams = (int) StrictMath.ceil(weekly / (KINDS * HOURS_A_WEEK));
        List<Technician> people = new ArrayList<>();
        for (int i = 0; i < teams * KINDS; i++) {
            people.add(person(i, options.untidy(), dice.normal()));
        }
        double[] habits = HABITS.clone();
        for (int i = 0; i < habits.length; i++) {
            habits[i] *= StrictMath.exp(JITTER * dice.normal());
        }
        double halfHours = StrictMath.ceil(weekly / (teams * KINDS) * PLANNED_OVER_WORKED * 2);
        return new Staff(List.copyOf(people), (long) halfHours * 1_800, habits);
    }

    private static Technician person(int index, boolean untidy, double jitter) {
        Technician model = TEAM[index % KINDS];
        boolean decimal = model.style() == LogStyle.DECIMAL;
        return new Technician(
                index < KINDS ? model.name() : model.name() + "-" + (index / KINDS + 1),
                model.grade(),
                model.effect() * StrictMath.exp(JITTER * jitter),
                model.wageCents(),
                untidy || decimal ? model.grid() : TIDY_GRID,
                untidy ? model.style() : LogStyle.DECIMAL,
                untidy && model.copies(),
                model.payBasis());
    }

    int drawTechnician(String family, Dice dice) {
        int kind = dice.pick(PREFERENCES.get(family));
        return kind + KINDS * dice.below(technicians.size() / KINDS);
    }

    int drawWriter(Dice dice) {
        return dice.pick(WRITER_SHARES);
    }
}
