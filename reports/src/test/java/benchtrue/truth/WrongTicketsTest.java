package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.findings.LoadReach;
import benchtrue.sample.RewrittenLog;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where some entries are on the wrong ticket, loads are those of the tickets that the work was for. */
class WrongTicketsTest {
    private static final double SHARE = 0.08;

    @TempDir
    Path folder;

    private ScenarioTruth truth(double share, LongStream seeds) throws IOException {
        ScenarioTruth truth = new ScenarioTruth();
        for (long seed : seeds.toArray()) {
            Path shop = folder.resolve("shop-" + seed);
            truth.add(ScenarioTruth.shop(shop, seed, 1_200, RewrittenLog.mixedUp(share, seed)));
        }
        System.out.print(truth.row("on the wrong ticket " + share));
        return truth;
    }

    @Test
    void rangesHoldWhatTheWorkTakesWhereSomeEntriesAreOnTheWrongTicket() throws IOException {
        ScenarioTruth truth = truth(SHARE, LongStream.range(601, 603));
        assertThat(truth.held()).isGreaterThan(0.78);
        assertThat(truth.off()).isLessThan(0.11);
    }

    @Test
    void aLoadThatIsRaisedByTimePutBackMayStillBeWhatWasLogged() throws IOException {
        LoadReach reach = ScenarioTruth.shop(folder.resolve("mixed"), 601, 1_200, RewrittenLog.mixedUp(SHARE, 601))
                .findings()
                .reach();
        double[] least = reach.middle().clone();
        Arrays.setAll(least, type -> reach.middle()[type] * reach.lower()[type]);
        assertThat(Arrays.stream(reach.putBack()).max().orElseThrow()).isGreaterThan(1);
        assertThat(Arrays.stream(least).max().orElseThrow()).isCloseTo(1, within(1e-9));
    }

    @Test
    void aShopWithoutWrongTicketsHasNoneMoved() throws IOException {
        ScenarioTruth.Found found = ScenarioTruth.shop(folder.resolve("tidy"), 603, 1_200, entries -> {});
        assertThat(Arrays.stream(found.findings().reach().putBack()).distinct()).containsExactly(1.0);
    }

    @Test
    @Tag("proof")
    void rangesHoldWhatTheWorkTakesWhereSomeEntriesAreOnTheWrongTicketInThirtyShops() throws IOException {
        ScenarioTruth truth = truth(SHARE, LongStream.range(701, 731));
        assertThat(truth.held()).isGreaterThanOrEqualTo(0.78);
        assertThat(truth.off()).isLessThanOrEqualTo(0.095);
        assertThat(truth.falseCalls()).isLessThanOrEqualTo(truth.ranges() / 100);
    }
}
