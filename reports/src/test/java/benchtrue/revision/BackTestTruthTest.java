package benchtrue.revision;

import static benchtrue.revision.PastMethod.KEEP_THE_BOOK;
import static benchtrue.revision.PastMethod.PLAIN_AVERAGE;
import static benchtrue.revision.PastMethod.PROPOSAL;
import static benchtrue.revision.PastMethod.UNPOOLED_MEDIAN;
import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.sample.Loads;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Slowing;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.statistics.Moments;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Proposals and rivals against the true hours of invented shops of 1,200 tickets; prints the table. They are held against each
 * other by what the rule is tried by, the loss per quoted hour; what that does to the loss in hours, where few long jobs decide and
 * shops differ as much as the gain is large, is asked of all shops together. The share of all seeds to run
 * is the system property {@code truth.share}, 1 where it is not set.
 */
@Tag("proof")
class BackTestTruthTest {
    private static final int SHOPS =
            (int) StrictMath.max(1, StrictMath.rint(50 * Double.parseDouble(System.getProperty("truth.share", "1"))));

    @TempDir
    Path folder;

    @Test
    void theProposalBeatsSimplerRulesOnTheHoursThatJobsTrulyTook() {
        List<PastTruth> shops = shops(1, Loads.SPREAD, PastTruth.settings(Policy.Rule.LARGER, 0.60));
        System.out.printf(Locale.ROOT, "spread loads, %d shops of 1,200 tickets, larger of mean and 60 %%%n", SHOPS);
        double book = row("keep-the-book", shops, KEEP_THE_BOOK);
        double average = row("plain-average", shops, PLAIN_AVERAGE);
        double median = row("unpooled-median", shops, UNPOOLED_MEDIAN);
        double railed = mean(shops.stream()
                .map(shop -> shop.railedBetter(PROPOSAL, PLAIN_AVERAGE))
                .toList());
        System.out.printf(
                Locale.ROOT,
                "railed proposal against plain average railed alike: %.2f %% less loss, better in %.0f %% of shops%n",
                100 * railed,
                100
                        * won(shops.stream()
                                .map(shop -> shop.railedBetter(PROPOSAL, PLAIN_AVERAGE))
                                .toList()));
        assertThat(book).isGreaterThanOrEqualTo(0.98);
        assertThat(average).isGreaterThanOrEqualTo(0.90);
        assertThat(median).isGreaterThanOrEqualTo(0.95);
        assertThat(railed).isPositive();
    }

    /** Prints how the proposal did against a rival; returns in what share of the shops it truly did better. */
    private static double row(String name, List<PastTruth> shops, PastMethod rival) {
        List<Double> truly =
                shops.stream().map(shop -> shop.better(PROPOSAL, rival)).toList();
        List<Double> estimated =
                shops.stream().map(shop -> shop.estimated(PROPOSAL, rival)).toList();
        List<Double> inHours =
                shops.stream().map(shop -> shop.betterInHours(PROPOSAL, rival)).toList();
        System.out.printf(
                Locale.ROOT,
                "%-16s true hours: %6.2f %% less loss, better in %3.0f %% of shops; from the records: %6.2f %% less, %3.0f %%;"
                        + " loss in hours: %6.2f %% less, %3.0f %%%n",
                name,
                100 * mean(truly),
                100 * won(truly),
                100 * mean(estimated),
                100 * won(estimated),
                100 * mean(inHours),
                100 * won(inHours));
        assertThat(mean(inHours)).as("loss in hours against " + name).isGreaterThan(2 * error(inHours));
        assertThat(StrictMath.signum(mean(estimated)))
                .as("the back-test's own estimate against " + name)
                .isEqualTo(StrictMath.signum(mean(truly)));
        return won(truly);
    }

    @Test
    void theShareThatFitsIsTheShareAskedFor() {
        List<PastTruth> shops = shops(1, Loads.SPREAD, PastTruth.settings(Policy.Rule.COVERAGE, 0.60));
        double coverage = mean(
                shops.stream().map(shop -> shop.raw().get(PROPOSAL).coverage()).toList());
        double bias = mean(
                shops.stream().map(shop -> shop.raw().get(PROPOSAL).hoursBias()).toList());
        System.out.printf(
                Locale.ROOT,
                "coverage policy at 60 %%, %d shops: %.1f %% of jobs truly fit, %.1f %% by the records; hours bias %.3f%n",
                SHOPS,
                100 * coverage,
                100
                        * mean(shops.stream()
                                .map(shop -> shop.estimate().total(PROPOSAL).coverage())
                                .toList()),
                bias);
        assertThat(coverage).isBetween(0.57, 0.63);
    }

    @Test
    void whereEveryQuoteIsRightTheProposalDoesLittleHarm() {
        List<PastTruth> shops = shops(1, Loads.EXACTLY_ONE, PastTruth.settings(Policy.Rule.LARGER, 0.60));
        List<Double> better = shops.stream()
                .map(shop -> shop.railedBetter(PROPOSAL, KEEP_THE_BOOK))
                .toList();
        System.out.printf(
                Locale.ROOT,
                "every load 1, %d shops: rounded proposal loses %.2f %% less than the book on average, %.2f %% in the worst shop%n",
                SHOPS,
                100 * mean(better),
                100 * better.stream().min(Double::compare).orElseThrow());
        assertThat(mean(better)).isGreaterThanOrEqualTo(-0.01);
    }

    @ParameterizedTest
    @CsvSource({
        "COVERAGE, NONE, 0.020",
        "BREAK_EVEN, NONE, 0.020",
        "LARGER, NONE, 0.020",
        "COVERAGE, SLIGHT, 0.025",
        "LARGER, SLIGHT, 0.025"
    })
    void noRuleMissesMuchMoreThanWhoKnowsTheTruth(Policy.Rule rule, Slowing slowing, double most) {
        List<PastTruth> shops = shops(5_001, Loads.SPREAD, slowing, PastTruth.settings(rule, 0.60));
        List<Double> beyond = shops.stream().map(PastTruth::beyondTheOracle).toList();
        List<Double> late = shops.stream().map(PastTruth::overTwoYears).toList();
        System.out.printf(
                Locale.ROOT,
                "%s at 60 %%, slower repair %s, %d shops: loss of hours per quoted hour %.2f %% above the oracle's, %.2f %%"
                        + " after two years of records, hours-weighted %.2f %%; %.1f %% fit,"
                        + " oracle %.1f %%; hours bias %.3f, oracle %.3f%n",
                rule,
                slowing,
                SHOPS,
                100 * mean(beyond),
                100 * mean(late),
                100 * mean(shops.stream().map(PastTruth::hoursBeyondTheOracle).toList()),
                100
                        * mean(shops.stream()
                                .map(shop -> shop.raw().get(PROPOSAL).coverage())
                                .toList()),
                100 * mean(shops.stream().map(shop -> shop.oracle().coverage()).toList()),
                mean(shops.stream()
                        .map(shop -> shop.raw().get(PROPOSAL).hoursBias())
                        .toList()),
                mean(shops.stream().map(shop -> shop.oracle().hoursBias()).toList()));
        assertThat(mean(beyond)).isLessThan(0.025);
        assertThat(mean(late)).isLessThan(most);
    }

    private List<PastTruth> shops(long first, Loads loads, Settings settings) {
        return shops(first, loads, Slowing.SLIGHT, settings);
    }

    private List<PastTruth> shops(long first, Loads loads, Slowing slowing, Settings settings) {
        List<PastTruth> shops = new ArrayList<>();
        for (long seed = first; seed < first + SHOPS; seed++) {
            SampleOptions options = SampleOptions.standard(folder.resolve("shop-" + seed))
                    .withSeed(seed)
                    .with(loads)
                    .with(slowing);
            shops.add(PastTruth.of(options, settings));
        }
        return shops;
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    private static double error(List<Double> values) {
        Moments moments =
                Moments.of(values.stream().mapToDouble(Double::doubleValue).toArray());
        return moments.standardDeviation() / StrictMath.sqrt(values.size());
    }

    private static double won(List<Double> values) {
        return values.stream().filter(value -> value > 0).count() / (double) values.size();
    }
}
