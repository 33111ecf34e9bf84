package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.breakdown.Facts;
import benchtrue.breakdown.Figure;
import benchtrue.breakdown.ParseQuestion;
import benchtrue.breakdown.Question;
import benchtrue.calendar.PlanCalendar;
import benchtrue.findings.FindVerdicts;
import benchtrue.sample.Loads;
import benchtrue.sample.TypeTruth;
import benchtrue.settings.AskedQuestion;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import benchtrue.shop.RepairType;
import benchtrue.tables.WriteTables;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The range beside a load holds the load that the repair truly has, about as often as is promised. */
class RangesOfQuestionsTest {
    private int ranges;
    private int held;

    @Test
    void aFewShopsRangesHoldTheLoads() {
        assertThat(held(LongStream.range(901, 903), 0.6)).isGreaterThan(0.8);
    }

    /** Where most tickets are logged as a whole, the spread is that of few visits, and ranges are rather too wide. */
    @Tag("proof")
    @ParameterizedTest
    @CsvSource({"0.1, 0.87, 0.95", "0.6, 0.90, 0.98"})
    void rangesHoldTheLoadsInThirtyShops(double wholeTickets, double least, double most) {
        assertThat(held(LongStream.range(901, 931), wholeTickets)).isBetween(least, most);
    }

    private double held(LongStream seeds, double wholeTickets) {
        seeds.mapToObj(seed -> KnownShop.of(seed, VerdictTruth.shop(wholeTickets, Loads.SPREAD)))
                .forEach(this::ask);
        System.out.printf(
                Locale.ROOT,
                "90 %% ranges, %.1f of tickets as a whole: %d of %d hold the true load%n",
                wholeTickets,
                held,
                ranges);
        return held / (double) ranges;
    }

    private void ask(KnownShop shop) {
        int asOf = shop.ledger().asOf();
        Settings settings = Settings.DEFAULTS;
        Question question = new ParseQuestion(
                        new AskedQuestion(
                                "",
                                List.of("repair"),
                                "",
                                List.of(),
                                "",
                                "",
                                "",
                                List.of("range"),
                                "",
                                0,
                                Disclosure.HIDDEN,
                                0),
                        asOf,
                        Disclosure.HIDDEN)
                .parse();
        WriteTables tables = new WriteTables(
                shop.costs(),
                new PlanCalendar().plan(shop.costs(), settings),
                new FindVerdicts().find(shop.costs(), settings),
                settings);
        Map<String, Double> loads = shop.truth().types().stream()
                .collect(Collectors.toMap(type -> title(shop, type.repairType()), TypeTruth::trueLoad));
        Facts.of(tables.lines(), shop.costs().jobs().size(), List.of(question))
                .answer(question, settings.figures())
                .rows()
                .forEach(row -> hold(row.figures().get(0), loads.get(row.names().get(0))));
    }

    private static String title(KnownShop shop, String repair) {
        return shop.ledger()
                .books()
                .type(repair, shop.ledger().asOf())
                .map(RepairType::title)
                .orElse(repair);
    }

    private void hold(Figure range, double load) {
        if (!Double.isNaN(range.value())) {
            ranges++;
            held += load >= range.value() && load <= range.high() ? 1 : 0;
        }
    }
}
