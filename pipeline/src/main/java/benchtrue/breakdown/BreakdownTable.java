package benchtrue.breakdown;

import benchtrue.format.FormulaGuard;
import benchtrue.tables.ResultTable;
import java.util.List;
import java.util.stream.Stream;

/** A breakdown as a result table: its rows and what others come to together, without the total. */
public final class BreakdownTable {
    private BreakdownTable() {}

    /** Returns the table of a breakdown under a file's name without its ending. */
    public static ResultTable<Breakdown.Row> of(Breakdown breakdown, String name) {
        ResultTable<Breakdown.Row> table = ResultTable.of(name, breakdown.title());
        for (int i = 0; i < breakdown.down().size(); i++) {
            int place = i;
            table.text(
                    breakdown.down().get(i),
                    "what the jobs are grouped by",
                    row -> row.names().get(place));
        }
        for (int i = 0; i < breakdown.columns().size(); i++) {
            column(table, breakdown.columns().get(i), i);
        }
        return table;
    }

    /** Returns the rows that the table has. */
    public static List<Breakdown.Row> rows(Breakdown breakdown) {
        return Stream.concat(breakdown.rows().stream(), breakdown.rest().stream())
                .toList();
    }

    private static void column(ResultTable<Breakdown.Row> table, Breakdown.Column column, int place) {
        Measure measure = column.measure();
        String side = column.across().isEmpty() ? "" : ", " + column.across();
        String header = FormulaGuard.written(measure.word() + side);
        switch (measure) {
            case JOBS ->
                table.count(header, measure.meaning(), row -> figure(row, place).amount());
            case QUOTED, TAKEN, REWORK, EACH ->
                table.seconds(
                        header, measure.meaning(), row -> figure(row, place).amount());
            case LABOUR, PARTS, COST, MARGIN, RATE ->
                table.money(header, measure.meaning(), row -> figure(row, place).amount());
            case LOAD, DAYS, WAITED ->
                table.ratio(header, measure.meaning(), row -> figure(row, place).low());
            case RANGE ->
                table.ratio(
                                "lower" + side,
                                "lower end of the 90 % range of load",
                                row -> figure(row, place).low())
                        .ratio(
                                "upper" + side,
                                "upper end of the 90 % range of load",
                                row -> figure(row, place).high());
        }
    }

    private static Figure figure(Breakdown.Row row, int place) {
        return row.figures().get(place);
    }
}
