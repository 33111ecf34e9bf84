package benchtrue.workbook.review;

import benchtrue.breakdown.Breakdown;
import benchtrue.breakdown.Figure;
import benchtrue.breakdown.Measure;
import benchtrue.format.Figures;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.RowFlow;
import benchtrue.workbook.sheet.SteadyWorkbook;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** One answer to a question of the owner's own: its rows, the total, and a chart of one figure beneath. */
public final class BreakdownSheet {
    private static final int LONGEST_NAME = 28;
    private static final int NAME_WIDTH = 26;
    private static final int FIGURE_WIDTH = 13;
    private static final int CHART_ROWS = 18;

    /** Columns that a chart needs, and beyond which it gains nothing; it stays within what is printed. */
    private static final int LEAST_COLUMNS = 6;

    private static final int CHART_COLUMNS = 13;

    private enum Standing {
        ROW,
        TOTAL
    }

    private final Breakdown answer;
    private final Figures figures;

    private BreakdownSheet(Breakdown answer, Figures figures) {
        this.answer = answer;
        this.figures = figures;
    }

    /** Writes a workbook with a sheet an answer. */
    public static void write(List<Breakdown> answers, Figures figures, int asOf, Path file) throws IOException {
        try (SteadyWorkbook workbook = new SteadyWorkbook(file, asOf)) {
            CellStyles look = new CellStyles(workbook);
            Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
            for (Breakdown answer : answers) {
                String title =
                        WorkbookUtil.createSafeSheetName(answer.title(), ' ').strip();
                String name = title.substring(0, Math.min(title.length(), LONGEST_NAME));
                while (!names.add(name)) {
                    name = name.substring(0, Math.min(name.length(), LONGEST_NAME - 4)) + " " + (names.size() + 1);
                }
                new BreakdownSheet(answer, figures).write(workbook.createSheet(name), look);
            }
            workbook.save();
        }
    }

    private void write(SXSSFSheet sheet, CellStyles look) {
        int[] widths = new int[Math.max(LEAST_COLUMNS, answer.down().size() + figureColumns())];
        Arrays.fill(widths, FIGURE_WIDTH);
        Arrays.fill(widths, 0, answer.down().size(), NAME_WIDTH);
        RowFlow flow = new RowFlow(sheet, look, widths);
        flow.title(answer.title());
        answer.notes().forEach(flow::sentence);
        Integer[] names = new Integer[answer.down().size()];
        Arrays.setAll(names, place -> place);
        flow.headings(headings(), names);
        int first = flow.row() + 1;
        answer.rows().forEach(row -> row(flow.next(), row, Standing.ROW));
        int last = flow.row();
        answer.rest().ifPresent(row -> row(flow.next(), row, Standing.ROW));
        row(flow.next(), answer.total(), Standing.TOTAL);
        if (last >= first) {
            chart(sheet, flow.row() + 2, Math.min(CHART_COLUMNS, widths.length), first);
            flow.skip(CHART_ROWS + 1);
        }
        flow.finish(0);
    }

    private void chart(SXSSFSheet sheet, int row, int columns, int first) {
        int drawn = chartColumn();
        Breakdown.Column column = answer.columns().get(drawn);
        new FigureChart(
                        sheet,
                        answer.title() + ": " + column.heading() + unit(column.measure()),
                        column.heading(),
                        column.measure() == Measure.LOAD ? "0.00" : "#,##0")
                .draw(
                        row,
                        row + CHART_ROWS - 1,
                        columns,
                        new FigureChart.Bars(
                                first,
                                answer.down().size() - 1,
                                answer.rows().stream().map(Breakdown.Row::label).toList(),
                                answer.down().size() + place(drawn),
                                answer.rows().stream()
                                        .map(found -> found.figures().get(drawn).value())
                                        .map(value -> value.isNaN() ? null : value)
                                        .collect(Collectors.toCollection(ArrayList::new))));
    }

    /** The first figure over all that stands across. */
    private int chartColumn() {
        int column = 0;
        while (!answer.columns().get(column).across().isEmpty()) {
            column++;
        }
        return answer.columns().get(column).measure() == Measure.RANGE
                        && column + 1 < answer.columns().size()
                ? column + 1
                : column;
    }

    /** A range takes two columns. */
    private int place(int column) {
        return column
                + (int) answer.columns().stream()
                        .limit(column)
                        .filter(before -> before.measure() == Measure.RANGE)
                        .count();
    }

    private int figureColumns() {
        return place(answer.columns().size());
    }

    private List<String> headings() {
        List<String> words = new ArrayList<>(answer.down());
        for (Breakdown.Column column : answer.columns()) {
            String side = column.across().isEmpty() ? "" : ", " + column.across();
            if (column.measure() == Measure.RANGE) {
                words.add("at least (90 % sure)" + side);
                words.add("at most (90 % sure)" + side);
            } else {
                words.add(column.heading() + unit(column.measure()));
            }
        }
        return words;
    }

    private static String unit(Measure measure) {
        return switch (measure) {
            case QUOTED, TAKEN, REWORK, EACH -> " (h)";
            default -> "";
        };
    }

    private void row(Grid grid, Breakdown.Row row, Standing standing) {
        boolean total = standing == Standing.TOTAL;
        row.names().forEach(name -> grid.text(name, total ? CellStyles.Kind.TOTAL_WORDS : CellStyles.Kind.WRAPPED));
        for (Figure figure : row.figures()) {
            if (Double.isNaN(figure.value()) && !figure.instead().isEmpty()) {
                grid.text(figure.text(figures), CellStyles.Kind.NOTE);
            } else {
                grid.number(figure.value(), kind(figure.form(), standing));
            }
            if (figure.form() == Figure.Form.RANGE) {
                grid.number(figure.high(), kind(figure.form(), standing));
            }
        }
    }

    private static CellStyles.Kind kind(Figure.Form form, Standing standing) {
        boolean total = standing == Standing.TOTAL;
        return switch (form) {
            case COUNT -> total ? CellStyles.Kind.TOTAL_COUNT : CellStyles.Kind.COUNT;
            case DAYS -> CellStyles.Kind.TENTHS;
            case RATIO, RANGE -> CellStyles.Kind.RATIO;
            case HOURS, MONEY, RATE -> total ? CellStyles.Kind.TOTAL : CellStyles.Kind.HOURS;
        };
    }
}
