package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.sample.SampleOptions;
import benchtrue.sample.Slowing;
import benchtrue.sample.Tidiness;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether hours go where they truly went. */
class SplitTruthTest {
    @TempDir
    private Path folder;

    private SplitTruth split(String table, int from, int seeds, UnaryOperator<SampleOptions> change) {
        return SplitTruth.of(
                SeedTable.of(table, from, seeds),
                seed -> change.apply(SampleOptions.standard(folder.resolve(table + "-" + seed))
                        .withSeed(seed)));
    }

    @Test
    void hoursGoWhereTheyWentMoreNearlyThanByTheQuote() {
        SplitTruth truth = split("split-400", 1, 3, options -> options.withTickets(400));
        assertThat(truth.print("400 tickets").ratio()).isLessThan(0.75);
    }

    @Test
    @Tag("proof")
    void theUntidyShopsOfTwentySeedsAreSplitNearTheTruth() {
        SplitTruth truth = split("split-untidy", 1, 20, options -> options);
        assertThat(truth.print("1,200 tickets as sampled").ratio()).isLessThanOrEqualTo(0.40);
    }

    @Test
    @Tag("proof")
    void fiftySmallShopsAreSplitNearTheTruth() {
        SplitTruth truth = split(
                "split-1200",
                101,
                50,
                options -> options.with(Tidiness.TIDY).with(Slowing.NONE).withWholeTicketShare(0.6));
        assertThat(truth.print("1,200 tickets, 60 % whole").ratio()).isLessThanOrEqualTo(0.40);
        assertThat(truth.ratioOfAll()).isLessThanOrEqualTo(0.53);
    }

    @Test
    @Tag("proof")
    void fiftyLargeShopsAreSplitNearTheTruth() {
        SplitTruth truth = split(
                "split-12000",
                101,
                50,
                options -> options.with(Tidiness.TIDY)
                        .with(Slowing.NONE)
                        .withTickets(12_000)
                        .withWholeTicketShare(0.8));
        assertThat(truth.print("12,000 tickets, 80 % whole").ratio()).isLessThanOrEqualTo(0.15);
        assertThat(truth.ratioOfAll()).isLessThanOrEqualTo(0.17);
    }

    @Test
    @Tag("proof")
    void aShopThatNeverNamesALineIsSplitBetterThanByTheQuote() {
        SplitTruth truth = split(
                "split-whole", 201, 10, options -> options.with(Slowing.NONE).withWholeTicketShare(1));
        assertThat(truth.print("1,200 tickets, no line of several named").ratio())
                .isLessThanOrEqualTo(0.45);
    }
}
