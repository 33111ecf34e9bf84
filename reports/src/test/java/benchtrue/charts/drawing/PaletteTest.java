package benchtrue.charts.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Contrast by the formula of the Web Content Accessibility Guidelines 2.2, definition of "contrast ratio". */
class PaletteTest {
    private static double channel(String code, int place) {
        double value = Integer.parseInt(code.substring(1 + 2 * place, 3 + 2 * place), 16) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }

    private static double luminance(String code) {
        return 0.2126 * channel(code, 0) + 0.7152 * channel(code, 1) + 0.0722 * channel(code, 2);
    }

    static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    @ParameterizedTest
    @EnumSource(names = {"TEXT", "MUTED", "OVER", "UNDER"})
    void wordsCanBeReadOnPaperAndOnPanels(Palette ink) {
        for (Palette under : new Palette[] {Palette.PAPER, Palette.BAND}) {
            assertThat(contrast(ink.lightCode(), under.lightCode())).isGreaterThan(4.5);
            assertThat(contrast(ink.darkCode(), under.darkCode())).isGreaterThan(4.5);
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"UNDER", "OVER", "NEUTRAL", "PROPOSED", "TEXT"})
    void marksStandOutFromPaperAndBand(Palette ink) {
        for (Palette under : new Palette[] {Palette.PAPER, Palette.BAND}) {
            assertThat(contrast(ink.lightCode(), under.lightCode())).isGreaterThan(3);
            assertThat(contrast(ink.darkCode(), under.darkCode())).isGreaterThan(3);
        }
    }

    @org.junit.jupiter.api.Test
    void theFormulaGivesItsPublishedEnds() {
        // WCAG 2.2: black on white is 21 to 1, a colour on itself 1 to 1.
        assertThat(contrast("#000000", "#ffffff")).isEqualTo(21, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(contrast("#b84a00", "#b84a00")).isEqualTo(1);
    }
}
