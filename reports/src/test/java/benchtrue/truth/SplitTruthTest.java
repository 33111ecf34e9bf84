package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.hours.InseparablePair;
import benchtrue.hours.JobLines;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Slowing;
import benchtrue.sample.Tidiness;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether hours go where they truly went: the sum over repair types of |split load factor - realised load factor|. */
class SplitTruthTest {
    @TempDir
    private Path folder;

    /** Sums of errors over shops, by way of splitting. */
    private static final class Errors {
        private double ours;
        private double proRata;
        private double proRataToTheRest;
        private double plainEm;
        private double oracle;
        private int types;
        private final TreeSet<String> leftOut = new TreeSet<>();

        void add(TruthShop shop, long seed) {
            JobLines jobs = shop.jobs();
            TreeSet<String> pairs = new TreeSet<>();
            for (InseparablePair pair : jobs.inseparable()) {
                pairs.add(jobs.ledger().repairTypes().name(pair.first()));
                pairs.add(jobs.ledger().repairTypes().name(pair.second()));
            }
            pairs.forEach(type -> leftOut.add(seed + ":" + type));
            RivalSplits rivals = new RivalSplits(jobs);
            double[] own = new double[jobs.size()];
            double[] spread = new double[jobs.size()];
            for (int line = 0; line < own.length; line++) {
                own[line] = jobs.actualSeconds(line) / 3_600.0;
                double sd = sd(shop, line);
                spread[line] = Math.sqrt(Math.expm1(sd * sd));
            }
            ours += error(shop, own, pairs);
            proRata += error(shop, rivals.proRata(), pairs);
            proRataToTheRest += error(shop, rivals.proRataToTheRest(), pairs);
            plainEm += error(shop, rivals.plainEm(), pairs);
            oracle += error(shop, rivals.oracle(shop.lines(), spread), pairs);
        }

        private static double sd(TruthShop shop, int line) {
            if (shop.lines()[line] == null) {
                return 0.3;
            }
            String type = shop.lines()[line].repairType();
            return shop.truth().types().stream()
                    .filter(t -> t.repairType().equals(type))
                    .mapToDouble(t -> t.sd())
                    .findFirst()
                    .orElse(0.3);
        }

        private double error(TruthShop shop, double[] hours, TreeSet<String> pairs) {
            Map<String, double[]> sums = new HashMap<>();
            for (int line = 0; line < hours.length; line++) {
                var truth = shop.lines()[line];
                if (truth != null && truth.judged() && !pairs.contains(truth.repairType())) {
                    double[] sum = sums.computeIfAbsent(truth.repairType(), t -> new double[3]);
                    sum[0] += hours[line];
                    sum[1] += truth.loggedSeconds() / 3_600.0;
                    sum[2] += truth.rebasedSeconds() / 3_600.0;
                }
            }
            types = Math.max(types, sums.size());
            return sums.values().stream()
                    .mapToDouble(sum -> Math.abs(sum[0] - sum[1]) / sum[2])
                    .sum();
        }

        double ratio() {
            return ours / proRata;
        }

        String table(String name) {
            return String.format(
                    Locale.ROOT,
                    "%-48s pro rata %.2f | to the rest %.3f | plain EM %.3f | this split %.3f | all known %.3f | left out %s",
                    name,
                    proRata,
                    proRataToTheRest / proRata,
                    plainEm / proRata,
                    ours / proRata,
                    oracle / proRata,
                    leftOut);
        }
    }

    private Errors errors(List<SampleOptions> shops) {
        Errors errors = new Errors();
        shops.forEach(options -> errors.add(TruthShop.of(options), options.seed()));
        return errors;
    }

    private List<SampleOptions> shops(int from, int to, int tickets) {
        List<SampleOptions> shops = new ArrayList<>();
        for (int seed = from; seed <= to; seed++) {
            shops.add(SampleOptions.standard(folder.resolve(tickets + "-" + seed))
                    .withSeed(seed)
                    .withTickets(tickets));
        }
        return shops;
    }

    @Test
    void hoursGoWhereTheyWentMoreNearlyThanByTheQuote() {
        Errors errors = errors(shops(1, 3, 400));
        System.out.println(errors.table("400 tickets, seeds 1 to 3"));
        assertThat(errors.ratio()).isLessThan(0.75);
    }

    @Test
    @Tag("proof")
    void theUntidyShopsOfTwentySeedsAreSplitNearTheTruth() {
        Errors errors = errors(shops(1, 20, 1_200));
        System.out.println(errors.table("1,200 tickets as sampled, seeds 1 to 20"));
        assertThat(errors.ratio()).isLessThanOrEqualTo(0.40);
    }

    @Test
    @Tag("proof")
    void fiftySmallShopsAreSplitNearTheTruth() {
        List<SampleOptions> shops = shops(101, 150, 1_200).stream()
                .map(o -> o.with(Tidiness.TIDY).with(Slowing.NONE).withWholeTicketShare(0.6))
                .toList();
        Errors errors = errors(shops);
        System.out.println(errors.table("1,200 tickets, 60 % whole, seeds 101 to 150"));
        assertThat(errors.ratio()).isLessThanOrEqualTo(0.40);
    }

    @Test
    @Tag("proof")
    void fiftyLargeShopsAreSplitNearTheTruth() {
        List<SampleOptions> shops = shops(101, 150, 12_000).stream()
                .map(o -> o.with(Tidiness.TIDY).with(Slowing.NONE).withWholeTicketShare(0.8))
                .toList();
        Errors errors = errors(shops);
        System.out.println(errors.table("12,000 tickets, 80 % whole, seeds 101 to 150"));
        assertThat(errors.ratio()).isLessThanOrEqualTo(0.15);
    }

    @Test
    @Tag("proof")
    void aShopThatNeverNamesALineIsSplitBetterThanByTheQuote() {
        List<SampleOptions> shops = shops(201, 210, 1_200).stream()
                .map(o -> o.with(Slowing.NONE).withWholeTicketShare(1))
                .toList();
        Errors errors = errors(shops);
        System.out.println(errors.table("1,200 tickets, no line of several named"));
        assertThat(errors.ratio()).isLessThanOrEqualTo(0.45);
    }
}
