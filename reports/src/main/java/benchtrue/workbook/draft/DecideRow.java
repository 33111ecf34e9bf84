package benchtrue.workbook.draft;

import benchtrue.revision.ProposalInputs;
import benchtrue.revision.ProposedChange;
import benchtrue.settings.Policy;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import java.util.List;
import java.util.Map;

/** Writes the cells of one row that are worked out, each with the value that the program has for it. */
public final class DecideRow {
    private final Grid grid;
    private final int row;
    private final ProposedChange change;
    private final Policy policy;
    private final Map<String, String> family;

    DecideRow(Grid grid, int row, ProposedChange change, Policy policy, Map<String, String> family) {
        this.grid = grid;
        this.row = row;
        this.change = change;
        this.policy = policy;
        this.family = family;
    }

    /** Where nothing is known of the shares that fit, the asked-for hours can't be worked out again, and stand as they are. */
    private boolean live() {
        return change.grounds().fits().known();
    }

    DecideRow proposal(String why) {
        double proposed = Hours.of(change.proposedSeconds());
        if (live()) {
            put(
                    DecideColumn.ASKED,
                    DecideFormulas.ASKED,
                    Hours.of(change.bookSeconds()) * change.grounds().askedFactor());
            put(DecideColumn.PROPOSED, DecideFormulas.PROPOSED, proposed);
        } else {
            at(DecideColumn.ASKED)
                    .number(Hours.of(change.bookSeconds()) * change.grounds().askedFactor(), CellStyles.Kind.HOURS);
            at(DecideColumn.PROPOSED).number(proposed, CellStyles.Kind.HOURS);
        }
        standing();
        put(DecideColumn.TAKE_PRICE, DecideFormulas.TAKE_PRICE, Money.units(change.proposedLabour()));
        put(DecideColumn.TAKE_EFFECT, DecideFormulas.TAKE_EFFECT, Money.units(change.annualEffect()));
        at(DecideColumn.WHY).text(why, DecideColumn.WHY.kind());
        return this;
    }

    /** Whether the row changes, and surely; the evidence's part of it does not follow the inputs. */
    private void standing() {
        String changes = change.sure() ? "sure" : "leans";
        String template = "IF(ABS({PROPOSED}-{HOURS})>0.0001,\"" + changes + "\",\"stays\")";
        at(DecideColumn.STANDING)
                .formula(
                        DecideFormulas.at(template, row, family),
                        change.proposedSeconds() == change.bookSeconds() ? "stays" : changes,
                        DecideColumn.STANDING.kind());
    }

    DecideRow decision() {
        for (DecideColumn column :
                List.of(DecideColumn.DECISION, DecideColumn.OWN_HOURS, DecideColumn.REASON, DecideColumn.UNTIL)) {
            at(column).empty(column.kind());
        }
        return this;
    }

    /** As long as nothing is decided, today's hours and price stay. */
    void outcome() {
        double hours = Hours.of(change.bookSeconds());
        put(DecideColumn.NEW_HOURS, DecideFormulas.NEW_HOURS, hours);
        put(DecideColumn.NEW_PRICE, DecideFormulas.NEW_PRICE, Money.units(change.bookLabour()));
        put(DecideColumn.CHANGE, DecideFormulas.CHANGE, 0);
        put(DecideColumn.EFFECT, DecideFormulas.EFFECT, 0);
        put(DecideColumn.FIT_TODAY, DecideFormulas.FIT_TODAY, change.coverageBefore());
        put(DecideColumn.FIT_NEW, DecideFormulas.FIT_NEW, change.coverageBefore());
    }

    void working() {
        if (!live()) {
            return;
        }
        ProposalInputs grounds = change.grounds();
        double lowest = Hours.of(grounds.lowestSeconds());
        double highest = Hours.of(grounds.highestSeconds());
        double asked = Hours.of(change.bookSeconds()) * change.grounds().askedFactor();
        double clipped = Math.max(lowest, Math.min(highest, asked));
        double step = clipped < 2 ? 0.1 : 0.25;
        double nearest = Math.floor(clipped / step + 0.5) * step;
        double inside = nearest > highest + 1e-4 ? nearest - step : nearest < lowest - 1e-4 ? nearest + step : nearest;
        put(DecideColumn.FIT, FitSheet.FORMULA, grounds.fits().at(policy.coverage()));
        put(DecideColumn.BY_POLICY, DecideFormulas.BY_POLICY, byPolicy(grounds));
        put(DecideColumn.CLIPPED, DecideFormulas.CLIPPED, clipped);
        put(DecideColumn.GRID, DecideFormulas.GRID, step);
        put(DecideColumn.NEAREST, DecideFormulas.NEAREST, nearest);
        put(DecideColumn.INSIDE, DecideFormulas.INSIDE, inside);
    }

    private double byPolicy(ProposalInputs grounds) {
        double fit = grounds.fits().at(policy.coverage());
        return switch (policy.rule()) {
            case BREAK_EVEN -> grounds.meanFactor();
            case COVERAGE -> fit;
            case LARGER -> Math.max(grounds.meanFactor(), fit);
        };
    }

    private Grid at(DecideColumn column) {
        return grid.at(column.ordinal());
    }

    private void put(DecideColumn column, String template, double value) {
        at(column).formula(DecideFormulas.at(template, row, family), value, column.kind());
    }

    /** Returns the word of a policy's rule as the sheet has it. */
    public static String rule(Policy policy) {
        return benchtrue.format.Words.of(policy.rule());
    }

    /**
     * The formulas of one row on which the owner decides. A column is written as its name in braces; the row's number follows.
     * They work out the program's proposal again, so that another shop rate or policy shows what it would do.
     */
    static final class DecideFormulas {
        static final String BY_POLICY =
                "IF(PolicyRule=\"break-even\",{MEAN},IF(PolicyRule=\"coverage\",{FIT},MAX({MEAN},{FIT})))";
        static final String ASKED = "{HOURS}*IF(AND(Method=\"simpler\",ISNUMBER({SIMPLER})),{SIMPLER},"
                + "IF({BY_POLICY}<{LEVEL},MIN({LEVEL},{BY_POLICY}*{SURE_DOWN}),MAX({LEVEL},{BY_POLICY}*{SURE_UP})))";
        static final String CLIPPED = "MAX({LOWEST},MIN({HIGHEST},{ASKED}))";
        static final String GRID = "IF({CLIPPED}<2,0.1,0.25)";
        static final String NEAREST = "ROUND(ROUND({CLIPPED}/{GRID},6),0)*{GRID}";
        static final String INSIDE = "ROUND(IF({NEAREST}>{HIGHEST}+0.0001,{NEAREST}-{GRID},"
                + "IF({NEAREST}<{LOWEST}-0.0001,{NEAREST}+{GRID},{NEAREST})),4)";
        static final String PROPOSED = "IF(OR({SHORTENING}=\"no change\",ABS({ASKED}/{HOURS}-1)<=Tolerance),{HOURS},"
                + "IF(AND({ASKED}<{HOURS},{SHORTENING}=\"owner only\"),{HOURS},"
                + "IF(OR({INSIDE}>{HIGHEST}+0.0001,{INSIDE}<{LOWEST}-0.0001),MAX({HOURS},{LOWEST}),"
                + "IF(AND(({INSIDE}-{HOURS})*({ASKED}-{HOURS})<=0,{HOURS}>={LOWEST}-0.0001),{HOURS},{INSIDE}))))";
        static final String TAKE_PRICE = price("{PROPOSED}");
        static final String TAKE_EFFECT = "ROUND(({TAKE_PRICE}-{PRICE})*{YEARLY},4)";
        static final String NEW_HOURS = "IF({DECISION}=\"take\",{PROPOSED},"
                + "IF(AND({DECISION}=\"own\",ISNUMBER({OWN_HOURS})),{OWN_HOURS},{HOURS}))";
        static final String NEW_PRICE = price("{NEW_HOURS}");
        static final String CHANGE = "{NEW_HOURS}/{HOURS}-1";
        static final String EFFECT = "ROUND(({NEW_PRICE}-{PRICE})*{YEARLY},4)";
        static final String FIT_TODAY = fit("1");
        static final String FIT_NEW = fit("{NEW_HOURS}/{HOURS}");

        private DecideFormulas() {}

        /** Today's price where the hours stay; longer hours never cost less than today, shorter never more. */
        private static String price(String hours) {
            String rounded = "INT(ROUND(" + hours + "*ShopRate,4)/PriceStep+0.5)*PriceStep";
            return "IF(ABS(" + hours + "-{HOURS})<0.0001,{PRICE},MAX({LEAST_PRICE},IF(" + hours
                    + ">{HOURS},MAX({PRICE}," + rounded + "),MIN({PRICE}," + rounded + "))))";
        }

        /** A criterion is text, so the ratio is compared at the six decimals that the sheet of jobs has. */
        private static String fit(String ratio) {
            String counted = "COUNTIFS(JobRepair,{KEY},JobCounts,\"yes\"";
            return "IF(" + counted + ")=0,\"\"," + counted + ",JobRatio,\"<=\"&ROUND(" + ratio + ",6))/" + counted
                    + "))";
        }

        /**
         * Returns a formula for a row.
         *
         * @param row numbered from 1
         * @param family by named input, the cell that holds for the row's family
         */
        static String at(String template, int row, Map<String, String> family) {
            String formula = template;
            for (Map.Entry<String, String> input : family.entrySet()) {
                formula = formula.replace(input.getKey(), input.getValue());
            }
            for (DecideColumn column : DecideColumn.values()) {
                formula = formula.replace("{" + column.name() + "}", "$" + column.letter() + row);
            }
            return formula;
        }
    }
}
