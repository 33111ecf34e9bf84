package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.sample.RewrittenLog;
import benchtrue.sample.RewrittenLog.Entry;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where entries are rounded, ranges still hold what the work takes and no verdict is firm that rounding could have made. */
class LoggedOtherwiseTest {
    @TempDir
    Path folder;

    private Path shops;

    private ScenarioTruth truth(String name, LongStream seeds, LongFunction<Consumer<List<Entry>>> log)
            throws IOException {
        ScenarioTruth truth = new ScenarioTruth();
        shops = Files.createTempDirectory(folder, "shops");
        for (long seed : seeds.toArray()) {
            truth.add(ScenarioTruth.shop(shops.resolve("shop-" + seed), seed, 1_200, log.apply(seed)));
        }
        System.out.print(truth.row(name));
        return truth;
    }

    /** Hours paid tell how entries were rounded; without them nothing does. */
    private Consumer<List<Entry>> withoutPaidHours(long seed, Consumer<List<Entry>> log) {
        return entries -> {
            log.accept(entries);
            try {
                Files.delete(shops.resolve("shop-" + seed).resolve("exports/paid-hours.csv"));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        };
    }

    @ParameterizedTest
    @CsvSource({"0.5, CEILING", "0.5, HALF_UP"})
    void aFewShopsRangesHoldWhateverTheRounding(String step, RoundingMode mode) throws IOException {
        ScenarioTruth truth =
                truth(mode + " to " + step, LongStream.range(401, 403), seed -> RewrittenLog.rounded(step, mode));
        assertThat(truth.held()).isGreaterThan(0.75);
        assertThat(truth.underBelowOne()).isZero();
    }

    @Test
    void whatRoundingUpAddsToShortRepairsIsTakenOffThemOnSharedTicketsToo() throws IOException {
        ScenarioTruth.Found found = ScenarioTruth.shop(
                folder.resolve("shop-526"), 526, 1_200, RewrittenLog.rounded("0.5", RoundingMode.CEILING));
        assertThat(ScenarioTruth.beyondReach(found)).isLessThan(0.025);
    }

    /** In one of the shops a repair was so unlucky that it reads "under" as worked too; rounding may not add to that. */
    @Tag("proof")
    @ParameterizedTest
    @CsvSource({
        "0.1, CEILING, 0.40",
        "0.1, HALF_UP, 0.40",
        "0.25, CEILING, 0.35",
        "0.25, HALF_UP, 0.35",
        "0.5, CEILING, 0.30",
        "0.5, HALF_UP, 0.30"
    })
    void rangesHoldWhateverTheRoundingInThirtyShops(String step, RoundingMode mode, double power) throws IOException {
        LongFunction<Consumer<List<Entry>>> log = seed -> RewrittenLog.rounded(step, mode);
        ScenarioTruth paid = truth(mode + " to " + step, LongStream.range(501, 531), log);
        ScenarioTruth untold = truth(
                mode + " to " + step + ", no hours paid",
                LongStream.range(531, 561),
                seed -> withoutPaidHours(seed, log.apply(seed)));
        assertThat(Math.min(paid.held(), untold.held())).isGreaterThanOrEqualTo(0.80);
        int byChance = truth("the same, as worked", LongStream.range(501, 531), seed -> entries -> {})
                .underBelowOne();
        assertThat(paid.underBelowOne()).as("under by rounding").isLessThanOrEqualTo(byChance);
        assertThat(untold.underBelowOne()).isZero();
        assertThat(paid.power()).isGreaterThan(power);
    }

    @Tag("proof")
    @Test
    void rangesHoldWhereTimeIsWrittenAsWorkedInThirtyShops() throws IOException {
        ScenarioTruth truth = truth("as worked", LongStream.range(501, 531), seed -> entries -> {});
        assertThat(truth.held()).isBetween(0.86, 0.94);
        assertThat(truth.falseCalls()).isLessThanOrEqualTo(truth.ranges() / 100);
    }
}
