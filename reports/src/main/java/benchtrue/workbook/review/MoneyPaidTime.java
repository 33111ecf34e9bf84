package benchtrue.workbook.review;

import benchtrue.costing.ShopMoney;
import benchtrue.costing.WorkKind;
import benchtrue.costing.WorkMonth;
import benchtrue.shop.Absent;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.RowFlow;
import java.util.List;

/** Hours paid, month by month: how many reached the log, and how many were sold. */
final class MoneyPaidTime {
    private static final String SHARE = "IF(OR(@#=\"\",B#=\"\",B#=0),\"\",@#/B#)";

    static final String LOGGED = "PaidTimeInTheLog";
    static final String SOLD = "PaidTimeSold";

    private final ShopMoney shop;

    MoneyPaidTime(ShopMoney shop) {
        this.shop = shop;
    }

    void write(RowFlow flow) {
        flow.skip(1);
        flow.title("What became of paid time");
        flow.fact(
                "In the log",
                shop.loggedShare().share(),
                CellStyles.Kind.SHARE,
                "logged hours of hours paid, in the months of the bench hour");
        flow.name(LOGGED, 'D');
        flow.fact(
                "Sold",
                shop.loggedShare().soldShare(),
                CellStyles.Kind.SHARE,
                "hours on jobs that somebody pays for, of hours paid");
        flow.name(SOLD, 'D');
        List<WorkMonth> months = shop.work().stream()
                .filter(month -> Absent.has(month.paidSeconds()))
                .toList();
        if (months.isEmpty()) {
            return;
        }
        flow.headings(
                List.of(
                        "Month",
                        "Hours paid",
                        "Logged by those paid (h)",
                        "Sold (h)",
                        "Share of paid hours logged",
                        "Share of paid hours sold"),
                0);
        months.forEach(month -> month(flow.next(), flow.row(), month));
    }

    private static void month(Grid grid, int row, WorkMonth month) {
        String number = Integer.toString(row);
        grid.text(MoneyRow.month(month.month()))
                .number(Amounts.hours(month.paidSeconds()), CellStyles.Kind.HOURS)
                .number(Amounts.hours(month.loggedOfPaidSeconds()), CellStyles.Kind.HOURS)
                .number(Amounts.hours(month.seconds(WorkKind.SOLD)), CellStyles.Kind.HOURS)
                .formula(SHARE.replace("@", "C").replace("#", number), month.loggedShare(), CellStyles.Kind.SHARE)
                .formula(SHARE.replace("@", "D").replace("#", number), month.utilisation(), CellStyles.Kind.SHARE);
    }
}
