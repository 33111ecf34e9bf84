package benchtrue.revision;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.findings.Driver;
import benchtrue.revision.ProposeRevision.DraftSurcharges;
import benchtrue.settings.Settings;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import java.util.List;
import org.junit.jupiter.api.Test;

class DraftSurchargesTest {
    private static final long RATE = 96 * Money.UNIT;

    private static Driver driver(String trait, double p, double hours, double lower, double upper) {
        return new Driver("fretwork", trait, 40, 160, 1.2, 1.1, 1.3, p, hours, lower, upper);
    }

    private static List<SurchargeLine> lines(Driver... drivers) {
        return DraftSurcharges.of(List.of(drivers), RATE, Settings.DEFAULTS);
    }

    @Test
    void aTraitThatSurelyTakesLongerBecomesALineOnTheGridOfTheBookAtTheShopRate() {
        List<SurchargeLine> lines = lines(driver("bound-board", 0.001, 1.33, 0.9, 1.7));
        assertThat(lines)
                .containsExactly(new SurchargeLine(
                        "fretwork", "bound-board", 40, 13 * Hours.SECONDS / 10, 125 * Money.UNIT, 0.9, 1.7));
    }

    @Test
    void whatChanceCouldDoOrTakesTimeOffOrHardlyAnyBecomesNone() {
        assertThat(lines(
                        driver("twelve-string", 0.2, 1.3, 0.1, 2.5),
                        driver("lacquer-finish", 0.01, 1.3, -0.1, 2.7),
                        driver("archtop", 0.01, -0.8, -1.2, -0.4),
                        driver("left-handed", 0.01, 0.04, 0.02, 0.06)))
                .isEmpty();
    }
}
