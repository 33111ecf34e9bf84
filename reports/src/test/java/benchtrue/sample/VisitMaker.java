package benchtrue.sample;

import benchtrue.shop.Outcome;
import java.util.ArrayList;
import java.util.List;

/** Makes the visits: which instrument, what is quoted, who does it, how it is labelled, what becomes of it. */
final class VisitMaker {
    private static final double SECOND_TECHNICIAN = 0.12;
    private static final double DECLINED_LINE = 0.07;
    private static final double DECLINED_WHOLE = 0.025;
    private static final double FOUND_ACCEPTED = 0.85;
    private static final double YEAR_KNOWN = 0.35;
    private static final int OLDEST = 1_925;
    private static final int BUILT_OVER = 60;
    private static final int MOST_LINES = 6;
    private static final int LEFT_STANDING_DAYS = 240;

    private final World world;
    private final TypePicker picker;
    private final LineMaker maker;
    private final LessTidy lessTidy;
    private final int[] finds;
    private final int unbound;
    private final int bound;

    VisitMaker(World world) {
        this.world = world;
        this.picker = new TypePicker(world);
        this.maker = new LineMaker(world);
        this.lessTidy = new LessTidy(world, maker);
        this.finds = world.types().stream()
                .mapToInt(type -> world.catalogue().place(type.finds()))
                .toArray();
        this.unbound = world.catalogue().place("refret");
        this.bound = world.catalogue().place("refret-bound");
    }

    /** Returns an ordinary visit. */
    Visit fresh(int index, Fault fault) {
        Draft draft = draft(index);
        List<Integer> types = picker.pick(draft.dice(), draft.opened(), draft.instrument());
        Draft fitted = draft.withTraits(boundBoard(draft.traits(), types));
        List<Line> lines = lines(fitted, types);
        Visit plain = visit(fitted, lines, fate(fitted), ComeBack.NONE, fault);
        Visit visit = world.options().untidy() && fault == Fault.NONE ? lessTidy.vary(plain, fitted) : plain;
        return types.size() == 1 ? Labelling.settle(visit, world, draft.dice()) : visit;
    }

    /** Returns a visit for spraying, done in one session with its neighbours by the technician given. */
    Visit spraying(int index, int technician) {
        Draft draft = draft(index);
        List<Line> lines = new ArrayList<>();
        for (String key : List.of("spray-clear", "level-buff")) {
            int type = world.catalogue().place(key);
            Label label = lines.isEmpty() ? Label.NONE : Label.LINE;
            lines.add(maker.line(draft, lines.size() + 1, type, technician, label, false));
        }
        return visit(draft, lines, Fate.STEADY, ComeBack.NONE, Fault.NONE);
    }

    /** Returns a visit with a single line that stands in no price book, to carry a fault. */
    Visit carrying(int index, Fault fault) {
        Draft draft = draft(index);
        int technician = world.staff().drawTechnician("fitting", draft.dice());
        Line line = maker.oneOff(draft, 1, 3_600, technician, Label.LINE);
        List<Line> lines = switch (fault) {
            case NO_LINES -> List.of();
            case ALL_DECLINED -> List.of(line.with(Terms.PLAIN.with(Outcome.DECLINED)));
            default -> List.of(line);
        };
        return visit(draft, lines, Fate.STEADY, ComeBack.NONE, fault);
    }

    /** Returns the visit of an instrument that is back. */
    Visit back(int index, ComeBack why) {
        Draft fresh = draft(index);
        Draft draft = new Draft(fresh.dice(), index, fresh.opened(), why.instrument(), why.traits(), fresh.writer());
        RepairSpec spec = world.catalogue().get(why.type());
        int technician = world.staff().drawTechnician(spec.family(), draft.dice());
        Label label = draft.dice().chance(0.5) ? Label.LINE : Label.NONE;
        Line line = why.putsRight()
                ? lessTidy.free(maker.comeBack(draft, why.type(), technician, label), draft.dice())
                : maker.line(draft, 1, why.type(), technician, label, false);
        return visit(draft, List.of(line), Fate.STEADY, why, Fault.NONE);
    }

    private Draft draft(int index) {
        Dice dice = new Dice(world.options().seed(), Dice.Stream.VISIT, index);
        int instrument = dice.pick(InstrumentClass.SHARES);
        int traits = 0;
        for (Trait trait : Trait.values()) {
            boolean has = dice.chance(trait.share()) && trait.suits(InstrumentClass.ALL[instrument]);
            traits |= has ? trait.bit() : 0;
        }
        return new Draft(
                dice,
                index,
                world.history().opened(index),
                instrument,
                traits,
                world.staff().drawWriter(dice));
    }

    private Visit visit(Draft draft, List<Line> lines, Fate fate, ComeBack back, Fault fault) {
        Dice dice = draft.dice();
        int built = dice.chance(YEAR_KNOWN) ? OLDEST + dice.below(BUILT_OVER) : 0;
        return new Visit(
                draft.index(),
                draft.opened(),
                draft.instrument(),
                draft.traits(),
                built,
                draft.writer(),
                lines,
                fate,
                back,
                fault);
    }

    /** A refret says whether the board is bound. */
    private int boundBoard(int traits, List<Integer> types) {
        int bit = Trait.BOUND_BOARD.bit();
        if (types.contains(bound)) {
            return traits | bit;
        }
        return types.contains(unbound) ? traits & ~bit : traits;
    }

    private List<Line> lines(Draft draft, List<Integer> types) {
        Dice dice = draft.dice();
        int main = world.staff().drawTechnician(family(types.get(0)), dice);
        int second = dice.chance(SECOND_TECHNICIAN)
                ? world.staff().drawTechnician(family(types.get(types.size() - 1)), dice)
                : main;
        boolean declined = dice.chance(DECLINED_WHOLE);
        Labelling labels = Labelling.draw(world, dice, types.size());
        List<Line> lines = new ArrayList<>();
        for (int type : types) {
            int technician = family(type).equals(family(types.get(0))) ? main : second;
            Line line = maker.line(draft, lines.size() + 1, type, technician, labels.label(dice), false);
            boolean refused = declined | (dice.chance(DECLINED_LINE) & !lines.isEmpty());
            lines.add(refused ? line.with(Terms.PLAIN.with(Outcome.DECLINED)) : line);
        }
        addFound(draft, lines, labels);
        return lines;
    }

    private void addFound(Draft draft, List<Line> lines, Labelling labels) {
        Dice dice = draft.dice();
        for (Line parent : List.copyOf(lines)) {
            RepairSpec spec = world.catalogue().get(parent.type());
            int found = finds[parent.type()];
            if (dice.chance(spec.findsChance())
                    && parent.accepted()
                    && lines.size() < MOST_LINES
                    && lines.stream().noneMatch(line -> line.type() == found)) {
                Line line = maker.line(draft, lines.size() + 1, found, parent.technician(), labels.label(dice), true);
                boolean accepted = dice.chance(FOUND_ACCEPTED);
                lines.add(accepted ? line : line.with(Terms.PLAIN.with(Outcome.DECLINED)));
            }
        }
    }

    private String family(int type) {
        return world.catalogue().get(type).family();
    }

    private Fate fate(Draft draft) {
        double at = draft.dice().uniform();
        boolean recent = draft.opened() > History.AS_OF - LEFT_STANDING_DAYS;
        if (recent && at < 0.04) {
            return Fate.IDLE;
        }
        if (recent && at < 0.09) {
            return Fate.HALF_FINISHED;
        }
        if (at > 0.996) {
            return Fate.UNCLAIMED;
        }
        return world.options().untidy() && at > 0.992 ? Fate.VOID : Fate.STEADY;
    }
}
