package benchtrue.page;

import benchtrue.costing.BenchHour;
import benchtrue.costing.EarnedMonth;
import benchtrue.costing.ShopMoney;
import benchtrue.costing.WorkKind;
import benchtrue.costing.WorkMonth;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;

/** The months behind the bench hour, so that its figures can be added up again. */
final class FormatHourMonths {
    private final PageFormatter told;
    private final ShopMoney shop;
    private final BenchHour hour;

    FormatHourMonths(PageFormatter told) {
        this.told = told;
        shop = told.review().costs().shop();
        hour = shop.benchHour();
    }

    /** A column: hours in seconds, money in ten-thousandths, or a count; absent where not known. */
    private record Column<T>(ToLongFunction<T> figure, Unit unit) {}

    private enum Unit {
        COUNT,
        HOURS,
        MONEY
    }

    private static final List<Column<WorkMonth>> WORKED = List.of(
            new Column<>(month -> month.seconds(WorkKind.SOLD) + month.seconds(WorkKind.OWN_STOCK), Unit.HOURS),
            new Column<>(WorkMonth::productiveWages, Unit.MONEY),
            new Column<>(WorkMonth::unsoldWages, Unit.MONEY),
            new Column<>(WorkMonth::overtimePremium, Unit.MONEY),
            new Column<>(WorkMonth::paidNotLogged, Unit.MONEY),
            new Column<>(month -> month.overhead().actual(), Unit.MONEY),
            new Column<>(WorkMonth::supplies, Unit.MONEY),
            new Column<>(WorkMonth::paidSeconds, Unit.HOURS),
            new Column<>(WorkMonth::loggedOfPaidSeconds, Unit.HOURS));

    private static final List<Column<EarnedMonth>> FINISHED = List.of(
            new Column<>(EarnedMonth::lines, Unit.COUNT),
            new Column<>(EarnedMonth::quotedSeconds, Unit.HOURS),
            new Column<>(EarnedMonth::actualSeconds, Unit.HOURS),
            new Column<>(EarnedMonth::labourRevenue, Unit.MONEY),
            new Column<>(EarnedMonth::partsRevenue, Unit.MONEY),
            new Column<>(EarnedMonth::labourCost, Unit.MONEY),
            new Column<>(EarnedMonth::partsCost, Unit.MONEY),
            new Column<>(EarnedMonth::overheadCost, Unit.MONEY),
            new Column<>(EarnedMonth::margin, Unit.MONEY));

    ReviewView.HourMonths tell() {
        List<WorkMonth> worked =
                shop.work().stream().filter(month -> within(month.month())).toList();
        List<EarnedMonth> finished =
                shop.earned().stream().filter(month -> within(month.month())).toList();
        return new ReviewView.HourMonths(
                told.figures().month(hour.from()) + " to " + told.figures().month(hour.to()),
                rows(worked, WorkMonth::month, WORKED),
                rows(finished, EarnedMonth::month, FINISHED));
    }

    private boolean within(int month) {
        return month >= hour.from() && month <= hour.to();
    }

    private <T> List<ReviewView.Month> rows(List<T> months, ToLongFunction<T> month, List<Column<T>> columns) {
        List<ReviewView.Month> rows = new ArrayList<>();
        for (T one : months) {
            rows.add(new ReviewView.Month(
                    told.figures().month((int) month.applyAsLong(one)),
                    columns.stream()
                            .map(column -> figure(column.figure.applyAsLong(one), column.unit))
                            .toList()));
        }
        if (!months.isEmpty()) {
            rows.add(new ReviewView.Month(
                    "Together",
                    columns.stream()
                            .map(column -> figure(sum(months, column.figure), column.unit))
                            .toList()));
        }
        return rows;
    }

    /** The sum of what is known; absent where nothing is. */
    private static <T> long sum(List<T> months, ToLongFunction<T> figure) {
        return months.stream()
                .mapToLong(figure)
                .filter(Absent::has)
                .reduce(Math::addExact)
                .orElse(Absent.AMOUNT);
    }

    private String figure(long amount, Unit unit) {
        return switch (unit) {
            case COUNT -> told.figures().count(amount);
            case HOURS -> told.figures().hours(amount);
            case MONEY -> told.figures().money(amount);
        };
    }
}
