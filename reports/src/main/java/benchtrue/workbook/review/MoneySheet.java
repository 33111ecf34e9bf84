package benchtrue.workbook.review;

import benchtrue.costing.EarnedMonth;
import benchtrue.costing.GroupMoney;
import benchtrue.costing.Groups;
import benchtrue.costing.MarginBridge;
import benchtrue.costing.ShopMoney;
import benchtrue.nightly.Review;
import benchtrue.shop.Absent;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.RowFlow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** The shop's money: months and why they moved, the bench hour, and groups of jobs; parts add up by formulas. */
public final class MoneySheet {
    public static final String NAME = "Money";
    private static final int CHART_ROWS = 18;
    private static final int COLUMNS = 13;

    private final Review review;
    private final ShopMoney shop;

    MoneySheet(Review review) {
        this.review = review;
        shop = review.costs().shop();
    }

    void write(SXSSFSheet sheet, CellStyles look) {
        RowFlow flow = new RowFlow(sheet, look, 30, 9, 9, 11, 11, 11, 11, 11, 11, 11, 11, 11, 11);
        flow.title("The shop's money, in " + review.settings().currency());
        shop.leftOut().forEach(flow::sentence);
        int chartRow = flow.row() + 1;
        Map<Integer, Integer> rowOfMonth = new HashMap<>();
        boolean drawn = shop.earned().stream().anyMatch(month -> Absent.has(month.margin()));
        flow.skip(drawn ? CHART_ROWS + 1 : 1);
        months(flow, rowOfMonth);
        if (drawn) {
            new FigureChart(sheet, "Margin of the jobs finished, by month", "Margin", "#,##0")
                    .draw(chartRow, chartRow + CHART_ROWS - 1, COLUMNS, margins(flow.row()));
        }
        new MoneyBridges(shop).write(flow, rowOfMonth);
        new MoneyBenchHour(review).write(flow, rowOfMonth);
        new MoneyPaidTime(shop).write(flow);
        groups(flow);
        restatements(flow);
        flow.finish(1);
    }

    private FigureChart.Bars margins(int lastRow) {
        return new FigureChart.Bars(
                lastRow - shop.earned().size() + 1,
                0,
                shop.earned().stream()
                        .map(month -> MoneyRow.month(month.month()))
                        .toList(),
                MoneyRow.MARGIN - 'A',
                shop.earned().stream()
                        .map(month -> Absent.has(month.margin()) ? Amounts.money(month.margin()) : null)
                        .collect(Collectors.toCollection(ArrayList::new)));
    }

    private void months(RowFlow flow, Map<Integer, Integer> rowOfMonth) {
        flow.title("Jobs finished, by month");
        if (shop.earned().isEmpty()) {
            flow.sentence("No finished job is on record.");
            return;
        }
        EarnedMonth newest = shop.earned().get(shop.earned().size() - 1);
        flow.sentence("Each month has the jobs finished in it, with all their hours and costs whenever they arose."
                + (newest.month() > shop.lastWholeMonth() ? " The newest month is not over yet." : ""));
        flow.headings(MoneyRow.headings("Month"), 0);
        for (EarnedMonth month : shop.earned()) {
            MoneyRow.of(month).write(flow.next(), flow.row());
            rowOfMonth.put(month.month(), flow.row());
        }
        int first = flow.row() - shop.earned().size() + 1;
        flow.name("MarginByMonth", MoneyRow.MARGIN, first, flow.row());
    }

    private void groups(RowFlow flow) {
        Groups groups = shop.groups();
        group(flow, "Jobs finished in the last 365 days, by family", "Family", groups.families());
        group(flow, "By class of instrument", "Class of instrument", groups.classes());
        group(flow, "By who pays", "Who pays", groups.payers());
        if (!groups.writers().isEmpty()) {
            group(flow, "By who wrote the quote, as the settings ask", "Quote writer", groups.writers());
        }
    }

    private void group(RowFlow flow, String title, String heading, List<GroupMoney> rows) {
        flow.skip(1);
        flow.title(title);
        if (rows.isEmpty()) {
            flow.sentence("No job was finished in that time.");
            return;
        }
        flow.headings(MoneyRow.headings(heading), 0);
        int first = flow.row() + 1;
        rows.forEach(row -> MoneyRow.of(row).write(flow.next(), flow.row()));
        shop.groups().all().forEach(all -> MoneyRow.of(all).together(flow.next(), first, flow.row()));
    }

    private void restatements(RowFlow flow) {
        if (review.restatements().isEmpty()) {
            return;
        }
        flow.skip(1);
        flow.title("Sealed months that the records now tell otherwise");
        flow.headings(List.of("Figure", "Month", "", "Sealed", "Now", "Why"), 0, 1, 5);
        review.restatements().forEach(row -> {
            flow.next()
                    .text(row.figure().replace('_', ' '), CellStyles.Kind.WRAPPED)
                    .text(MoneyRow.month(row.month()))
                    .skip()
                    .amount(row.sealed())
                    .amount(row.now());
            flow.across(String.join("; ", row.causes()), 5);
        });
    }

    /** Why each month's margin differs from the month before: the parts add up to the change by a formula. */
    static final class MoneyBridges {
        private static final List<String> HEADINGS = List.of(
                "Month",
                "Against",
                "",
                "Margin of the month before",
                "More or less work",
                "Other kinds of jobs",
                "Prices",
                "Hours against the book",
                "Wages",
                "Parts",
                "Overhead carried by jobs",
                "Change, all parts together",
                "Margin of the month");

        private final ShopMoney shop;

        MoneyBridges(ShopMoney shop) {
            this.shop = shop;
        }

        void write(RowFlow flow, Map<Integer, Integer> rowOfMonth) {
            flow.skip(1);
            flow.title("Why the month moved");
            if (shop.monthBridges().isEmpty()) {
                flow.sentence("Without wages, or with a single month, it can't be told why a month moved.");
                return;
            }
            flow.sentence("A part that raised the margin is positive. Work is measured in hours of today's book.");
            flow.headings(HEADINGS, 0, 1);
            for (MarginBridge bridge : shop.monthBridges()) {
                bridge(flow.next(), flow.row(), bridge, rowOfMonth);
            }
        }

        private static void bridge(Grid grid, int row, MarginBridge bridge, Map<Integer, Integer> rowOfMonth) {
            grid.text(MoneyRow.month(bridge.to()))
                    .text(MoneyRow.month(bridge.from()))
                    .skip();
            before(grid, bridge, rowOfMonth.get(bridge.from()));
            for (long part : new long[] {
                bridge.volume(),
                bridge.mix(),
                bridge.price(),
                bridge.efficiency(),
                bridge.wages(),
                bridge.parts(),
                bridge.overhead()
            }) {
                grid.number(Amounts.money(part), CellStyles.Kind.MONEY);
            }
            grid.formula(
                            "SUM(E#:K#)".replace("#", Integer.toString(row)),
                            Amounts.money(bridge.change()),
                            CellStyles.Kind.MONEY)
                    .formula(
                            "D#+L#".replace("#", Integer.toString(row)),
                            Amounts.money(bridge.after()),
                            CellStyles.Kind.MONEY);
        }

        private static void before(Grid grid, MarginBridge bridge, Integer row) {
            double margin = Amounts.money(bridge.before());
            if (row == null) {
                grid.number(margin, CellStyles.Kind.MONEY);
            } else {
                grid.formula(MoneyRow.MARGIN + Integer.toString(row), margin, CellStyles.Kind.MONEY);
            }
        }
    }
}
