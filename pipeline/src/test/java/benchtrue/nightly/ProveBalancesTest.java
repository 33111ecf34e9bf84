package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ShopBuilder;
import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.hours.SplitHours;
import benchtrue.settings.Settings;
import benchtrue.shop.Balance;
import benchtrue.shop.TimeKind;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProveBalancesTest {
    /** A shop with 10 h on a line and 1 h on quoting. */
    private static CostedLines costs() {
        return new CostLines()
                .cost(
                        new SplitHours()
                                .split(
                                        new ShopBuilder()
                                                .type("refret", 8)
                                                .ticket("T1")
                                                .line("refret", 8)
                                                .logged("ann", "1", 10)
                                                .time("ann", TimeKind.QUOTING, 1)
                                                .build(),
                                        Settings.DEFAULTS),
                        Settings.DEFAULTS);
    }

    private static Balance hours(long read) {
        return new Balance(
                "hours",
                "seconds",
                read,
                List.of(new Balance.Term("set aside", 3_600), new Balance.Term(Balance.IN_LEDGER, 39_600)));
    }

    @Test
    void theLedgersHoursAreFollowedToWhereTheyEnded() {
        Balance proved = ProveBalances.prove(List.of(hours(43_200)), costs()).get(0);
        assertThat(proved.terms())
                .contains(
                        new Balance.Term("on lines", 36_000),
                        new Balance.Term("quoting", 3_600),
                        new Balance.Term("set aside", 3_600))
                .extracting(Balance.Term::name)
                .doesNotContain(Balance.IN_LEDGER);
        assertThat(proved.holds()).isTrue();
    }

    @Test
    void anHourThatWentNowhereStopsTheRun() {
        CostedLines costs = costs();
        assertThatThrownBy(() -> ProveBalances.prove(List.of(hours(43_201)), costs))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("balance of hours fails");
    }
}
