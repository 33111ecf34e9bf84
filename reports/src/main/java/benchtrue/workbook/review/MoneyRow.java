package benchtrue.workbook.review;

import benchtrue.costing.EarnedMonth;
import benchtrue.costing.GroupMoney;
import benchtrue.shop.Absent;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** One row of hours and money: a month, or jobs of one kind. Hours in seconds, money in ten-thousandths. */
record MoneyRow(
        String name,
        long lines,
        long leftOut,
        long quotedSeconds,
        long actualSeconds,
        long labourRevenue,
        long partsRevenue,
        long labourCost,
        long partsCost,
        long overheadCost,
        long margin,
        long earned) {
    static final char MARGIN = 'K';
    private static final String MARGIN_FORMULA = "IF(H#=\"\",\"\",F#+IF(I#=\"\",0,G#-I#)-H#-J#)";
    private static final String EARNED_FORMULA = "IF(OR(F#=\"\",E#=0),\"\",F#/E#)";
    private static final List<String> HEADINGS = List.of(
            "Jobs",
            "Not counted: a figure is missing",
            "Quoted hours",
            "Bench hours",
            "Labour revenue",
            "Parts revenue",
            "Labour cost",
            "Parts cost",
            "Overhead carried by jobs",
            "Margin",
            "Earned per bench hour");

    static List<String> headings(String first) {
        List<String> all = new ArrayList<>(List.of(first));
        all.addAll(HEADINGS);
        return all;
    }

    static MoneyRow of(EarnedMonth month) {
        return new MoneyRow(
                month(month.month()),
                month.lines(),
                month.leftOut(),
                month.quotedSeconds(),
                month.actualSeconds(),
                month.labourRevenue(),
                month.partsRevenue(),
                month.labourCost(),
                month.partsCost(),
                month.overheadCost(),
                month.margin(),
                month.effectiveRate());
    }

    static MoneyRow of(GroupMoney group) {
        return new MoneyRow(
                group.name().replace('-', ' '),
                group.lines(),
                group.leftOut(),
                group.quotedSeconds(),
                group.actualSeconds(),
                group.labourRevenue(),
                group.partsRevenue(),
                group.labourCost(),
                group.partsCost(),
                group.overheadCost(),
                group.margin(),
                group.effectiveRate());
    }

    /** Returns a month as a person sorts it. */
    static String month(int month) {
        return YearMonth.of(Math.floorDiv(month, 12), Math.floorMod(month, 12) + 1)
                .toString();
    }

    void write(Grid grid, int row) {
        grid.text(name)
                .number(lines, CellStyles.Kind.COUNT)
                .number(leftOut, CellStyles.Kind.COUNT)
                .number(Amounts.hours(quotedSeconds), CellStyles.Kind.HOURS)
                .number(Amounts.hours(actualSeconds), CellStyles.Kind.HOURS);
        for (long amount : amounts()) {
            grid.number(Amounts.money(amount), CellStyles.Kind.MONEY);
        }
        results(grid, row);
    }

    /** Writes this row as the sum of the rows above it. */
    void together(Grid grid, int firstRow, int row) {
        grid.text("Together", CellStyles.Kind.TOTAL_WORDS);
        char column = 'B';
        for (long count : new long[] {lines, leftOut}) {
            grid.formula(sum(column++, firstRow, row), count, CellStyles.Kind.TOTAL_COUNT);
        }
        for (long seconds : new long[] {quotedSeconds, actualSeconds}) {
            grid.formula(sum(column++, firstRow, row), Amounts.hours(seconds), CellStyles.Kind.TOTAL);
        }
        for (long amount : amounts()) {
            if (Absent.has(amount)) {
                grid.formula(sum(column, firstRow, row), Amounts.money(amount), CellStyles.Kind.TOTAL);
            } else {
                grid.skip();
            }
            column++;
        }
        results(grid, row);
    }

    private static String sum(char column, int firstRow, int row) {
        return "SUM(" + column + firstRow + ":" + column + (row - 1) + ")";
    }

    private long[] amounts() {
        return new long[] {labourRevenue, partsRevenue, labourCost, partsCost, overheadCost};
    }

    private void results(Grid grid, int row) {
        String number = Integer.toString(row);
        grid.formula(MARGIN_FORMULA.replace("#", number), Amounts.money(margin), CellStyles.Kind.MONEY)
                .formula(EARNED_FORMULA.replace("#", number), perHour(), CellStyles.Kind.MONEY);
    }

    /** The rate before it is rounded to ten-thousandths, as the sheet works it out. */
    private double perHour() {
        return Absent.has(earned) ? Amounts.money(labourRevenue) / Amounts.hours(actualSeconds) : Double.NaN;
    }
}
