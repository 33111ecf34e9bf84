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
import org.junit.jupiter.api.Test;

/** Where hours beyond the quote lie, and what is said of them. */
class CausesTest {
    private static final Settings SHOWN =
            new ShopSettings().people(Disclosure.SHOWN).build();

    /** How long the jobs of a ticket take against others. */
    private interface Times {
        double of(int ticket, String instrument, String technician);
    }

    /** Ninety nuts and ninety setups in three years, by three hands, on three classes of instrument. */
    private static ShopBuilder shop(Times nuts) {
        ShopBuilder shop = new ShopBuilder().type("nut", 2).type("setup", 1.5, "setup");
        Random random = new Random(5);
        for (int i = 0; i < 180; i++) {
            String instrument = List.of("flat-top", "banjo", "archtop").get(random.nextInt(9) / 4);
            String technician = List.of("Ada", "Bo", "Cy").get(random.nextInt(3));
            double noise = Math.exp(0.2 * random.nextGaussian());
            boolean nut = i % 2 == 0;
            shop.ticket(String.format("T%03d", i))
                    .opened(LocalDate.of(2023, 10, 1).plusDays(6L * i).toString())
                    .of(instrument, random.nextBoolean() ? "Ada" : "Di")
                    .line(nut ? "nut" : "setup", nut ? 2 : 1.5)
                    .logged(technician, "1", (nut ? 2 * nuts.of(i, instrument, technician) : 1.5) * noise);
        }
        return shop;
    }

    private static List<Cause> nuts(Findings findings) {
        return findings.causes().stream()
                .filter(cause -> cause.repairType() == 0)
                .toList();
    }

    private static String why(Findings findings) {
        return findings.repairs().get(0).why().replace('\u00a0', ' ');
    }

    @Test
    void aClassThatTakesTwiceAsLongIsNamedWithItsSizeAndRemedy() {
        Findings found = JudgedShop.find(shop((ticket, instrument, who) -> instrument.equals("banjo") ? 2 : 1), SHOWN);
        assertThat(nuts(found)).singleElement().satisfies(cause -> {
            assertThat(cause.kind()).isEqualTo(Cause.Kind.INSTRUMENT_CLASS);
            assertThat(cause.value()).isEqualTo("banjo");
            assertThat(cause.size()).isCloseTo(2, within(0.25));
            assertThat(cause.sizeLower()).isLessThan(2);
            assertThat(cause.sizeUpper()).isGreaterThan(2);
            assertThat(cause.annualEffect()).isPositive();
        });
        assertThat(why(found))
                .contains("the excess lies with the jobs on banjo instruments", "times as long as the others")
                .contains("a line of its own for them, the others' price stays");
        assertThat(found.leftOut())
                .singleElement()
                .satisfies(out -> assertThat(out.load())
                        .isCloseTo(1 / found.repairs().get(0).loadFactor(), within(0.06)));
    }

    /** Two tickets of three are logged as wholes; a split that knows no cause deals part of a banjo's excess to the others. */
    @Test
    void groupsThatAreDrawnTakeWhatIsSaidOfThem() {
        ShopBuilder shop = new ShopBuilder().type("nut", 2).type("setup", 1.5, "setup");
        Random random = new Random(6);
        for (int i = 0; i < 240; i++) {
            boolean banjo = random.nextInt(4) == 0;
            double nut = (banjo ? 4 : 2) * Math.exp(0.2 * random.nextGaussian());
            double setup = 1.5 * Math.exp(0.2 * random.nextGaussian());
            shop.ticket(String.format("T%03d", i))
                    .opened(LocalDate.of(2023, 10, 1).plusDays(4L * i).toString())
                    .of(banjo ? "banjo" : "flat-top", "Ada")
                    .line("nut", 2)
                    .line("setup", 1.5);
            if (i % 3 == 0) {
                shop.logged("Ada", "1", nut).logged("Ada", "2", setup);
            } else {
                shop.whole("Ada", nut + setup);
            }
        }
        assertThat(nuts(JudgedShop.find(shop))).singleElement().satisfies(cause -> {
            Cause.Group banjos = cause.groups().get(0);
            Cause.Group others = cause.groups().get(1);
            assertThat(banjos.loadFactor()).isCloseTo(2, within(0.1));
            assertThat(others.loadFactor()).isCloseTo(1, within(0.03));
            assertThat(banjos.loadFactor() / others.loadFactor()).isCloseTo(cause.size(), within(0.1));
        });
    }

    @Test
    void aPersonIsNamedOnlyWhereTheShopWantsIt() {
        ShopBuilder shop = shop((ticket, instrument, who) -> who.equals("Bo") ? 2 : 1);
        Findings shown = JudgedShop.find(shop, SHOWN);
        assertThat(nuts(shown)).singleElement().extracting(Cause::value).isEqualTo("Bo");
        Findings hidden = JudgedShop.find(shop);
        assertThat(nuts(hidden)).singleElement().satisfies(cause -> {
            assertThat(cause.kind()).isEqualTo(Cause.Kind.FEW_HANDS);
            assertThat(cause.value() + cause.label()).isEmpty();
            assertThat(cause.jobs()).isZero();
            assertThat(cause.loadFactor()).isNaN();
        });
        assertThat(why(hidden))
                .contains("the excess lies with few hands; figures about people are off; training, tools, who gets such"
                        + " jobs or how they are quoted, not the price")
                .doesNotContain("Bo");
        assertThat(hidden.leftOut()).singleElement().extracting(LeftOut::words).isEqualTo("that lie with few hands");
        assertThat(hidden.leftOut().get(0).load())
                .isEqualTo(shown.leftOut().get(0).load());
    }

    @Test
    void whatAllJobsShareIsThePrice() {
        Findings found = JudgedShop.find(shop((ticket, instrument, who) -> 1.5));
        assertThat(nuts(found)).singleElement().extracting(Cause::kind).isEqualTo(Cause.Kind.SPREAD);
        assertThat(found.leftOut()).isEmpty();
        assertThat(why(found)).contains("spread over all of them: the price");
    }

    @Test
    void nothingIsNamedWhereNothingDiffers() {
        Findings found = JudgedShop.find(shop((ticket, instrument, who) -> 1), SHOWN);
        assertThat(found.causes()).allMatch(cause -> cause.kind().compareTo(Cause.Kind.SPREAD) >= 0);
    }

    @Test
    void aRecentExcessIsWatchedWithItsStart() {
        Findings found = JudgedShop.find(shop((ticket, instrument, who) -> ticket >= 140 ? 2 : 1), SHOWN);
        assertThat(nuts(found)).singleElement().satisfies(cause -> {
            assertThat(cause.kind()).isEqualTo(Cause.Kind.PERIOD);
            assertThat(cause.remedy()).startsWith("watch it since");
        });
    }

    /** A nut that takes twice as long on banjos, always done with a setup and logged with it as a whole. */
    @Test
    void whatOnlyWholeTicketsHoldCannotBeTold() {
        ShopBuilder shop = new ShopBuilder().type("nut", 2).type("setup", 1.5, "setup");
        Random random = new Random(6);
        for (int i = 0; i < 80; i++) {
            boolean banjo = random.nextInt(4) == 0;
            double hours = (banjo ? 5.5 : 3.5) * Math.exp(0.2 * random.nextGaussian());
            shop.ticket(String.format("T%03d", i))
                    .of(banjo ? "banjo" : "flat-top", "")
                    .line("nut", 2)
                    .line("setup", 1)
                    .whole("Ada", hours);
        }
        Findings found = JudgedShop.find(shop, SHOWN);
        assertThat(found.causes()).allMatch(cause -> cause.kind().compareTo(Cause.Kind.SPREAD) >= 0);
        assertThat(nuts(found)).singleElement().extracting(Cause::kind).isEqualTo(Cause.Kind.UNKNOWN);
        assertThat(why(found)).contains("too few jobs have hours of their own to tell where it lies");
    }
}
