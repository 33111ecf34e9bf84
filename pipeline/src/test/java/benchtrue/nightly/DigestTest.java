package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.costing.Restatement;
import benchtrue.findings.RepairFinding;
import benchtrue.shop.Absent;
import benchtrue.tables.EarlierResult.EarlierFinding;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
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

    private static WhatChanged digest(Review review) {
        return new WhatChanged(review, Absent.DAY, new DecisionFiles(List.of(), List.of()));
    }

    private static WhatChanged.Earlier then(Review review, List<EarlierFinding> findings) throws IOException {
        return new WhatChanged.Earlier(
                EARLIER,
                findings,
                List.of(),
                new EarlierRun(Set.of(), EarlierRun.written(review.settings().byKey())));
    }

    @RepeatedTest(8)
    void anyShopsDigestIsAtMostThirtyLinesAndNamesNobody(RepetitionInfo seed) throws IOException {
        long number = seed.getCurrentRepetition();
        Review now = review(shop(number, "2026-10-31"), List.of());
        Review other = review(shop(number + 100, "2026-09-30"), List.of());
        for (String digest : List.of(
                digest(now).first(),
                digest(now).since(then(now, earlier(other))),
                digest(now).sinceUnreadable(EARLIER))) {
            assertThat(digest.lines()).as("seed " + number + ":\n" + digest).hasSizeLessThanOrEqualTo(30);
            assertThat(digest)
                    .as("seed " + number)
                    .doesNotContainIgnoringCase(PEOPLE)
                    .doesNotContain("NaN", "null");
        }
    }

    @RepeatedTest(4)
    void aNightThatChangedNothingSaysSoAndWhomToCall(RepetitionInfo seed) throws IOException {
        Review review = review(shop(seed.getCurrentRepetition(), "2026-10-31"), List.of());
        assertThat(digest(review).since(then(review, earlier(review))))
                .as("seed " + seed.getCurrentRepetition())
                .isEqualTo("Benchtrue, results to 31 Oct 2026. Nothing has changed since the result of 30 Sep 2026.\n"
                        + toCall(review));
    }

    private static String toCall(Review review) {
        return digest(review)
                .first()
                .lines()
                .filter(line -> line.startsWith("To call about"))
                .map(line -> line + "\n")
                .collect(Collectors.joining());
    }

    private static ShopBuilder callAbout() {
        ShopBuilder shop = new ShopBuilder().asOf("2026-10-31").type("refret", 8);
        for (int i = 0; i < 12; i++) {
            shop.ticket("T" + i).opened("2026-05-04").line("refret", 8).logged("ann", "1", 11 + 0.25 * (i % 4));
        }
        shop.ticket("OPEN-1").opened("2026-10-12").line("refret", 8).logged("ann", "1", 9);
        return shop.stillOpen();
    }

    @Test
    void callsAreInEveryDigest() throws IOException {
        Review review = review(callAbout(), List.of());
        assertThat(digest(review).since(then(review, earlier(review))))
                .contains("Nothing has changed", "To call about: 1 open instrument, OPEN-1.");
    }

    @Test
    void whatWasDecidedAndWithdrawnIsToldOnceAndIsNotNothing() throws IOException {
        Review review = review(callAbout(), List.of());
        Sitting sitting = new Sitting(
                "2026-12-01.json",
                ShopBuilder.day("2026-12-01"),
                ShopBuilder.day("2026-10-30"),
                "d",
                List.of(new Sitting.Row("refret", false, 1, 1, "", Absent.DAY)),
                0);
        DecisionFiles files = new DecisionFiles(
                List.of(sitting),
                List.of(new DecisionFiles.Withdrawal(
                        "2027-01-01.withdrawn.json",
                        ShopBuilder.day("2027-01-01"),
                        ShopBuilder.day("2026-10-31"),
                        List.of("2027-01-01.json"))));
        WhatChanged changed = new WhatChanged(review, Absent.DAY, files);
        assertThat(changed.since(then(review, earlier(review))))
                .doesNotContain("Nothing has changed")
                .contains(
                        "Decided on 30 Oct 2026 and adopted: 1 repair of the price book from 1 Dec 2026.",
                        "Withdrawn on 31 Oct 2026: the price book from 1 Jan 2027.");
        EarlierRun knew = new EarlierRun(
                Set.of("decisions/2026-12-01.json", "decisions/2027-01-01.withdrawn.json"),
                EarlierRun.written(review.settings().byKey()));
        assertThat(changed.since(new WhatChanged.Earlier(EARLIER, earlier(review), List.of(), knew)))
                .contains("Nothing has changed");
    }

    @Test
    void aVerdictThatMovedWithoutNewWorkSaysWhy() throws IOException {
        Review review = review(callAbout(), List.of());
        EarlierFinding now = earlier(review).get(0);
        EarlierFinding same = new EarlierFinding("refret", now.lines(), now.loadFactor(), "leaning under");
        EarlierFinding corrected = new EarlierFinding("refret", now.lines(), now.loadFactor() - 0.1, "leaning under");
        EarlierFinding worked = new EarlierFinding("refret", now.lines() - 1, now.loadFactor(), "leaning under");
        assertThat(digest(review).since(then(review, List.of(same))))
                .contains("was leaning under; no more jobs than then; what changed is how sure one can be");
        assertThat(digest(review).since(then(review, List.of(corrected))))
                .contains("no more jobs than then, but its hours or quotes were corrected");
        assertThat(digest(review).since(then(review, List.of(worked)))).doesNotContain("no more jobs than then");
        Map<String, String> settings =
                new TreeMap<>(EarlierRun.written(review.settings().byKey()));
        settings.put("tolerance", "0.2");
        assertThat(digest(review)
                        .since(new WhatChanged.Earlier(
                                EARLIER, List.of(same), List.of(), new EarlierRun(Set.of(), settings))))
                .contains("no more jobs than then, but other settings: tolerance");
        Review otherBook = review(callAbout().book("2026-10-15").type("refret", 9), List.of());
        EarlierFinding before =
                new EarlierFinding("refret", earlier(otherBook).get(0).lines(), now.loadFactor(), "leaning under");
        assertThat(digest(otherBook).since(then(otherBook, List.of(before))))
                .contains("In force since 15 Oct 2026: a new price book.")
                .contains("no more jobs than then, but another book: 9.00\u00a0h, was 8.00\u00a0h");
    }

    @Test
    void oneMoreJobOrAnotherVerdictIsAChange() throws IOException {
        Review review = review(shop(1, "2026-10-31"), List.of());
        EarlierFinding first = earlier(review).get(0);
        for (EarlierFinding other : List.of(
                new EarlierFinding(first.repairType(), first.lines() + 1, first.loadFactor(), first.verdict()),
                new EarlierFinding(first.repairType(), first.lines(), first.loadFactor(), "was something else"))) {
            List<EarlierFinding> before = new java.util.ArrayList<>(earlier(review));
            before.set(0, other);
            assertThat(digest(review).since(then(review, before))).contains("Compared with");
        }
    }

    @Test
    void whatWaitsForADecisionIsNamed() {
        ShopBuilder shop = callAbout();
        Restatement late = new Restatement(2026 * 12 + 8, "earned labour_cost", "1", "2", List.of("ticket T1"));
        assertThat(digest(review(shop, List.of(late))).first())
                .contains(
                        "To decide: 1 change of the price book",
                        "  refret (under-quoted): 8.00\u00a0h to 10.00\u00a0h, 800 to 1,000.")
                .contains("To call about: 1 open instrument, OPEN-1.")
                .contains("Sealed months: 1 figure would be otherwise now")
                .contains("To correct: 3 rows set aside");
    }
}
