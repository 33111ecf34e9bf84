package benchtrue.revision;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.ShopSettings;
import benchtrue.findings.FindQuoteSizes;
import benchtrue.findings.QuoteSizes;
import benchtrue.findings.ShopPace;
import benchtrue.findings.SurelyOwnJobs;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A shop like open records of estimated and actual hours: load 1.2 to 1.6 below 16 hours, 0.63 above 40, a third of the log copied
 * from the quote, long tails. Proposals must then be better than what any shop could do without a program.
 */
class QuotesOfAllSizesTest {
    private static final int TYPES = 6;
    private static final double SCATTER = 0.6;
    private static final List<PastMethod> RIVALS =
            List.of(PastMethod.KEEP_THE_BOOK, PastMethod.PLAIN_AVERAGE, PastMethod.UNPOOLED_MEDIAN);

    private static JobLines shop(long seed, int jobs, double steep) {
        SplittableRandom random = new SplittableRandom(seed);
        ShopBuilder shop = new ShopBuilder().asOf("2026-10-31").book("2020-01-01");
        double[] own = new double[TYPES];
        for (int type = 0; type < TYPES; type++) {
            shop.type("repair-" + type, 8, type < 3 ? "fretwork" : "structural");
            own[type] = StrictMath.exp(0.15 * normal(random));
        }
        for (int job = 0; job < jobs; job++) {
            int type = (int) (TYPES * random.nextDouble() * random.nextDouble());
            double quoted = StrictMath.max(0.5, StrictMath.rint(2 * StrictMath.exp(1.4 + 1.1 * normal(random))) / 2);
            double load = own[type] * StrictMath.pow(load(quoted), steep);
            double taken = quoted * load * StrictMath.exp(SCATTER * normal(random) - SCATTER * SCATTER / 2);
            double logged = random.nextInt(3) == 0 ? quoted : StrictMath.max(0.1, StrictMath.rint(20 * taken) / 20);
            LocalDate day = LocalDate.of(2023, 11, 1).plusDays(1060L * job / jobs);
            shop.ticket(String.format(Locale.ROOT, "T%05d", job)).opened(day.toString());
            shop.line("repair-" + type, quoted).logged("ada", "1", logged);
        }
        return new SplitHours().split(shop.build(), Settings.DEFAULTS);
    }

    /** From 1.6 at an hour to 1.2 at 16, then down to 0.63 from 40 on. */
    private static double load(double quoted) {
        double small = 1.6 - 0.4 * StrictMath.log(StrictMath.max(1, quoted)) / StrictMath.log(16);
        double middle = 1.2 - 0.57 * (quoted - 16) / 24;
        return quoted < 16 ? small : StrictMath.max(0.63, middle);
    }

    private static double normal(SplittableRandom random) {
        double sum = 0;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return sum - 6;
    }

    private static Settings settings(Policy.Rule rule, double share) {
        return new ShopSettings()
                .policy(new Policy(rule, share, 0.25, 10_000, Policy.FallBack.WHEN_BEATEN))
                .build();
    }

    @Test
    void theProposalBeatsTheBookThePlainAverageAndTheMiddleJob() {
        beats(new long[] {11, 12}, 1_500, Policy.Rule.COVERAGE);
    }

    @Test
    @Tag("proof")
    void theProposalBeatsThemInSixLargerShops() {
        beats(new long[] {21, 22, 23, 24, 25, 26}, 4_000, Policy.Rule.values());
    }

    private static void beats(long[] seeds, int jobs, Policy.Rule... rules) {
        List<JobLines> shops =
                LongStream.of(seeds).mapToObj(seed -> shop(seed, jobs, 1)).toList();
        for (Policy.Rule rule : rules) {
            for (double share : rule == Policy.Rule.COVERAGE ? new double[] {0.5, 0.6, 0.8} : new double[] {0.6}) {
                Map<PastMethod, PastScore> total = new EnumMap<>(PastMethod.class);
                for (JobLines shop : shops) {
                    BackTest test = new TryPastJobs(shop, settings(rule, share)).test();
                    for (PastMethod method : PastMethod.values()) {

                        total.merge(method, test.total(method), PastScore::plus);
                    }
                }
                print(rule, share, total);
                for (PastMethod rival : RIVALS) {
                    String at = rule + " " + share + " against " + rival;
                    assertThat(total.get(PastMethod.PROPOSAL).missed(rule))
                            .as(at)
                            .isLessThan(total.get(rival).missed(rule));
                    assertThat(total.get(PastMethod.PROPOSAL).loss())
                            .as(at)
                            .isLessThanOrEqualTo(total.get(rival).loss());
                }
            }
        }
    }

    private static void print(Policy.Rule rule, double share, Map<PastMethod, PastScore> total) {
        PastScore book = total.get(PastMethod.KEEP_THE_BOOK);
        total.forEach((method, score) -> System.out.printf(
                Locale.ROOT,
                "%-10s %.1f %-16s own measure %.3f of the book's, hours-weighted %.3f, fit %.3f, hours %+.3f%n",
                rule,
                share,
                method,
                score.missed(rule) / book.missed(rule),
                score.loss() / book.loss(),
                score.coverage(),
                score.hoursBias()));
    }

    @Test
    void whereTheSizeOfTheQuoteDoesNotMatterNothingIsSaidOfIt() {
        for (long seed = 31; seed < 36; seed++) {
            JobLines jobs = shop(seed, 1_000, 0);
            assertThat(FindQuoteSizes.of(jobs, SurelyOwnJobs.of(jobs).rows(), ShopPace.STEADY))
                    .as("seed " + seed)
                    .isEmpty();
        }
    }

    @Test
    void largeQuotesAreToldFromSmallOnes() {
        JobLines jobs = shop(41, 3_000, 1);
        List<QuoteSizes> found = FindQuoteSizes.of(jobs, SurelyOwnJobs.of(jobs).rows(), ShopPace.STEADY);
        assertThat(found).hasSizeGreaterThanOrEqualTo(4).allMatch(QuoteSizes::falls);
        for (QuoteSizes sizes : found) {
            assertThat(sizes.from()).isBetween(6.0, 40.0);
            assertThat(sizes.small().load()).isGreaterThan(sizes.large().load());
            double before = Double.POSITIVE_INFINITY;
            for (double quoted = 0.5; quoted < 100; quoted *= 1.3) {
                assertThat(sizes.onTheCurve(quoted)).isLessThanOrEqualTo(before);
                before = sizes.onTheCurve(quoted);
            }
        }
    }
}
