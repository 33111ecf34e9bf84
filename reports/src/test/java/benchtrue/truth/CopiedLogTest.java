package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.findings.FindVerdicts;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.hours.SplitHours;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Tidiness;
import benchtrue.sample.Truth;
import benchtrue.sample.WriteSample;
import benchtrue.settings.Settings;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a third of the tickets are logged as they were quoted, the ranges still hold what the work takes. */
class CopiedLogTest {
    private static final double SHARE = 0.35;
    private static final int TICKET = 1;
    private static final int HOURS = 6;
    private static final int QUOTED = 3;
    private static final int OUTCOME = 6;

    @TempDir
    Path folder;

    private Truth shop(Path shop, long seed, int tickets) throws IOException {
        Truth truth = WriteSample.write(
                SampleOptions.standard(shop).withSeed(seed).withTickets(tickets).with(Tidiness.TIDY));
        Map<String, BigDecimal> quoted = new HashMap<>();
        for (String row : tail(Files.readAllLines(shop.resolve("exports/quoted-lines.csv")))) {
            String[] cells = row.split(",", -1);
            if (!cells[OUTCOME].equals("declined")) {
                quoted.merge(cells[0], new BigDecimal(cells[QUOTED]), BigDecimal::add);
            }
        }
        Path log = shop.resolve("exports/time-log.csv");
        List<String> rows = Files.readAllLines(log);
        List<String> copied = new ArrayList<>(rows.subList(0, 1));
        copied.addAll(copy(tail(rows), quoted, new SplittableRandom(seed)));
        Files.write(log, copied);
        return truth;
    }

    private static List<String> tail(List<String> rows) {
        return rows.subList(1, rows.size());
    }

    /** Scales the entries of some tickets so that they come to the quote. */
    private static List<String> copy(List<String> rows, Map<String, BigDecimal> quoted, SplittableRandom random) {
        Map<String, List<String[]>> byTicket = new HashMap<>();
        List<String[]> all = rows.stream().map(row -> row.split(",", -1)).toList();
        all.stream()
                .filter(cells -> !cells[HOURS].isEmpty())
                .forEach(cells -> byTicket.computeIfAbsent(cells[TICKET], key -> new ArrayList<>())
                        .add(cells));
        byTicket.keySet().stream().sorted().forEach(ticket -> {
            if (random.nextDouble() < SHARE
                    && quoted.getOrDefault(ticket, BigDecimal.ZERO).signum() > 0) {
                scale(byTicket.get(ticket), quoted.get(ticket));
            }
        });
        return all.stream().map(cells -> String.join(",", cells)).toList();
    }

    private static void scale(List<String[]> entries, BigDecimal total) {
        double logged = entries.stream()
                .mapToDouble(cells -> Double.parseDouble(cells[HOURS]))
                .sum();
        BigDecimal left = total;
        for (String[] cells : entries.subList(1, entries.size())) {
            BigDecimal part = BigDecimal.valueOf(Double.parseDouble(cells[HOURS]) * total.doubleValue() / logged)
                    .setScale(2, RoundingMode.HALF_EVEN);
            cells[HOURS] = part.toPlainString();
            left = left.subtract(part);
        }
        entries.get(0)[HOURS] = left.toPlainString();
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
        int held = 0;
        int ranges = 0;
        int wrong = 0;
        double bias = 0;
        for (long seed : seeds.toArray()) {
            Path shop = folder.resolve("shop-" + seed);
            Truth truth = shop(shop, seed, tickets);
            CostedLines costs = new CostLines()
                    .cost(new SplitHours().split(TruthShop.ledger(shop), Settings.DEFAULTS), Settings.DEFAULTS);
            for (RepairFinding finding :
                    new FindVerdicts().find(costs, Settings.DEFAULTS).repairs()) {
                String key = costs.jobs().ledger().repairTypes().name(finding.repairType());
                if (finding.lines() >= 20 && !Double.isNaN(finding.lower()) && !key.equals(truth.slowType())) {
                    double load = truth.type(key).trueLoad();
                    ranges++;
                    held += load >= finding.lower() && load <= finding.upper() ? 1 : 0;
                    bias += Math.log(Math.sqrt(finding.lower() * finding.upper()) / load);
                    wrong += finding.verdict() == Verdict.UNDER_QUOTED && load < 1
                                    || finding.verdict() == Verdict.OVER_QUOTED && load > 1
                            ? 1
                            : 0;
                }
            }
        }
        String found = String.format(
                Locale.ROOT,
                "%.3f of %d ranges hold today's load, mean bias of ln load %+.3f, %d false calls",
                held / (double) ranges,
                ranges,
                bias / ranges,
                wrong);
        System.getLogger("benchtrue").log(System.Logger.Level.INFO, found);
        assertThat(held / (double) ranges).as(found).isGreaterThan(least);
        assertThat(wrong).as(found).isLessThanOrEqualTo(ranges / 50);
    }
}
