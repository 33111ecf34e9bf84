package benchtrue.hours;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.settings.Settings;
import org.junit.jupiter.api.Test;

/** What the split learns of a shop whose hours were made by known rules. */
class FitEffectsTest {
    private static JobLines split(KnownShop shop) {
        return new SplitHours().split(shop.build().build(), Settings.DEFAULTS);
    }

    private static double meanExpectedOverBook(JobLines jobs, String type, String instrument, String technician) {
        int code = jobs.ledger().repairTypes().code(type);
        int who = jobs.ledger().technicians().code(technician);
        double sum = 0;
        int lines = 0;
        for (int line = 0; line < jobs.size(); line++) {
            int ticket = jobs.ledger().lines().ticket(line);
            if (jobs.ledger().lines().repairType(line) == code
                    && jobs.mainTechnician(line) == who
                    && jobs.ledger().tickets().instrumentClass(ticket).equals(instrument)) {
                sum += jobs.expectedHours(line) * 3_600 / jobs.bookSecondsThen(line);
                lines++;
            }
        }
        return sum / lines;
    }

    @Test
    void expectedHoursFollowTypePersonAndInstrument() {
        JobLines jobs = split(new KnownShop(2, 900).vintage(1.25));
        double crack = meanExpectedOverBook(jobs, "crack", "modern", "bob");
        assertThat(crack).isCloseTo(1.3, within(0.09));
        assertThat(meanExpectedOverBook(jobs, "crack", "modern", "cat") / crack).isCloseTo(1.2, within(0.06));
        assertThat(meanExpectedOverBook(jobs, "crack", "vintage", "bob") / crack)
                .isCloseTo(1.25, within(0.06));
    }

    @Test
    void hoursFollowAQuoteAwayFromTheBookOnlyPartly() {
        JobLines jobs = split(new KnownShop(3, 900));
        // The rounding of quotes to quarter hours hides part of the 0.6.
        assertThat(jobs.basis().quoteSlope()).isBetween(0.35, 0.7);
    }

    @Test
    void theFixedTimeOfAVisitIsFoundWhereThereIsSome() {
        JobLines jobs = split(new KnownShop(4, 600).visitHours(0.5));
        assertThat(jobs.basis().visitHours()).isCloseTo(0.5, within(0.15));
    }

    @Test
    void noFixedTimeOfAVisitIsMadeUp() {
        for (int seed = 10; seed < 16; seed++) {
            assertThat(split(new KnownShop(seed, 400)).basis().visitHours()).isZero();
        }
    }

    @Test
    void techniciansWhoNameALineWithAllItsHoursAreFoundOut() {
        KnownShop shop = new KnownShop(5, 300);
        var builder = shop.build();
        for (int i = 0; i < 80; i++) {
            builder.ticket("p" + i)
                    .line("crack", 2.5)
                    .line("nut", 1.75)
                    .line("setup", 1.25)
                    .logged("bob", "1", 2 + i % 7 * 0.4)
                    .whole("bob", 3 + i % 5 * 0.1);
        }
        JobLines jobs = new SplitHours().split(builder.build(), Settings.DEFAULTS);
        assertThat(jobs.basis().namedRest()).isLessThan(0.1);
        long rest = 0;
        for (int line = 0; line < jobs.size(); line++) {
            rest += jobs.evidence(line) == SplitEvidence.PARTLY_SPLIT ? jobs.splitSeconds(line) : 0;
        }
        assertThat(rest / 3_600.0).isLessThan(0.05 * 80 * 3.2);
    }

    @Test
    void aShopOfOneTicketIsSplitByItsQuotes() {
        KnownShop none = new KnownShop(6, 0);
        JobLines jobs = new SplitHours()
                .split(
                        none.build()
                                .ticket("only")
                                .line("refret", 9)
                                .line("setup", 1.25)
                                .whole("ann", 10)
                                .build(),
                        Settings.DEFAULTS);
        assertThat(jobs.actualSeconds(0) + jobs.actualSeconds(1)).isEqualTo(36_000);
        assertThat(jobs.actualSeconds(0) / 3_600.0).isBetween(8.5, 9.1);
    }

    @Test
    void aShopWithoutAnyTimeIsSplitIntoNothing() {
        JobLines jobs = new SplitHours()
                .split(
                        new KnownShop(7, 0)
                                .build()
                                .ticket("only")
                                .line("setup", 1)
                                .build(),
                        Settings.DEFAULTS);
        assertThat(jobs.actualSeconds(0)).isZero();
        assertThat(jobs.model().loads(new double[] {1})).containsOnly(Double.NaN);
    }
}
