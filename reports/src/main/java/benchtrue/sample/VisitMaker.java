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
    private static final double PARTLY = 0.4;
    private static final double NAMES_TYPE = 0.2;
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
        return types.size() == 1 ? grown(visit, draft.dice()) : visit;
    }

    /** Returns a visit that began with one line, labelled as one of several lines where it has become one. */
    private Visit grown(Visit visit, Dice dice) {
        boolean whole = dice.chance(world.options().wholeTicketShare());
        if (visit.lines().size() == 1 || whole) {
            return visit;
        }
        List<Line> named = visit.lines().stream()
                .map(line -> line.label() == Label.NONE ? line.with(Label.LINE) : line)
                .toList();
        return visit.with(named, visit.fate());
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
            traits |= dice.chance(trait.share()) ? trait.bit() : 0;
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
        int built = dice.chance(YEAR_KNOWN) ? 1_925 + dice.below(100) : 0;
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
        Labels labels = labels(dice, types.size());
        List<Line> lines = new ArrayList<>();
        for (int type : types) {
            int technician = family(type).equals(family(types.get(0))) ? main : second;
            Line line = maker.line(draft, lines.size() + 1, type, technician, labels.draw(dice), false);
            boolean refused = declined | (dice.chance(DECLINED_LINE) & !lines.isEmpty());
            lines.add(refused ? line.with(Terms.PLAIN.with(Outcome.DECLINED)) : line);
        }
        addFound(draft, lines, labels);
        return lines;
    }

    private void addFound(Draft draft, List<Line> lines, Labels labels) {
        Dice dice = draft.dice();
        for (Line parent : List.copyOf(lines)) {
            RepairSpec spec = world.catalogue().get(parent.type());
            int found = finds[parent.type()];
            if (dice.chance(spec.findsChance())
                    && parent.accepted()
                    && lines.size() < MOST_LINES
                    && lines.stream().noneMatch(line -> line.type() == found)) {
                Line line = maker.line(draft, lines.size() + 1, found, parent.technician(), labels.draw(dice), true);
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

    /** How one visit's hours are labelled: shares of lines with the ticket only, the line, the repair type. */
    private record Labels(double none, double type) {
        Label draw(Dice dice) {
            boolean unlabelled = dice.chance(none);
            boolean named = dice.chance(type);
            return unlabelled ? Label.NONE : named ? Label.TYPE : Label.LINE;
        }
    }

    private Labels labels(Dice dice, int lines) {
        double whole = world.options().wholeTicketShare();
        double at = dice.uniform();
        double type = dice.chance(NAMES_TYPE) ? 1 : 0;
        if (lines == 1) {
            return new Labels(at < 0.5 ? 1 : 0, type);
        }
        if (at < whole) {
            return new Labels(1, type);
        }
        // Partly labelled tickets are as common as the shop is of two minds.
        return new Labels(at < whole + PARTLY * whole * (1 - whole) ? 0.5 : 0, type);
    }
}
