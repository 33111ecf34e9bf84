package benchtrue.workbook;

import java.util.Map;

/**
 * The formulas of one row on which the owner decides. A column is written as its name in braces; the row's number follows.
 * They work out the program's proposal again, so that another shop rate or policy shows what it would do.
 */
final class DecideFormulas {
    private static final String FIT = "{USUAL}*EXP(NORMSINV(CoveragePolicy)*{SPREAD})";
    static final String ASKED = "{HOURS}*IF(PolicyRule=\"break-even\",{MEAN},IF(PolicyRule=\"coverage\"," + FIT
            + ",MAX({MEAN}," + FIT + ")))";
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
    static final String TAKE_EFFECT = "({TAKE_PRICE}-{PRICE})*{YEARLY}";
    static final String NEW_HOURS = "IF({DECISION}=\"take\",{PROPOSED},"
            + "IF(AND({DECISION}=\"own\",ISNUMBER({OWN_HOURS})),{OWN_HOURS},{HOURS}))";
    static final String NEW_PRICE = price("{NEW_HOURS}");
    static final String CHANGE = "{NEW_HOURS}/{HOURS}-1";
    static final String EFFECT = "({NEW_PRICE}-{PRICE})*{YEARLY}";
    static final String FIT_TODAY = fit("1");
    static final String FIT_NEW = fit("{NEW_HOURS}/{HOURS}");

    private DecideFormulas() {}

    /** Today's price where the hours stay; longer hours never cost less than today, shorter never more. */
    private static String price(String hours) {
        String rounded = "INT(ROUND(" + hours + "*ShopRate,4)/PriceStep+0.5)*PriceStep";
        return "IF(ABS(" + hours + "-{HOURS})<0.0001,{PRICE},MAX({LEAST_PRICE},IF(" + hours + ">{HOURS},MAX({PRICE},"
                + rounded + "),MIN({PRICE}," + rounded + "))))";
    }

    /** A criterion is text, so the ratio is compared at the six decimals that the sheet of jobs has. */
    private static String fit(String ratio) {
        String counted = "COUNTIFS(JobRepair,{KEY},JobCounts,\"yes\"";
        return "IF(" + counted + ")=0,\"\"," + counted + ",JobRatio,\"<=\"&ROUND(" + ratio + ",6))/" + counted + "))";
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
