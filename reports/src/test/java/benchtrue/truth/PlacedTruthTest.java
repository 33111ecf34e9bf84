package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.format.Words;
import benchtrue.hours.JobLines;
import benchtrue.hours.UnquotedWork;
import benchtrue.sample.LineTruth;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.TypeTruth;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the log says outright comes out exactly, whatever else is untidy about the shop. */
class PlacedTruthTest {
    private static TruthShop shop;
    private static JobLines jobs;

    @BeforeAll
    static void writeShop(@TempDir Path folder) {
        shop = TruthShop.of(
                SampleOptions.standard(folder.resolve("shop")).withSeed(5).withTickets(600));
        jobs = shop.jobs();
    }

    @Test
    void everyLineStandsWhereItTrulyStandsAndTheSameLinesAreJudged() {
        int judged = 0;
        for (int line = 0; line < jobs.size(); line++) {
            LineTruth truth = shop.lines()[line];
            assertThat(Words.of(jobs.state(line))).isEqualTo(truth.state());
            assertThat(jobs.judged(line)).isEqualTo(truth.judged());
            if (jobs.judged(line)) {
                judged++;
                assertThat(jobs.todayQuotedHours(line) * 3_600).isCloseTo(truth.rebasedSeconds(), within(1.0));
            }
        }
        assertThat(judged).isGreaterThan(900);
    }

    @Test
    void hoursThatPutOwnWorkRightAreFoundToTheSecond() {
        long rework =
                IntStream.range(0, jobs.size()).mapToLong(jobs::reworkSeconds).sum();
        double truth = shop.truth().types().stream()
                .mapToDouble(TypeTruth::reworkHours)
                .sum();
        assertThat(truth).isPositive();
        assertThat(rework / 3_600.0).isCloseTo(truth, within(1e-6));
    }

    @Test
    void hoursGivenAwayAreFoundToTheSecond() {
        long unquoted =
                jobs.unquoted().stream().mapToLong(UnquotedWork::seconds).sum();
        double truth = shop.truth().types().stream()
                .mapToDouble(TypeTruth::unquotedHours)
                .sum();
        assertThat(truth).isPositive();
        assertThat(unquoted / 3_600.0).isCloseTo(truth, within(1e-6));
    }
}
