package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.costing.Restatement;
import benchtrue.findings.RepairFinding;
import benchtrue.tables.EarlierResult.EarlierFinding;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** The owner gets the digest by mail: it is short, names nobody, and says what changed and what waits for a decision. */
class DigestTest {
    private static final String[] PEOPLE = {"wilhelmina", "bartholomew"};
    private static final int EARLIER = (int) LocalDate.of(2026, 9, 30).toEpochDay();

    private static ShopBuilder shop(long seed, String asOf) {
        Random random = new Random(seed);
        ShopBuilder shop = new ShopBuilder().asOf(asOf);
        int types = 1 + random.nextInt(40);
        for (int type = 0; type < types; type++) {
            shop.type("repair-" + type, 1 + type % 7);
        }
        for (int i = 0; i < 20 + random.nextInt(400); i++) {
            int type = random.nextInt(types);
            double quoted = 1 + type % 7;
            String day = String.format(
                    java.util.Locale.ROOT, "2026-%02d-%02d", 1 + random.nextInt(8), 1 + random.nextInt(28));
            shop.ticket("B-" + i)
                    .opened(day)
                    .of("mandolin", PEOPLE[random.nextInt(2)])
                    .line("repair-" + type, quoted)
                    .logged(PEOPLE[random.nextInt(2)], "1", quarter(quoted * (0.6 + random.nextDouble() * 1.2)));
            if (random.nextInt(8) == 0) {
                shop.stillOpen();
            }
        }
        return shop;
    }

    private static double quarter(double hours) {
        return StrictMath.max(0.25, StrictMath.rint(4 * hours) / 4);
    }

    private static Review review(ShopBuilder shop, List<Restatement> restatements) {
        return Reviewed.shop(shop, restatements, new TreeMap<>(java.util.Map.of("time-log", 3L)));
    }

    private static List<EarlierFinding> earlier(Review review) {
        return review.findings().repairs().stream()
                .map(row -> earlier(review, row))
                .toList();
    }

    private static EarlierFinding earlier(Review review, RepairFinding row) {
        double written = StrictMath.rint(row.loadFactor() * 1e4) / 1e4;
        String key = review.ledger().repairTypes().name(row.repairType());
        return new EarlierFinding(key, row.lines(), written, row.verdict().words());
    }

    @RepeatedTest(8)
    void anyShopsDigestIsAtMostThirtyLinesAndNamesNobody(RepetitionInfo seed) {
        long number = seed.getCurrentRepetition();
        Review now = review(shop(number, "2026-10-31"), List.of());
        Review other = review(shop(number + 100, "2026-09-30"), List.of());
        for (String digest : List.of(
                new WhatChanged(now).first(),
                new WhatChanged(now).since(EARLIER, earlier(other)),
                new WhatChanged(now).sinceUnreadable(EARLIER))) {
            assertThat(digest.lines()).as("seed " + number + ":\n" + digest).hasSizeLessThanOrEqualTo(30);
            assertThat(digest)
                    .as("seed " + number)
                    .doesNotContainIgnoringCase(PEOPLE)
                    .doesNotContain("NaN", "null");
        }
    }

    @RepeatedTest(4)
    void aNightThatChangedNothingSaysSoInOneLine(RepetitionInfo seed) {
        Review review = review(shop(seed.getCurrentRepetition(), "2026-10-31"), List.of());
        assertThat(new WhatChanged(review).since(EARLIER, earlier(review)))
                .as("seed " + seed.getCurrentRepetition())
                .isEqualTo("Benchtrue, results to 31 Oct 2026. Nothing has changed since the result of 30 Sep 2026.\n");
    }

    @Test
    void oneMoreJobOrAnotherVerdictIsAChange() {
        Review review = review(shop(1, "2026-10-31"), List.of());
        EarlierFinding first = earlier(review).get(0);
        for (EarlierFinding other : List.of(
                new EarlierFinding(first.repairType(), first.lines() + 1, first.loadFactor(), first.verdict()),
                new EarlierFinding(first.repairType(), first.lines(), first.loadFactor(), "was something else"))) {
            List<EarlierFinding> before = new java.util.ArrayList<>(earlier(review));
            before.set(0, other);
            assertThat(new WhatChanged(review).since(EARLIER, before)).contains("Compared with");
        }
    }

    @Test
    void whatWaitsForADecisionIsNamed() {
        ShopBuilder shop = new ShopBuilder().asOf("2026-10-31").type("refret", 8);
        for (int i = 0; i < 12; i++) {
            shop.ticket("T" + i).opened("2026-05-04").line("refret", 8).logged("ann", "1", 11 + 0.25 * (i % 4));
        }
        shop.ticket("OPEN-1").opened("2026-10-12").line("refret", 8).logged("ann", "1", 9);
        shop.stillOpen();
        Restatement late = new Restatement(2026 * 12 + 8, "earned labour_cost", "1", "2", List.of("ticket T1"));
        assertThat(new WhatChanged(review(shop, List.of(late))).first())
                .contains(
                        "To decide: 1 change of the price book", "  refret: 8.00\u00a0h to 10.00\u00a0h, 800 to 1,000.")
                .contains("To call about before more work is done: 1 open instrument, OPEN-1.")
                .contains("Sealed months: 1 figure would be otherwise now")
                .contains("To correct: 3 rows set aside");
    }
}
