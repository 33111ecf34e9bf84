package benchtrue.hours;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;
import benchtrue.shop.Balance;
import benchtrue.shop.ReturnReason;
import benchtrue.shop.TimeKind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every shop, on random untidy shops; the seed is the test's name. */
class SplitPropertiesTest {
    private static final String[] TYPES = {"refret", "nut", "setup", "crack", "refinish", "one-off"};
    private static final String[] PEOPLE = {"ann", "bob", "cat"};

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    /** A shop of 40 untidy tickets. */
    private static Ledger shop(long seed) {
        Random random = new Random(seed);
        ShopBuilder shop = new ShopBuilder();
        for (int t = 0; t < TYPES.length - 1; t++) {
            shop.type(TYPES[t], 1 + t * 2, t < 3 ? "setup" : "structural");
        }
        shop.time("ann", TimeKind.SHOP, 2.5);
        List<String> tickets = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            String key = "t" + (100 + i);
            shop.ticket(key).opened("2025-0" + (1 + i / 5) + "-10");
            tickets.add(key);
            if (random.nextInt(12) == 0) {
                shop.voided();
            } else if (random.nextInt(8) == 0) {
                shop.stillOpen();
            }
            lines(random, shop, tickets);
            entries(random, shop);
        }
        shop.shared("cat", 3.7, tickets.get(1), tickets.get(5), tickets.get(9));
        return shop.build();
    }

    private static void lines(Random random, ShopBuilder shop, List<String> tickets) {
        for (int line = random.nextInt(5); line > 0; line--) {
            shop.line(TYPES[random.nextInt(TYPES.length)], random.nextInt(30) / 4.0);
            if (random.nextInt(8) == 0) {
                shop.declined();
            } else if (random.nextInt(10) == 0) {
                shop.withoutQuotedHours();
            } else if (random.nextInt(8) == 0) {
                ReturnReason[] reasons = ReturnReason.values();
                shop.putsRight(
                        tickets.get(random.nextInt(tickets.size())),
                        random.nextBoolean() ? "1" : "",
                        reasons[random.nextInt(reasons.length)]);
            }
        }
    }

    private static void entries(Random random, ShopBuilder shop) {
        for (int entry = random.nextInt(6); entry > 0; entry--) {
            String who = PEOPLE[random.nextInt(PEOPLE.length)];
            double hours = 1 + random.nextInt(3_600) / 900.0;
            switch (random.nextInt(6)) {
                case 0 -> shop.logged(who, "" + (1 + random.nextInt(4)), hours);
                case 1 -> shop.did(who, TYPES[random.nextInt(TYPES.length)], hours);
                case 2 -> shop.time(who, TimeKind.values()[random.nextInt(4)], hours);
                case 3 -> shop.logged(who, "1", hours).whole(who, -hours);
                default -> shop.whole(who, hours);
            }
        }
    }

    private static JobLines split(Ledger ledger) {
        return new SplitHours().split(ledger, Settings.DEFAULTS);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everySecondOfTheLogStandsSomewhereAndNoLineIsNegative(long seed) {
        Ledger ledger = shop(seed);
        JobLines jobs = split(ledger);
        long read = IntStream.range(0, ledger.time().size())
                .mapToLong(ledger.time()::seconds)
                .sum();
        assertThat(new Balance("hours", "seconds", read, jobs.placed()).holds()).isTrue();
        long onLines =
                IntStream.range(0, jobs.size()).mapToLong(jobs::actualSeconds).sum();
        assertThat(jobs.placed().get(0).amount()).isEqualTo(onLines);
        for (int line = 0; line < jobs.size(); line++) {
            assertThat(jobs.labelledSeconds(line)).isNotNegative();
            assertThat(jobs.splitSeconds(line)).isNotNegative();
        }
        assertThat(jobs.unquoted()).allMatch(work -> work.seconds() > 0);
        assertThat(jobs.placed()).hasSize(6);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void reworkHoursAreCarriedOnceAndNeverGrow(long seed) {
        JobLines jobs = split(shop(seed));
        long memo = IntStream.range(0, jobs.size())
                .mapToLong(line -> jobs.reworkSeconds(line) + jobs.settlingSeconds(line))
                .sum();
        long onReturns = IntStream.range(0, jobs.size())
                .filter(line -> jobs.ledger().lines().returnReason(line) != null)
                .mapToLong(jobs::actualSeconds)
                .sum();
        assertThat(memo).isBetween(0L, onReturns);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theSameShopIsSplitTheSameWayTwice(long seed) {
        JobLines first = split(shop(seed));
        JobLines second = split(shop(seed));
        for (int line = 0; line < first.size(); line++) {
            assertThat(first.splitSeconds(line)).isEqualTo(second.splitSeconds(line));
            assertThat(first.mainTechnician(line)).isEqualTo(second.mainTechnician(line));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theOrderInWhichThingsWereWrittenDownMovesNothing(long seed) {
        List<Integer> order = new ArrayList<>(IntStream.range(0, 12).boxed().toList());
        JobLines forwards = split(inOrder(order));
        Collections.shuffle(order, new Random(seed));
        JobLines shuffled = split(inOrder(order));
        for (int line = 0; line < forwards.size(); line++) {
            assertThat(shuffled.splitSeconds(line)).isEqualTo(forwards.splitSeconds(line));
            assertThat(shuffled.mainTechnician(line)).isEqualTo(forwards.mainTechnician(line));
        }
    }

    /** Twelve tickets logged as a whole by two people, written down in an order, and so the entries of each. */
    private static Ledger inOrder(List<Integer> order) {
        ShopBuilder shop =
                new ShopBuilder().type("refret", 9).type("nut", 1.5, "setup").type("setup", 1, "setup");
        for (int ticket : order) {
            shop.ticket("t" + (10 + ticket))
                    .line(ticket % 2 == 0 ? "refret" : "setup", 1 + ticket)
                    .line("nut", 1.5);
            for (int entry : order) {
                shop.whole(PEOPLE[(ticket + entry) % 2], (ticket + entry + 3) / 20.0);
            }
        }
        return shop.build();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theSumOfTheLinesIsTheModelsPlainFit(long seed) {
        JobLines jobs = split(shop(seed));
        double[] ones = new double[jobs.model().tickets()];
        java.util.Arrays.fill(ones, 1);
        double[] loads = jobs.model().loads(ones);
        for (int type = 0; type < loads.length; type++) {
            int code = type;
            double quoted = IntStream.range(0, jobs.size())
                    .filter(l -> jobs.judged(l) && jobs.ledger().lines().repairType(l) == code)
                    .mapToDouble(jobs::todayQuotedHours)
                    .sum();
            double hours = IntStream.range(0, jobs.size())
                            .filter(l -> jobs.judged(l) && jobs.ledger().lines().repairType(l) == code)
                            .mapToDouble(l -> jobs.actualSeconds(l) + jobs.reworkSeconds(l))
                            .sum()
                    / 3_600;
            if (quoted > 0) {
                assertThat(loads[type]).isCloseTo(hours / quoted, org.assertj.core.api.Assertions.within(2e-3));
            } else {
                assertThat(loads[type]).isNaN();
            }
        }
    }
}
