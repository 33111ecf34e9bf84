package benchtrue.revision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.format.Figures;
import benchtrue.revision.SurchargeDecision.Choice;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PriceBook;
import benchtrue.shop.Refusal;
import benchtrue.shop.RepairType;
import benchtrue.shop.Surcharge;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Lines with conditions, decided for a book of one repair that has one such line. */
class NextBookTest {
    private static final int FROM = 20_500;
    private static final RepairType NUT = new RepairType(
            "nut", "Nut", "fretwork", 2L * Hours.SECONDS, 200 * Money.UNIT, Absent.AMOUNT, List.of(), Absent.AMOUNT, 0);
    private static final PriceBook BOOK = new PriceBook(FROM, Map.of("nut", NUT), List.of(line("nut", "banjo", 1)));

    private static Surcharge line(String repair, String when, int hours) {
        return new Surcharge(repair, when, (long) hours * Hours.SECONDS, 100L * hours * Money.UNIT, "Nut, on " + when);
    }

    private static List<Surcharge> decide(Surcharge line, Choice choice) {
        DecidedDraft draft = new DecidedDraft(
                "digest",
                "DECISIONS.xlsx",
                List.of(),
                List.of(new SurchargeDecision(line, choice, line.title(), new Decision.Cell("Surcharges", "F5"))),
                List.of());
        return new NextBook(BOOK, BOOK, new TreeMap<>(), Figures.of("en", "EUR"))
                .decide(draft, FROM)
                .surcharges();
    }

    @Test
    void aLineOfTheSameHoursAndPriceIsNotAdoptedAgain() {
        assertThatThrownBy(() -> decide(line("nut", "banjo", 1), Choice.TAKE))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("sheet Surcharges, cell F5")
                .hasMessageContaining("has already")
                .hasMessageContaining("each line adopted once");
    }

    @Test
    void oneOfOtherHoursTakesItsPlaceAndAnotherStandsBesideIt() {
        assertThat(decide(line("nut", "banjo", 2), Choice.OWN)).containsExactly(line("nut", "banjo", 2));
        assertThat(decide(line("nut", "bound", 1), Choice.TAKE))
                .containsExactly(line("nut", "banjo", 1), line("nut", "bound", 1));
    }

    @Test
    void aLineThatStandsIsDroppedAndOneThatDoesNotIsRefused() {
        assertThat(decide(line("nut", "banjo", 0), Choice.DROP)).isEmpty();
        assertThatThrownBy(() -> decide(line("nut", "bound", 0), Choice.DROP)).hasMessageContaining("does not have");
    }

    @Test
    void aLineWithoutHoursOrOfAnotherRepairIsRefused() {
        assertThatThrownBy(() -> decide(line("nut", "bound", 0), Choice.OWN)).hasMessageContaining("no hours");
        assertThatThrownBy(() -> decide(line("fret", "bound", 1), Choice.TAKE)).hasMessageContaining("not in the");
    }
}
