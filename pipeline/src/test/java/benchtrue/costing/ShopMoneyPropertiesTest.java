package benchtrue.costing;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold exactly for any shop. */
class ShopMoneyPropertiesTest {
    private static CostedLines costs(long seed) {
        return costs(RandomShop.of(seed).build());
    }

    private static CostedLines costs(Ledger ledger) {
        return new CostLines().cost(new SplitHours().split(ledger, Settings.DEFAULTS), Settings.DEFAULTS);
    }

    private static <T> long sum(List<T> rows, ToLongFunction<T> figure) {
        return rows.stream().mapToLong(figure).sum();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void theBridgeAddsUpToTheChangeOfTheMargin(long seed) {
        ShopMoney shop = costs(seed).shop();
        Map<Integer, EarnedMonth> months =
                shop.earned().stream().collect(Collectors.toMap(EarnedMonth::month, Function.identity()));
        assertThat(shop.monthBridges()).as("seed %d", seed).hasSizeGreaterThan(12);
        assertThat(shop.yearBridges()).as("seed %d", seed).isNotEmpty();
        for (MarginBridge bridge : concat(shop.monthBridges(), shop.yearBridges())) {
            assertThat(bridge.before()).isEqualTo(months.get(bridge.from()).margin());
            assertThat(bridge.after()).isEqualTo(months.get(bridge.to()).margin());
            assertThat(bridge.before() + bridge.change()).as("seed %d", seed).isEqualTo(bridge.after());
        }
    }

    private static List<MarginBridge> concat(List<MarginBridge> first, List<MarginBridge> second) {
        return java.util.stream.Stream.concat(first.stream(), second.stream()).toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void variancesAddUpToActualLessStandard(long seed) {
        CostedLines costs = costs(seed);
        ShopMoney shop = costs.shop();
        for (WorkMonth month : shop.work()) {
            OverheadMonth overhead = month.overhead();
            assertThat(Totals.of(overhead.variance())).as("seed %d", seed).isEqualTo(overhead.underApplied());
        }
        for (EarnedMonth month : shop.earned()) {
            long rate = standardWage(shop.earned(), month.month());
            if (Absent.has(month.labour().price())) {
                long allowed = benchtrue.shop.Money.perHour(rate, month.standardSeconds());
                assertThat(allowed + Totals.of(month.labour()))
                        .as("seed %d", seed)
                        .isEqualTo(month.labourCost());
            }
        }
    }

    /** The standard wage, worked out again from the published months. */
    private static long standardWage(List<EarnedMonth> months, int month) {
        int year = month / 12;
        long before = months.stream()
                .filter(row -> row.month() / 12 == year - 1 && row.lines() > 0)
                .count();
        List<EarnedMonth> basis = months.stream()
                .filter(row -> row.month() / 12 == (before >= 6 ? year - 1 : year))
                .toList();
        return Rate.hourly(sum(basis, EarnedMonth::labourCost), sum(basis, EarnedMonth::actualSeconds));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everySecondAndEveryWageStandsInOneMonthAndKind(long seed) {
        CostedLines costs = costs(seed);
        JobLines jobs = costs.jobs();
        List<WorkMonth> work = costs.shop().work();
        long logged = IntStream.range(0, jobs.ledger().time().size())
                .mapToLong(jobs.ledger().time()::seconds)
                .sum();
        assertThat(sum(work, WorkMonth::loggedSeconds)).as("seed %d", seed).isEqualTo(logged);
        Balance wages = costs.balances().stream()
                .filter(balance -> balance.name().startsWith("wages"))
                .findFirst()
                .orElseThrow();
        assertThat(sum(work, WorkMonth::allWages)).as("seed %d", seed).isEqualTo(wages.read());
        assertThat(costs.balances()).allMatch(Balance::holds);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void monthsGroupsAndLinesTellTheSameMargin(long seed) {
        CostedLines costs = costs(seed);
        ShopMoney shop = costs.shop();
        Earned earned = new Earned(costs.jobs());
        long ofLines = IntStream.range(0, costs.jobs().size())
                .filter(line -> earned.is(line) && Absent.has(costs.margin(line)))
                .mapToLong(costs::margin)
                .sum();
        assertThat(sum(shop.earned(), EarnedMonth::margin)).as("seed %d", seed).isEqualTo(ofLines);
        long lastYear = sum(shop.groups().all(), GroupMoney::margin);
        assertThat(sum(shop.groups().types(), GroupMoney::margin)).isEqualTo(lastYear);
        assertThat(sum(shop.groups().families(), GroupMoney::margin)).isEqualTo(lastYear);
        assertThat(sum(shop.groups().classes(), GroupMoney::margin)).isEqualTo(lastYear);
        assertThat(sum(shop.groups().payers(), GroupMoney::margin)).isEqualTo(lastYear);
        assertThat(shop.groups().writers()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void materialsSpentAreAllowedOrExplained(long seed) {
        CostedLines costs = costs(seed);
        MarginBasis basis = MarginBasis.of(costs.jobs().ledger());
        Earned earned = new Earned(costs.jobs());
        SumEarned sums = new SumEarned(costs, basis, earned);
        PartShares parts = PartShares.of(costs.jobs(), Revenue.of(costs.jobs()).parts());
        for (EarnedMonth month : sums.months(parts)) {
            long allowed = sums.materials(parts).allowed(month.month());
            assertThat(allowed + Totals.of(month.materials()) + month.withoutStandard())
                    .as("seed %d", seed)
                    .isEqualTo(month.partsCost());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void theBreakEvenRateBreaksEven(long seed) {
        ShopMoney shop = costs(seed).shop();
        BenchHour hour = shop.benchHour();
        long unchanged = hour.sensitivity().stream()
                .filter(row -> row.pricePercent() == 0 && row.hoursPercent() == 0)
                .findFirst()
                .orElseThrow()
                .result();
        assertThat(unchanged).as("seed %d", seed).isEqualTo(hour.result());
        double needed = (hour.rates().breakEven() - hour.rates().charged())
                / (double) hour.rates().charged();
        long labour = shop.earned().stream()
                .filter(month -> month.month() >= hour.from() && month.month() <= hour.to())
                .mapToLong(EarnedMonth::labourRevenue)
                .sum();
        assertThat(hour.result() + needed * labour).as("seed %d", seed).isBetween(-5_000.0, 5_000.0);
    }
}
