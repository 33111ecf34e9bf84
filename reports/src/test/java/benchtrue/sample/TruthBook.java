package benchtrue.sample;

import benchtrue.shop.Hours;
import benchtrue.shop.Outcome;
import benchtrue.shop.TimeKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Adds up what is true while the shop runs. Mutable. */
final class TruthBook implements VisitSink {
    /** Shops of more tickets get no truth a line. */
    static final int MOST_TICKETS = 50_000;

    private static final double TOGETHER = 0.9;

    private final World world;
    private final TypeSums sums;
    private final List<LineTruth> lines = new ArrayList<>();

    TruthBook(World world) {
        this.world = world;
        this.sums = new TypeSums(world.catalogue().size());
    }

    @Override
    public void take(Worked worked) {
        for (int i = 0; i < worked.lines().size(); i++) {
            Line line = worked.lines().get(i);
            if (worked.judged(i)) {
                judge(line, worked.loggedSeconds()[i]);
            }
            if (worked.isClosed() && worked.visit().back().failed() && line.type() != Catalogue.ONE_OFF) {
                sums.rework[line.type()] += worked.loggedSeconds()[i];
                sums.expectedRework[line.type()] += line.expectedSeconds();
            }
            if (world.options().tickets() <= MOST_TICKETS) {
                lines.add(truth(worked, i));
            }
        }
        for (Session session : worked.sessions()) {
            if (session.kind() == TimeKind.BENCH
                    && session.type() != Catalogue.ONE_OFF
                    && worked.lines().stream().noneMatch(line -> line.type() == session.type())) {
                sums.unquoted[session.type()] += session.seconds();
            }
        }
    }

    @Override
    public void takeShared(Session session) {
        // Its hours come with the visits that share it.
    }

    private void judge(Line line, long logged) {
        double quoted = world.rebased(line);
        double expected = expected(line);
        double sd = line.copied() ? 0 : world.catalogue().get(line.type()).sd();
        sums.lines[line.type()]++;
        sums.quoted[line.type()] += quoted;
        sums.expected[line.type()] += expected;
        sums.logged[line.type()] += logged;
        sums.logs[line.type()] += StrictMath.log(expected / quoted) - sd * sd / 2;
    }

    /** Returns a line's expected logged seconds: of a copied quote, the copy. */
    static double expected(Line line) {
        return line.copied() ? line.loggedSeconds() : line.expectedSeconds();
    }

    private LineTruth truth(Worked worked, int place) {
        Line line = worked.lines().get(place);
        return new LineTruth(
                worked.visit().ticket(),
                line.number(),
                world.catalogue().key(line.type()),
                state(worked, line),
                worked.judged(place),
                line.judgedQuoteSeconds(),
                world.rebased(line),
                expected(line),
                worked.loggedSeconds()[place],
                line.workedSeconds());
    }

    private static String state(Worked worked, Line line) {
        if (worked.visit().fate() == Fate.VOID) {
            return "void";
        }
        return line.terms().outcome() == Outcome.DECLINED ? "declined" : worked.isClosed() ? "closed" : "open";
    }

    Truth close(Tally tally) {
        return new Truth(
                types(),
                technicians(),
                named(Staff.WRITERS, world.staff().habits()),
                classes(),
                traits(),
                World.ADJUSTMENT_BORNE_OUT,
                world.slowType() == Catalogue.ONE_OFF ? "" : world.catalogue().key(world.slowType()),
                LocalDate.ofEpochDay(world.history().slowFrom()),
                world.options().slowing().factor(),
                together(),
                found(),
                tally.counts(),
                lines);
    }

    private List<TypeTruth> types() {
        List<TypeTruth> types = new ArrayList<>();
        TrueLoads loads = TrueLoads.of(world);
        for (int k = 0; k < sums.lines.length; k++) {
            RepairSpec spec = world.catalogue().get(k);
            types.add(new TypeTruth(
                    spec.key(),
                    sums.lines[k],
                    sums.quoted[k] / Hours.SECONDS,
                    sums.expected[k] / Hours.SECONDS,
                    sums.expectedRework[k] / Hours.SECONDS,
                    Hours.of(sums.logged[k]),
                    Hours.of(sums.rework[k]),
                    Hours.of(sums.unquoted[k]),
                    loads.load(k),
                    (sums.expected[k] + sums.expectedRework[k]) / sums.quoted[k],
                    sums.logged[k] / sums.quoted[k],
                    StrictMath.exp(sums.logs[k] / sums.lines[k]),
                    spec.sd()));
        }
        return types;
    }

    private Map<String, Double> technicians() {
        Map<String, Double> effects = new TreeMap<>();
        world.staff().technicians().forEach(person -> effects.put(person.name(), person.effect()));
        return effects;
    }

    private Map<String, Double> classes() {
        List<String> names = new ArrayList<>();
        for (InstrumentClass instrument : InstrumentClass.ALL) {
            names.add(instrument.name());
        }
        return named(names, world.classEffects());
    }

    private static Map<String, Double> named(List<String> names, double[] values) {
        Map<String, Double> map = new TreeMap<>();
        for (int i = 0; i < values.length; i++) {
            map.put(names.get(i), values[i]);
        }
        return map;
    }

    private static List<TraitTruth> traits() {
        List<TraitTruth> traits = new ArrayList<>();
        for (Trait trait : Trait.values()) {
            traits.add(new TraitTruth(
                    trait.word(),
                    trait.effect(),
                    trait.families().stream().sorted().toList()));
        }
        return traits;
    }

    private List<List<String>> together() {
        return world.types().stream()
                .filter(type -> type.companionChance() > TOGETHER)
                .map(type -> List.of(type.key(), type.companion()))
                .toList();
    }

    private List<FoundTruth> found() {
        return world.types().stream()
                .filter(type -> !type.finds().isEmpty())
                .map(type -> new FoundTruth(type.key(), type.finds(), type.findsChance()))
                .toList();
    }
}
