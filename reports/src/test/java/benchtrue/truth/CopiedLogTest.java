package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.sample.RewrittenLog.Entry;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a third of the tickets are logged as they were quoted, the ranges still hold what the work takes. */
class CopiedLogTest {
    private static final double SHARE = 0.35;
    private static final int QUOTED = 3;
    private static final int OUTCOME = 6;

    @TempDir
    Path folder;

    /** Scales the entries of some tickets so that they come to the quote. */
    private static void copy(Path shop, List<Entry> entries, long seed) {
        Map<String, BigDecimal> quoted = quoted(shop);
        SplittableRandom random = new SplittableRandom(seed);
        Map<String, List<Entry>> byTicket = new TreeMap<>();
        entries.forEach(entry -> byTicket.computeIfAbsent(entry.ticket(), key -> new ArrayList<>())
                .add(entry));
        byTicket.forEach((ticket, of) -> {
            if (random.nextDouble() < SHARE
                    && quoted.getOrDefault(ticket, BigDecimal.ZERO).signum() > 0) {
                scale(of, quoted.get(ticket));
            }
        });
    }

    private static Map<String, BigDecimal> quoted(Path shop) {
        Map<String, BigDecimal> quoted = new HashMap<>();
        try (Stream<String> rows = Files.lines(shop.resolve("exports/quoted-lines.csv"))) {
            rows.skip(1)
                    .map(row -> row.split(",", -1))
                    .filter(cells -> !cells[OUTCOME].equals("declined"))
                    .forEach(cells -> quoted.merge(cells[0], new BigDecimal(cells[QUOTED]), BigDecimal::add));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return quoted;
    }

    private static void scale(List<Entry> entries, BigDecimal total) {
        double logged = entries.stream().mapToDouble(Entry::hours).sum();
        BigDecimal left = total;
        for (Entry entry : entries.subList(1, entries.size())) {
            BigDecimal part = BigDecimal.valueOf(entry.hours() * total.doubleValue() / logged)
                    .setScale(2, RoundingMode.HALF_EVEN);
            entry.hours(part);
            left = left.subtract(part);
        }
        entries.get(0).hours(left);
    }

    @Test
    void rangesHoldWhatTheWorkTakesWhereAThirdIsCopied() throws IOException {
        hold(LongStream.range(91, 93), 1_000, 0.7);
    }

    @Test
    @Tag("proof")
    void rangesHoldWhatTheWorkTakesWhereAThirdIsCopiedInThirtyShops() throws IOException {
        hold(LongStream.range(301, 331), 1_200, 0.80);
    }

    private void hold(LongStream seeds, int tickets, double least) throws IOException {
        ScenarioTruth truth = new ScenarioTruth();
        for (long seed : seeds.toArray()) {
            Path shop = folder.resolve("shop-" + seed);
            truth.add(ScenarioTruth.shop(shop, seed, tickets, entries -> copy(shop, entries, seed)));
        }
        String found = truth.row("a third copied");
        System.out.print(found);
        assertThat(truth.held()).as(found).isGreaterThan(least);
        assertThat(truth.falseCalls()).as(found).isLessThanOrEqualTo(truth.ranges() / 50);
    }
}
