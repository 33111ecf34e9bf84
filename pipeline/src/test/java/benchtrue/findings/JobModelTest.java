package benchtrue.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import benchtrue.ShopSettings;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JobModelTest {
    private static final long SEED = 42;
    private static final String[] TYPES = {"bone", "crown", "level", "nut", "refret"};

    @Test
    void aTraitThatLengthensTheJobIsACandidateForASurcharge() {
        List<Driver> drivers = JudgedShop.find(shop()).drivers();
        Driver bound = drivers.get(0);
        assertThat(bound.trait()).isEqualTo("bound-board");
        assertThat(meanLogFactor("bound-board"))
                .as("mean over 8 shops, planted 1.3")
                .isCloseTo(StrictMath.log(1.3), within(0.015));
        assertThat(bound.lower()).isLessThan(bound.factor());
        assertThat(bound.adjustedP()).isLessThan(1e-6);
        // Jobs with the trait take about 2 x 1.3 x 1.15 hours, for what Ben adds, of which 0.3 / 1.3 are extra.
        assertThat(bound.extraHours()).isCloseTo(0.7, within(0.15));
        assertThat(bound.extraLower()).isBetween(0.5, bound.extraHours());
        assertThat(bound.extraUpper()).isBetween(bound.extraHours(), 1.0);
        assertThat(bound.jobsWith() + bound.jobsWithout()).isBetween(590, 600);
        Driver left = drivers.get(1);
        assertThat(left.trait()).isEqualTo("left-handed");
        assertThat(left.factor()).isCloseTo(1, within(0.06));
        assertThat(left.adjustedP()).isGreaterThan(0.05);
    }

    private static double meanLogFactor(String trait) {
        return LongStream.range(SEED, SEED + 8)
                .mapToObj(seed -> JudgedShop.find(shop(seed)).drivers())
                .flatMap(List::stream)
                .filter(driver -> driver.trait().equals(trait))
                .mapToDouble(driver -> StrictMath.log(driver.factor()))
                .average()
                .orElseThrow();
    }

    @Test
    void figuresAboutPeopleAreThereOnlyWhereTheOwnerAsksForThem() {
        assertThat(JudgedShop.find(shop()).people()).isEmpty();
        List<PersonFactor> people = JudgedShop.find(shop(), showingPeople()).people();
        assertThat(people)
                .extracting(person -> person.role() + " " + person.name())
                .as("Cleo did too few jobs; Quentin wrote only two kinds of quote")
                .containsExactly("TECHNICIAN Ada", "TECHNICIAN Ben", "QUOTE_WRITER Olive", "QUOTE_WRITER Pat");
        double ratio = people.get(1).factor() / people.get(0).factor();
        assertThat(ratio)
                .as("Ben takes 1.25 times as long as Ada, seed %d", SEED)
                .isCloseTo(1.25, within(0.06));
    }

    @Test
    void aRepairMostlyDoneBySomebodySlowIsNotBlamedForIt() {
        // Every nut is done by Ben; its hours at the book, at the shop's usual mix, are those of the other types.
        Findings findings = JudgedShop.find(shop());
        UsualJob nut = findings.usualJobs().get(3);
        UsualJob crown = findings.usualJobs().get(1);
        assertThat(nut.typical() / crown.typical()).isCloseTo(1.12, within(0.08));
        assertThat(nut.atBook() / crown.atBook()).isCloseTo(1, within(0.05));
    }

    @Test
    void openJobsInWorkMakeTheUsualJobLongerAndIdleOnesDoNot() {
        ShopBuilder shop = shop();
        openJobs(shop, "U", "2026-10-25");
        UsualJob refret = JudgedShop.find(shop).usualJobs().get(4);
        assertThat(refret.openUsed()).isEqualTo(10);
        assertThat(refret.openLeftOut()).isZero();
        assertThat(refret.typical()).isGreaterThan(1.01 * refret.withoutOpen());
        openJobs(shop, "V", "2026-06-01");
        UsualJob withIdle = JudgedShop.find(shop).usualJobs().get(4);
        assertThat(withIdle.openLeftOut()).isEqualTo(10);
        assertThat(withIdle.typical()).isCloseTo(refret.typical(), within(1e-12));
    }

    @Test
    void anInstrumentThatWaitsForItsOwnerIsOnTheBenchNoMore() {
        ShopBuilder shop = shop();
        shop.ticket("W").opened("2026-10-25").stillOpen().finished("2026-10-29");
        shop.line("refret", 2).logged("Ada", "1", 3);
        UsualJob refret = JudgedShop.find(shop).usualJobs().get(4);
        assertThat(refret.openUsed() + refret.openLeftOut()).isZero();
        assertThat(refret.typical()).isEqualTo(refret.withoutOpen());
        shop.finished("2026-11-02");
        assertThat(JudgedShop.find(shop).usualJobs().get(4).openUsed()).isEqualTo(1);
    }

    @Test
    void meansOfAllRepairsTogetherGiveTheShopsHours() {
        Findings findings = JudgedShop.find(shop());
        double actual = 0;
        double fitted = 0;
        for (RepairFinding repair : findings.repairs()) {
            actual += repair.actualSeconds() / 3_600.0;
            fitted += repair.quotedHours()
                    * findings.usualJobs().get(repair.repairType()).mean();
        }
        assertThat(fitted).isCloseTo(actual, within(1e-6 * actual));
    }

    @Test
    void whatEachRepairLosesIsSplitIntoBookQuotesSlowerWorkAndRework() {
        Findings findings = JudgedShop.find(shop());
        for (int i = 0; i < TYPES.length; i++) {
            ShortfallParts parts = findings.shortfalls().get(i);
            assertThat(parts.book() + parts.quotes() + parts.slower() + parts.rework())
                    .isEqualTo(findings.repairs().get(i).annualShortfall());
        }
        // Pat quotes a fifth below the book on half of the jobs.
        assertThat(findings.shortfalls().get(1).quotes()).isPositive();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void aYoungShopWithAnOpenJobAndHardlyAFinishedOneIsReviewed(int finished) {
        ShopBuilder shop = new ShopBuilder().asOf("2026-02-20").type("refret", 2);
        for (int i = 0; i < finished; i++) {
            shop.ticket("F" + i).line("refret", 2 + i).logged("Ada", "1", 3);
        }
        shop.ticket("O").opened("2026-02-17").stillOpen().line("refret", 3).logged("Ada", "1", 1);
        Findings findings = JudgedShop.find(shop);
        assertThat(findings.repairs().get(0).verdict()).isEqualTo(Verdict.TOO_FEW_JOBS);
        assertThat(Double.isNaN(findings.usualJobs().get(0).typical()))
                .as("nothing is usual before a job is finished")
                .isEqualTo(finished == 0);
        UsualJob refret = findings.usualJobs().get(0);
        assertThat(refret.openUsed()).as("finished jobs do not scatter").isZero();
        assertThat(refret.openLeftOut()).isEqualTo(1);
    }

    /** Ten refrets of two quoted hours with three hours on them so far. */
    private static void openJobs(ShopBuilder shop, String prefix, String opened) {
        for (int i = 0; i < 10; i++) {
            shop.ticket(prefix + i)
                    .opened(opened)
                    .stillOpen()
                    .of("acoustic", "Olive")
                    .line("refret", 2);
            shop.logged("Ada", "1", 3);
        }
    }

    private static ShopBuilder shop() {
        return shop(SEED);
    }

    private static ShopBuilder shop(long seed) {
        Random random = new Random(seed);
        ShopBuilder shop = new ShopBuilder().asOf("2026-10-31");
        for (String type : TYPES) {
            shop.type(type, 2);
        }
        for (int i = 0; i < 600; i++) {
            int type = i % TYPES.length;
            boolean bound = random.nextInt(4) == 0;
            boolean left = random.nextInt(4) == 0;
            boolean ben = type == 3 || random.nextInt(2) == 0;
            boolean pat = random.nextInt(2) == 0;
            boolean quentin = type < 2 && i % 8 == 0;
            String opened = LocalDate.of(2025, 1, 1).plusDays(i).toString();
            double expected = 2 * (bound ? 1.3 : 1) * (ben ? 1.25 : 1);
            double hours = expected * StrictMath.exp(0.2 * random.nextGaussian());
            String technician = i >= 580 && type != 3 ? "Cleo" : ben ? "Ben" : "Ada";
            shop.ticket(String.format("T%03d", i)).opened(opened);
            shop.of("acoustic", quentin ? "Quentin" : pat ? "Pat" : "Olive", traits(bound, left));
            shop.line(TYPES[type], pat && !quentin ? 1.6 : 2);
            shop.logged(technician, "1", StrictMath.rint(100 * hours) / 100);
        }
        return shop;
    }

    private static String[] traits(boolean bound, boolean left) {
        if (bound) {
            return left ? new String[] {"bound-board", "left-handed"} : new String[] {"bound-board"};
        }
        return left ? new String[] {"left-handed"} : new String[0];
    }

    private static Settings showingPeople() {
        return new ShopSettings().people(Disclosure.SHOWN).build();
    }
}
