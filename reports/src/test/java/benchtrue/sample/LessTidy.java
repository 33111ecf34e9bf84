package benchtrue.sample;

import benchtrue.shop.ChargeKind;
import benchtrue.shop.PaidBy;
import benchtrue.shop.QuoteBasis;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Turns some ordinary visits into the less tidy ones: packages, minimums, house work, retyped quotes and the like. */
final class LessTidy {
    private static final double[] VARIANTS =
            Dice.cumulative(0.02, 0.02, 0.015, 0.01, 0.012, 0.02, 0.02, 0.03, 0.03, 0.06, 0.763);
    private static final double[] PAYERS = Dice.cumulative(0.87, 0.06, 0.02, 0.015, 0.035);
    private static final double[] BASES = Dice.cumulative(0.75, 0.17, 0.08);
    private static final int MINIMUM_JOB = 4_500;
    private static final int MOST_LINES = 6;

    private final World world;
    private final LineMaker maker;

    LessTidy(World world, LineMaker maker) {
        this.world = world;
        this.maker = maker;
    }

    /** Returns the visit as it was, or with one thing less tidy about it. */
    Visit vary(Visit visit, Draft draft) {
        Dice dice = draft.dice();
        PaidBy payer = PaidBy.values()[dice.pick(PAYERS)];
        QuoteBasis basis = QuoteBasis.values()[dice.pick(BASES)];
        List<Line> lines = new ArrayList<>(visit.lines());
        lines.replaceAll(line -> line.with(line.terms().with(payer).with(basis)));
        vary(lines, draft, dice.pick(VARIANTS));
        if (visit.fate() == Fate.UNCLAIMED) {
            charge(lines, draft, ChargeKind.STORAGE, 0);
        }
        return visit.with(lines, visit.fate());
    }

    private void vary(List<Line> lines, Draft draft, int variant) {
        switch (variant) {
            case 0 -> pack(lines);
            case 1 -> charge(lines, draft, ChargeKind.EVALUATION, 1_800);
            case 2 -> minimum(lines);
            case 3 -> charge(lines, draft, ChargeKind.RUSH, 0);
            case 4 -> charge(lines, draft, ChargeKind.OUTSIDE_WORK, 0);
            case 5 -> charge(lines, draft, ChargeKind.REPAIR, (4 + draft.dice().below(9)) * LineMaker.QUARTER_HOUR);
            case 6 -> first(lines, line -> line.with(line.terms().with(QuoteBasis.TIME)));
            case 7 -> first(lines, line -> line.with(QuoteForm.BLANK));
            case 8 -> first(lines, line -> line.with(QuoteForm.FIRST_KEPT));
            case 9 -> lines.replaceAll(line -> line.found() ? line : line.with(QuoteForm.RETYPED));
            default -> {}
        }
    }

    private static void first(List<Line> lines, UnaryOperator<Line> change) {
        lines.set(0, change.apply(lines.get(0)));
    }

    /** The first line carries the quote of the whole package, the others none. */
    private static void pack(List<Line> lines) {
        if (lines.size() < 2 || lines.stream().anyMatch(line -> !line.accepted() || line.found() || line.copied())) {
            return;
        }
        long whole = lines.stream().mapToLong(Line::quotedSeconds).sum();
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            Terms terms = line.terms().with(ChargeKind.PACKAGE);
            lines.set(i, line.with(terms, i == 0 ? QuoteForm.PLAIN : QuoteForm.IN_PACKAGE, i == 0 ? whole : 0));
        }
    }

    private static void minimum(List<Line> lines) {
        Line line = lines.get(0);
        if (line.bookSeconds() <= MINIMUM_JOB && line.accepted()) {
            lines.set(0, line.with(line.terms().with(ChargeKind.MINIMUM)));
        }
    }

    private void charge(List<Line> lines, Draft draft, ChargeKind kind, long seconds) {
        if (lines.size() >= MOST_LINES || lines.stream().anyMatch(Line::found)) {
            return;
        }
        Line last = lines.get(lines.size() - 1);
        Terms terms = new Terms(
                benchtrue.shop.Outcome.ACCEPTED,
                kind,
                QuoteBasis.FIXED,
                last.terms().payer());
        lines.add(maker.oneOff(draft, lines.size() + 1, seconds, last.technician(), last.label())
                .with(terms));
    }

    /** Returns a line that puts earlier work right, without charge; an untidy shop often gives it no hours. */
    Line free(Line line, Dice dice) {
        boolean blank = dice.chance(0.5) && world.options().untidy();
        Line given = line.with(line.terms().with(PaidBy.GOODWILL));
        return blank ? given.with(QuoteForm.BLANK) : given;
    }
}
