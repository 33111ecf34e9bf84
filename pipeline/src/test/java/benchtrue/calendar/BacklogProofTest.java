package benchtrue.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.costing.CostLines;
import benchtrue.hours.SplitHours;
import benchtrue.settings.Settings;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Forecasts of open work against shops whose future is known. */
class BacklogProofTest {
    private static final int TYPES = 4;
    private final SplittableRandom random = new SplittableRandom(20_261_031);

    /** Hours per quoted hour of a type: log-normal, so that a median is known. */
    private double factor(int type) {
        double z = Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
        return Math.exp(0.1 * type + (0.2 + 0.05 * type) * z);
    }

    /**
     * A snapshot of the bench meets long jobs more often than short ones, at a point anywhere in them; what is left then
     * is a log-normal cut off at the hours done.
     */
    @Test
    void nineJobsInTenEndWithinTheirRange() {
        int within = 0;
        double expected = 0;
        double taken = 0;
        int jobs = 20_000;
        for (int job = 0; job < jobs; job++) {
            double hours;
            do {
                hours = 10 * factor(2);
            } while (random.nextDouble() * 60 > hours);
            HoursAhead ahead = new HoursAhead(Math.log(10) + 0.2, 0.3, hours * random.nextDouble());
            within += hours >= ahead.quantile(0.05) && hours <= ahead.quantile(0.95) ? 1 : 0;
            expected += ahead.mean();
            taken += hours;
        }
        assertThat(within / (double) jobs).isBetween(0.89, 0.91);
        assertThat(expected / taken).isBetween(0.99, 1.01);
    }

    @Test
    @Tag("proof")
    void theBacklogEndsWithinItsRangeNineTimesInTen() {
        int shops = 300;
        int within = 0;
        double bias = 0;
        for (int i = 0; i < shops; i++) {
            ShopBuilder shop = new ShopBuilder().asOf("2026-03-31");
            for (int type = 0; type < TYPES; type++) {
                shop.type("type-" + type, 5, "family-" + type % 2);
            }
            closedJobs(shop);
            double left = openJobs(shop);
            Backlog backlog = new PlanCalendar()
                    .plan(
                            new CostLines()
                                    .cost(new SplitHours().split(shop.build(), Settings.DEFAULTS), Settings.DEFAULTS),
                            Settings.DEFAULTS)
                    .backlog();
            within += left >= backlog.lower() && left <= backlog.upper() ? 1 : 0;
            bias += backlog.hours() / left / shops;
        }
        System.out.println("backlog within its 90 % range: " + within + " of " + shops + ", expected / true " + bias);
        assertThat(within / (double) shops).isBetween(0.84, 0.96);
        assertThat(bias).isBetween(0.97, 1.06);
    }

    private void closedJobs(ShopBuilder shop) {
        for (int job = 0; job < 60; job++) {
            int type = job % TYPES;
            shop.ticket("A" + (100 + job)).line("type-" + type, 5).logged("ann", "1", 5 * factor(type));
        }
    }

    private double openJobs(ShopBuilder shop) {
        double left = 0;
        for (int job = 0; job < 25; job++) {
            int type = job % TYPES;
            double hours;
            do {
                hours = 5 * factor(type);
            } while (random.nextDouble() * 40 > hours);
            double done = hours * random.nextDouble();
            shop.ticket("B" + (100 + job)).stillOpen().line("type-" + type, 5).logged("ann", "1", done);
            left += hours - done;
        }
        return left;
    }
}
