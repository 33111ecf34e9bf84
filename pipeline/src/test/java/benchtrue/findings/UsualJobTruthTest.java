package benchtrue.findings;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.ShopSettings;
import benchtrue.hours.JobLines;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The model of hours against what is known of small invented shops; prints what it measured. */
class UsualJobTruthTest {
    private static final int TYPES = 10;
    private static final int JOBS = 600;
    private static final double SPREAD = 0.25;
    /** What technicians multiply hours by, and what quote writers multiply the book by. */
    private static final double[] TECHNICIANS = {0.8, 0.9, 1.0, 1.1, 1.35};

    private static final double[] WRITERS = {0.8, 1.0, 1.15};

    @Test
    void whoDidTheJobAndWhoQuotedItAreNotTheRepairsFault() {
        double ours = 0;
        double raw = 0;
        for (long seed = 1; seed <= 6; seed++) {
            Random random = new Random(seed);
            double[] truth = random.doubles(TYPES, -0.15, 0.15).toArray();
            JobLines jobs = JudgedShop.costs(unevenShop(random, truth)).jobs();
            List<UsualJob> usual = study(jobs).usualJobs();
            double[] fitted = usual.stream()
                    .mapToDouble(job -> StrictMath.log(job.atBook()))
                    .toArray();
            ours += meanError(fitted, truth);
            raw += meanError(rawMeans(jobs), truth);
        }
        System.out.printf(
                Locale.ROOT,
                "type effects, technicians and writers uneven: mean absolute error %.4f, raw log mean %.4f, ratio %.2f%n",
                ours / 6,
                raw / 6,
                ours / raw);
        assertThat(ours).isLessThanOrEqualTo(0.5 * raw);
    }

    @Test
    void countingOpenJobsTakesAwayMostOfTheErrorOfLeavingThemOut() {
        double without = 0;
        double with = 0;
        int used = 0;
        int shops = 40;
        for (long seed = 1; seed <= shops; seed++) {
            UsualJob refret = study(JudgedShop.costs(busyShop(new Random(seed))).jobs())
                    .usualJobs()
                    .get(0);
            without += StrictMath.log(refret.withoutOpen()) / shops;
            with += StrictMath.log(refret.typical()) / shops;
            used += refret.openUsed();
        }
        System.out.printf(
                Locale.ROOT,
                "usual job, true ln 0: without open jobs %+.4f, with them censored %+.4f (%.1f open jobs a shop)%n",
                without,
                with,
                used / (double) shops);
        assertThat(without).as("leaving out open jobs favours short ones").isLessThan(-0.01);
        assertThat(StrictMath.abs(with)).isLessThan(0.5 * StrictMath.abs(without));
    }

    /** Lena writes 12 % less than the book, Mara the book, Nora 10 % more; conditions that they see are borne out by half. */
    @Test
    void aWriterWhoQuotesLowIsToldHowMuchThatCosts() {
        Settings shown = new ShopSettings().people(Disclosure.SHOWN).build();
        String[] names = {"Lena", "Mara", "Nora"};
        double[] habit = {0.88, 1.0, 1.10};
        double[] sum = new double[3];
        int held = 0;
        for (long seed = 1; seed <= 10; seed++) {
            Random random = new Random(seed);
            ShopBuilder shop = new ShopBuilder().asOf("2026-10-31");
            for (int type = 0; type < TYPES; type++) {
                shop.type("type-" + type, 2);
            }
            for (int i = 0; i < JOBS; i++) {
                int writer = i % 3;
                double seen = StrictMath.exp(0.1 * random.nextGaussian());
                double hours = 2 * StrictMath.sqrt(seen) * StrictMath.exp(SPREAD * random.nextGaussian());
                shop.ticket(String.format(Locale.ROOT, "T%03d", i))
                        .opened(LocalDate.of(2025, 1, 1).plusDays(i).toString());
                shop.of("acoustic", names[writer]).line("type-" + random.nextInt(TYPES), 2 * habit[writer] * seen);
                shop.logged("Ada", "1", rounded(hours));
            }
            JobLines jobs = JudgedShop.costs(shop).jobs();
            for (PersonFactor person : study(jobs).people(shown)) {
                if (person.role() == PersonFactor.Role.QUOTE_WRITER) {
                    int writer = Arrays.asList(names).indexOf(person.name());
                    sum[writer] += StrictMath.log(person.factor()) / 10;
                    held += person.lower() <= 1 / habit[writer] && 1 / habit[writer] <= person.upper() ? 1 : 0;
                }
            }
        }
        System.out.printf(
                Locale.ROOT,
                "writers at 0.88, 1.00 and 1.10 of the book read %.3f, %.3f, %.3f (true 1.136, 1.000, 0.909); %d of 30 ranges hold%n",
                StrictMath.exp(sum[0]),
                StrictMath.exp(sum[1]),
                StrictMath.exp(sum[2]),
                held);
        assertThat(StrictMath.exp(sum[0])).isBetween(1.08, 1.17);
        assertThat(StrictMath.exp(sum[1])).isBetween(0.96, 1.04);
        assertThat(StrictMath.exp(sum[2])).isBetween(0.87, 0.95);
        assertThat(held).isGreaterThanOrEqualTo(22);
    }

    private static StudyJobs study(JobLines jobs) {
        return new StudyJobs(jobs, OwnHours.of(jobs).line(), ShopPace.STEADY);
    }

    /** Each type is mostly done by one technician and mostly quoted by one writer. */
    private static ShopBuilder unevenShop(Random random, double[] truth) {
        ShopBuilder shop = new ShopBuilder().asOf("2026-10-31");
        for (int type = 0; type < TYPES; type++) {
            shop.type("type-" + type, 2);
        }
        for (int i = 0; i < JOBS; i++) {
            int type = i % TYPES;
            int technician = random.nextInt(10) < 7 ? type % TECHNICIANS.length : random.nextInt(TECHNICIANS.length);
            int writer = random.nextInt(10) < 7 ? type % WRITERS.length : random.nextInt(WRITERS.length);
            double hours = 2 * StrictMath.exp(truth[type] + SPREAD * random.nextGaussian()) * TECHNICIANS[technician];
            String opened = LocalDate.of(2025, 1, 1).plusDays(i).toString();
            shop.ticket(String.format(Locale.ROOT, "T%03d", i)).opened(opened);
            shop.of("acoustic", "writer-" + writer).line("type-" + type, 2 * WRITERS[writer]);
            shop.logged("technician-" + technician, "1", rounded(hours));
        }
        return shop;
    }

    /** Refrets begun one a day and worked on for two hours a day: on the last day the long ones of the last weeks are open. */
    private static ShopBuilder busyShop(Random random) {
        LocalDate asOf = LocalDate.of(2026, 10, 31);
        ShopBuilder shop = new ShopBuilder().asOf(asOf.toString()).type("refret", 12);
        for (int i = 0; i < 40; i++) {
            LocalDate opened = asOf.minusDays(42L - i);
            double hours = rounded(12 * StrictMath.exp(0.4 * random.nextGaussian()));
            long days = (long) StrictMath.ceil(hours / 2);
            shop.ticket(String.format(Locale.ROOT, "T%03d", i)).opened(opened.toString());
            boolean done = !opened.plusDays(days).isAfter(asOf);
            if (done) {
                shop.closed(opened.plusDays(days).toString());
            } else {
                shop.stillOpen();
            }
            shop.line("refret", 12);
            double soFar = done ? hours : 2.0 * (asOf.toEpochDay() - opened.toEpochDay());
            shop.logged("Ada", "1", soFar);
        }
        return shop;
    }

    private static double rounded(double hours) {
        return StrictMath.rint(100 * hours) / 100;
    }

    private static double[] rawMeans(JobLines jobs) {
        OwnHours own = OwnHours.of(jobs);
        double[] sum = new double[TYPES];
        for (int i = 0; i < own.line().length; i++) {
            sum[jobs.ledger().lines().repairType(own.line()[i])] += own.logRatio()[i] / (JOBS / (double) TYPES);
        }
        return sum;
    }

    /** Mean absolute error after the level that all types share is taken out of both. */
    private static double meanError(double[] estimates, double[] truth) {
        double level = Arrays.stream(estimates).sum() - Arrays.stream(truth).sum();
        double error = 0;
        for (int type = 0; type < TYPES; type++) {
            error += StrictMath.abs(estimates[type] - truth[type] - level / TYPES) / TYPES;
        }
        return error;
    }
}
