package benchtrue.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.costing.CostedLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.RepairType;
import benchtrue.shop.WaitReason;
import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Days to promise, in a shop whose visits begin within two weeks, take three days at the bench and ten of humidity. */
class GivePromisesTest {
    private static final LocalDate FIRST = LocalDate.parse("2025-01-06");

    private enum Humidity {
        WRITTEN,
        NOT_THERE
    }

    private static ShopBuilder shop(Humidity humidity, double leastHours) {
        SplittableRandom random = new SplittableRandom(7);
        ShopBuilder shop = new ShopBuilder()
                .asOf("2026-03-31")
                .type(new RepairType(
                        "reset",
                        "reset",
                        "structural",
                        10 * Hours.SECONDS,
                        10_000_000,
                        (long) (leastHours * Hours.SECONDS),
                        List.of(),
                        Absent.AMOUNT,
                        0));
        for (int visit = 0; visit < 140; visit++) {
            LocalDate opened = FIRST.plusDays(visit * 3L);
            LocalDate begun = opened.plusDays(random.nextInt(14));
            LocalDate goesOn = begun.plusDays(humidity == Humidity.WRITTEN ? 12 : 2);
            shop.ticket("A" + (100 + visit))
                    .opened(opened.toString())
                    .line("reset", 10)
                    .loggedOn(begun.toString(), "ada", "1", 5)
                    .loggedOn(goesOn.toString(), "ada", "1", 5)
                    .finished(goesOn.plusDays(1).toString());
            if (humidity == Humidity.WRITTEN) {
                shop.waited(begun.plusDays(1).toString(), begun.plusDays(11).toString(), WaitReason.ACCLIMATISING);
            }
        }
        return shop;
    }

    private static RepairWeeks reset(ShopBuilder shop) {
        return CalendarOf.shop(shop).weeks().stream()
                .filter(row -> row.repairType() != Absent.INDEX)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void humidityIsTimeInThePromiseAndNeverABenchHour() {
        RepairWeeks with = reset(shop(Humidity.WRITTEN, 1));
        RepairWeeks without = reset(shop(Humidity.NOT_THERE, 1));
        assertThat(with.bench()).isEqualTo(without.bench());
        assertThat(with.queue()).isEqualTo(without.queue());
        assertThat(with.waits()).containsEntry(WaitReason.ACCLIMATISING, 10.0);
        assertThat(with.promise() - without.promise()).isBetween(8, 12);
        CostedLines costsWith = CalendarOf.costs(shop(Humidity.WRITTEN, 1));
        CostedLines costsWithout = CalendarOf.costs(shop(Humidity.NOT_THERE, 1));
        for (int line = 0; line < costsWith.jobs().size(); line++) {
            assertThat(costsWith.jobs().actualSeconds(line))
                    .isEqualTo(costsWithout.jobs().actualSeconds(line));
        }
    }

    @Test
    void fourInFiveSuchVisitsAreReadyWithinWhatIsPromised() {
        // Ready 3 days after a beginning on one of days 0 to 13: four in five within 14 days, fewer where the queue is
        // short.
        assertThat(reset(shop(Humidity.NOT_THERE, 1)).promise()).isBetween(11, 17);
    }

    @Test
    void aPromiseNeverCutsTheShortestSafeHours() {
        assertThat(reset(shop(Humidity.NOT_THERE, 400)).promise()).isGreaterThanOrEqualTo(50);
    }

    @Test
    void norDoesOneForAnOpenVisitCutWhatIsLeftOfThem() {
        SplittableRandom random = new SplittableRandom(23);
        for (int round = 0; round < 20; round++) {
            int least = 40 + random.nextInt(600);
            int done = random.nextInt(30);
            ShopBuilder shop = shop(Humidity.WRITTEN, least);
            shop.ticket("X").opened("2026-03-25").stillOpen().line("reset", 10);
            shop.loggedOn("2026-03-30", "ada", "1", done + 0.5);
            int promise = CalendarOf.shop(shop).open().get(0).promise();
            assertThat((promise - ShopBuilder.day("2026-03-31")) * 8.0)
                    .as("%d hours at least, %d done", least, done)
                    .isGreaterThanOrEqualTo(least - done - 0.5);
        }
    }

    @Test
    void anOpenVisitIsPromisedAndOneLeftLyingIsNot() {
        ShopBuilder shop = shop(Humidity.NOT_THERE, 1);
        shop.ticket("X").opened("2026-03-28").stillOpen().line("reset", 10);
        shop.ticket("Y").opened("2025-09-01").stillOpen().line("reset", 10).loggedOn("2025-09-03", "ada", "1", 5);
        Calendar calendar = CalendarOf.shop(shop);
        assertThat(calendar.open())
                .extracting(OpenTicket::state)
                .containsExactly(OpenState.NOT_BEGUN, OpenState.STALLED);
        assertThat(calendar.open().get(0).promise())
                .isBetween(ShopBuilder.day("2026-04-08"), ShopBuilder.day("2026-04-16"));
        assertThat(calendar.open().get(1).promise()).isEqualTo(Absent.DAY);
    }

    @Test
    void withFewVisitsPastNothingIsPromised() {
        ShopBuilder shop = new ShopBuilder().asOf("2026-03-31").type("reset", 10);
        shop.ticket("A").line("reset", 10).logged("ada", "1", 9);
        shop.ticket("X").opened("2026-03-28").stillOpen().line("reset", 10);
        Calendar calendar = CalendarOf.shop(shop);
        assertThat(calendar.open().get(0).promise()).isEqualTo(Absent.DAY);
        assertThat(calendar.trial().tried()).isZero();
    }
}
