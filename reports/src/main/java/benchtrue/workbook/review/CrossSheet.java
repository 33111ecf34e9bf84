package benchtrue.workbook.review;

import benchtrue.hours.JobLines;
import benchtrue.nightly.Review;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.LineState;
import benchtrue.shop.Money;
import benchtrue.shop.RepairType;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.RowFlow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.function.IntFunction;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/**
 * Repairs down, something else across: jobs, hours and margin of finished jobs as formulas over the sheet of lines, so that
 * they follow what is changed there. Where that sheet can't hold all lines, plain numbers over all of them.
 */
final class CrossSheet {
    private static final int FIRST_COLUMN = 2;
    private static final int NAME_WIDTH = 28;
    private static final int CELL_WIDTH = 9;

    private final Review review;
    private final LinesSheet lines;
    private final Across across;

    /**
     * What stands across.
     *
     * @param sheet name of the sheet
     * @param column of the sheet of lines that holds it
     * @param kind how a heading looks
     * @param headings texts or numbers, from left to right
     * @param of the heading of a line; null where it has none
     */
    record Across(String sheet, String column, CellStyles.Kind kind, List<?> headings, IntFunction<?> of) {
        /** The months in which visits were closed, at most so many of the newest. */
        static Across months(Review review, int most) {
            IntFunction<Double> month = line -> LineFacts.month(
                    review.ledger().tickets().closed(review.ledger().lines().ticket(line)));
            List<Double> all = ofClosed(review, month);
            List<Double> newest = all.subList(Math.max(0, all.size() - most), all.size());
            return new Across(
                    "By repair and month", LineFacts.CLOSED_MONTH, CellStyles.Kind.MONTH_HEADING, newest, month);
        }

        /** The classes of instruments. */
        static Across classes(Review review) {
            IntFunction<String> name = line -> review.ledger()
                    .tickets()
                    .instrumentClass(review.ledger().lines().ticket(line));
            List<String> all = ofClosed(review, name);
            return new Across("By repair and class", "D", CellStyles.Kind.FIGURE_HEADING, all, name);
        }

        private static <T extends Comparable<T>> List<T> ofClosed(Review review, IntFunction<T> of) {
            TreeMap<T, Boolean> found = new TreeMap<>();
            for (int line = 0; line < review.jobs().size(); line++) {
                if (review.jobs().state(line) == LineState.CLOSED) {
                    found.put(of.apply(line), true);
                }
            }
            found.keySet().removeIf(key -> key.equals("") || key.equals(Double.NaN));
            return List.copyOf(found.keySet());
        }
    }

    /** What is summed over finished jobs, each in a table of its own. */
    private enum Sum {
        JOBS("Jobs finished", "", CellStyles.Kind.COUNT),
        QUOTED("Quoted hours", "I", CellStyles.Kind.HOURS),
        HOURS("Bench hours", "M", CellStyles.Kind.HOURS),
        MARGIN("Margin", "T", CellStyles.Kind.MONEY);

        private final String words;
        private final String column;
        private final CellStyles.Kind kind;

        Sum(String words, String column, CellStyles.Kind kind) {
            this.words = words;
            this.column = column;
            this.kind = kind;
        }

        private long of(Review review, int line) {
            JobLines jobs = review.jobs();
            return switch (this) {
                case JOBS -> 1;
                case QUOTED -> Absent.firstOf(review.ledger().lines().judgedSeconds(line), 0);
                case HOURS -> jobs.actualSeconds(line);
                case MARGIN -> Absent.firstOf(review.costs().margin(line), 0);
            };
        }

        private double shown(long amount) {
            return switch (this) {
                case JOBS -> amount;
                case QUOTED, HOURS -> Hours.of(amount);
                case MARGIN -> Money.units(amount);
            };
        }
    }

    CrossSheet(Review review, LinesSheet lines, Across across) {
        this.review = review;
        this.lines = lines;
        this.across = across;
    }

    void write(SXSSFSheet sheet, CellStyles look) {
        int[] widths = new int[FIRST_COLUMN + across.headings().size()];
        Arrays.fill(widths, CELL_WIDTH);
        widths[0] = NAME_WIDTH;
        widths[1] = NAME_WIDTH / 2;
        RowFlow flow = new RowFlow(sheet, look, widths);
        flow.title(across.sheet());
        flow.next()
                .text("Finished jobs"
                        + (lines.whole()
                                ? ", as formulas over the sheet Lines: change a line there and they follow."
                                : " over all lines; the sheet Lines holds only the newest."));
        long[][][] sums = sums();
        for (Sum sum : Sum.values()) {
            flow.skip(1);
            flow.next().text(sum.words, CellStyles.Kind.TITLE);
            int headings = headings(flow);
            for (int type = 0; type < sums.length; type++) {
                if (sums[type] != null) {
                    row(flow, type, sum, sums[type][sum.ordinal()], headings);
                }
            }
        }
        flow.finish(2);
    }

    private int headings(RowFlow flow) {
        Grid grid = flow.next()
                .text("Repair", CellStyles.Kind.HEADING)
                .text("In the price book as", CellStyles.Kind.HEADING);
        for (Object heading : across.headings()) {
            if (heading instanceof Double serial) {
                grid.number(serial, across.kind());
            } else {
                grid.text((String) heading, across.kind());
            }
        }
        return flow.row();
    }

    private void row(RowFlow flow, int type, Sum sum, long[] amounts, int headings) {
        String key = review.ledger().repairTypes().name(type);
        Grid grid = flow.next()
                .text(review.ledger()
                        .books()
                        .type(key, review.ledger().asOf())
                        .map(RepairType::title)
                        .orElse(key))
                .text(key);
        for (int i = 0; i < amounts.length; i++) {
            double value = sum.shown(amounts[i]);
            if (lines.whole()) {
                String heading = CellReference.convertNumToColString(FIRST_COLUMN + i) + "$" + headings;
                grid.formula(formula(sum, flow.row(), heading), value, sum.kind);
            } else {
                grid.number(value, sum.kind);
            }
        }
    }

    private String formula(Sum sum, int row, String heading) {
        List<String> terms = new ArrayList<>();
        if (!sum.column.isEmpty()) {
            terms.add(lines.range(sum.column));
        }
        terms.addAll(List.of(
                lines.range("C"), "$B" + row, lines.range(across.column()), heading, lines.range("G"), "\"closed\""));
        return (sum.column.isEmpty() ? "COUNTIFS(" : "SUMIFS(") + String.join(",", terms) + ")";
    }

    /** By repair, sum and heading; null for a repair without a finished job under any of the headings. */
    private long[][][] sums() {
        long[][][] sums = new long[review.ledger().repairTypes().size()][][];
        for (int line = 0; line < review.jobs().size(); line++) {
            int place = across.headings().indexOf(across.of().apply(line));
            if (place >= 0 && review.jobs().state(line) == LineState.CLOSED) {
                int type = review.ledger().lines().repairType(line);
                if (sums[type] == null) {
                    sums[type] = new long[Sum.values().length][across.headings().size()];
                }
                for (Sum sum : Sum.values()) {
                    sums[type][sum.ordinal()][place] += sum.of(review, line);
                }
            }
        }
        return sums;
    }
}
