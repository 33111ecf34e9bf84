package benchtrue.workbook;

import benchtrue.costing.MarginBridge;
import benchtrue.costing.ShopMoney;
import java.util.List;
import java.util.Map;

/** Why each month's margin differs from the month before: the parts add up to the change by a formula. */
final class MoneyBridges {
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

    void write(Flow flow, Map<Integer, Integer> rowOfMonth) {
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
            grid.number(Amounts.money(part), Look.Kind.MONEY);
        }
        grid.formula("SUM(E#:K#)".replace("#", Integer.toString(row)), Amounts.money(bridge.change()), Look.Kind.MONEY)
                .formula("D#+L#".replace("#", Integer.toString(row)), Amounts.money(bridge.after()), Look.Kind.MONEY);
    }

    private static void before(Grid grid, MarginBridge bridge, Integer row) {
        double margin = Amounts.money(bridge.before());
        if (row == null) {
            grid.number(margin, Look.Kind.MONEY);
        } else {
            grid.formula(MoneyRow.MARGIN + Integer.toString(row), margin, Look.Kind.MONEY);
        }
    }
}
