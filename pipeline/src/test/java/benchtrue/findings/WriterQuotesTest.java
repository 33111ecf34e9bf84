package benchtrue.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import benchtrue.ShopSettings;
import benchtrue.settings.Disclosure;
import org.junit.jupiter.api.Test;

/** What writers' quotes came to. */
class WriterQuotesTest {
    /** Forty tickets a writer, of three kinds; Di quotes at nine tenths of the book and forgets a cleaning now and then. */
    private static ShopBuilder shop() {
        ShopBuilder shop =
                new ShopBuilder().type("nut", 2).type("setup", 2, "setup").type("refret", 10);
        String[] types = {"nut", "setup", "refret"};
        for (int i = 0; i < 80; i++) {
            String type = types[i % 3];
            double book = type.equals("refret") ? 10 : 2;
            boolean di = i % 2 == 0;
            shop.ticket(String.format("T%03d", i))
                    .of("flat-top", di ? "Di" : "Ada")
                    .line(type, di ? 0.9 * book : book)
                    .logged("Bo", "1", book * (1 + 0.01 * (i % 5)));
            if (di && i % 10 == 0) {
                shop.did("Bo", type.equals("setup") ? "nut" : "setup", 0.5);
            }
        }
        return shop;
    }

    @Test
    void quoteAgainstBookAgainstTakenStandsByWriterAndFamily() {
        Findings found = JudgedShop.find(
                shop(), new ShopSettings().people(Disclosure.SHOWN).build());
        assertThat(found.writers())
                .extracting(row -> row.writer() + " " + row.family())
                .containsExactly("Ada fretwork", "Ada setup", "Di fretwork", "Di setup");
        WriterQuotes di = found.writers().get(2);
        assertThat(di.quotedOverBook()).isCloseTo(0.9, within(1e-3));
        assertThat(di.load()).isCloseTo(1.02 / 0.9, within(0.01)).isBetween(di.lower(), di.upper());
        assertThat(di.belowBook()).isPositive();
        assertThat(found.writers().stream()
                        .filter(row -> row.writer().equals("Di"))
                        .mapToDouble(WriterQuotes::unquotedHours)
                        .sum())
                .isCloseTo(4, within(1e-9));
    }

    @Test
    void nothingIsToldWhileFiguresAboutPeopleAreOff() {
        assertThat(JudgedShop.find(shop()).writers()).isEmpty();
    }
}
