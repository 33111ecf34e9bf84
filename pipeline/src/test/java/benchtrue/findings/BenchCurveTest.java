package benchtrue.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import org.junit.jupiter.api.Test;

class BenchCurveTest {
    private static final double[] HOURS = {1.6, 1.8, 2.0, 2.0, 2.2, 2.4, 2.8, 4.0};

    @Test
    void jobsLeaveTheBenchAsTheyWentAndOpenOnesStayAtLeastAsLongAsTheyHave() {
        ShopBuilder shop = finished();
        shop.ticket("O").opened("2026-10-26").stillOpen().line("refret", 2).logged("Ada", "1", 2.6);
        BenchCurve curve = JudgedShop.find(shop).benchCurves().get(0);
        assertThat(curve.openSoFar()).containsExactly(new double[] {1.3}, within(1e-12));
        // After 1.2 hours for each quoted one, 2 of 8 finished jobs are there; with the open one 3 of 9.
        assertThat(curve.finishedOnly().survivalAt(1.2)).isCloseTo(2 / 8.0, within(1e-12));
        assertThat(curve.withOpen().survivalAt(1.2)).isCloseTo(3 / 9.0, within(1e-12));
        // Of the two then left, one leaves after 1.4.
        assertThat(curve.withOpen().survivalAt(1.4)).isCloseTo(3 / 9.0 / 2, within(1e-12));
    }

    @Test
    void theUsualCourseHasHalfOfTheJobsLeftAtTheUsualJobAndLaterWithOpenOnes() {
        ShopBuilder shop = finished();
        shop.ticket("O").opened("2026-10-26").stillOpen().line("refret", 2).logged("Ada", "1", 2.6);
        BenchCurve curve = JudgedShop.find(shop).benchCurves().get(0);
        assertThat(curve.modelled(curve.usual().typical())).isCloseTo(0.5, within(1e-12));
        assertThat(curve.modelledWithoutOpen(curve.usual().withoutOpen())).isCloseTo(0.5, within(1e-12));
        assertThat(curve.modelled(1.3)).isGreaterThan(curve.modelledWithoutOpen(1.3));
    }

    @Test
    void withoutAnOpenJobInWorkThereIsNothingToShow() {
        assertThat(JudgedShop.find(finished()).benchCurves()).isEmpty();
    }

    private static ShopBuilder finished() {
        ShopBuilder shop = new ShopBuilder().asOf("2026-10-31").type("refret", 2);
        for (int i = 0; i < HOURS.length; i++) {
            shop.ticket("F" + i).line("refret", 2).logged("Ada", "1", HOURS[i]);
        }
        return shop;
    }
}
