package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShapedShop;
import benchtrue.command.FixedAnswers.Answer;
import benchtrue.intake.ReadExports;
import benchtrue.mapping.WriteDraft;
import benchtrue.reconcile.Reconcile;
import benchtrue.reconcile.Reconciled;
import benchtrue.sample.Loads;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Slowing;
import benchtrue.sample.Tidiness;
import benchtrue.sample.Truth;
import benchtrue.sample.TypeTruth;
import benchtrue.sample.WriteSample;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.Balance;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * From files in any shape that nobody has mapped to the first review: map, the answers of a fixed list, nightly. Quotes that are
 * too low were planted, so the review is held against what is true of the shop.
 */
class AnyShapeTest {
    private static final String AS_OF = "2026-10-31";

    /** Their day is the only thing that no file of these shops says. */
    private static final FixedAnswers DAY_OF_THE_PRICES =
            FixedAnswers.of(new Answer("from which day does this price list hold?", "effective = \"2022-11-01\""));

    /**
     * Quotes so many standard errors of the jobs' hours too low are found for sure: logged to tickets as wholes, hours of jobs
     * beside others are known to about twice that; those of less than an hour beside long ones to much more.
     */
    private static final double SURE = 8;

    private static final double TOLERATED = 1.05;

    @TempDir
    Path folder;

    /** Writes a tidy shop's files in another shape. */
    private interface Shape {
        void write(ShapedShop shop) throws IOException;
    }

    private static String run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        int code = new Program(new PrintWriter(out), new PrintWriter(err), false, clock, Map.of()).run(arguments);
        assertThat(code).as(err.toString()).isZero();
        return out.toString();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void aWorkbookOfFiveSheetsWithWeeksAndSubtotalsIsReviewed(long seed) throws IOException {
        reviewed(seed, 800, ShapedShop::workbook);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void aFileOfTicketsAndLinesAndASheetAMonthAreReviewed(long seed) throws IOException {
        reviewed(seed, 800, ShapedShop::joined);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void ticketsInTextsAndRepairsSpeltAsItCameAreReviewed(long seed) throws IOException {
        reviewed(seed, 800, shop -> shop.texts(seed));
    }

    @Tag("proof")
    @ParameterizedTest
    @ValueSource(longs = {3, 4, 5, 6, 7, 8, 9, 10})
    void moreShopsInAllThreeShapesAreReviewed(long seed) throws IOException {
        reviewed(seed, 1_600, ShapedShop::workbook);
        reviewed(seed, 1_600, ShapedShop::joined);
        reviewed(seed, 1_600, shop -> shop.texts(seed));
    }

    private void reviewed(long seed, int tickets, Shape shape) throws IOException {
        Path plain = Files.createTempDirectory(folder, "plain");
        Path shaped = Files.createTempDirectory(folder, "shaped");
        Truth truth = WriteSample.write(SampleOptions.standard(plain)
                .withSeed(seed)
                .withTickets(tickets)
                .with(Loads.HALF_AT_ONE_AND_A_HALF)
                .with(Slowing.NONE)
                .with(Tidiness.TIDY));
        ShapedShop shop = new ShapedShop(plain, shaped);
        shape.write(shop);

        String said = run("map", "--shop", shaped.toString());
        String draft = Files.readString(shaped.resolve(WriteDraft.FILE));
        Path settings = shaped.resolve(ReadSettings.FILE);
        Files.writeString(settings, draft);
        double read = secondsRead(shaped) / shop.seconds();
        assertThat(read).as("share of hours read").isBetween(0.95, 1.0001);
        Files.writeString(settings, DAY_OF_THE_PRICES.into(draft, said));
        run("nightly", "--shop", shaped.toString(), "--as-of", AS_OF, "--quiet");

        Set<String> planted = repairs(truth, type -> isSurelyTooLow(type, truth));
        Set<String> well = repairs(truth, type -> type.trueLoad() <= TOLERATED);
        System.out.printf(
                Locale.ROOT,
                "%d tickets, seed %d: %.1f %% of hours read by the draft as it is, %d planted, %d found%n",
                tickets,
                seed,
                100 * read,
                planted.size(),
                under(shaped).size());
        assertThat(planted).hasSizeGreaterThan(2);
        assertThat(well).hasSizeGreaterThan(10);
        assertThat(under(shaped)).containsAll(planted).doesNotContainAnyElementsOf(well);
    }

    /** Repairs that almost always stand on one ticket can't be told apart where its hours are one sum. */
    private static boolean isSurelyTooLow(TypeTruth type, Truth truth) {
        double error = type.sd() / Math.sqrt(type.lines());
        return Math.log(type.trueLoad() / TOLERATED) > SURE * error
                && type.quotedHours() > type.lines()
                && truth.together().stream().noneMatch(pair -> pair.contains(type.repairType()));
    }

    private static Set<String> repairs(Truth truth, Predicate<TypeTruth> wanted) {
        return truth.types().stream()
                .filter(wanted)
                .map(TypeTruth::repairType)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Returns the seconds of the time log that could be read and used. */
    private static double secondsRead(Path shop) {
        Settings settings = new ReadSettings().read(shop);
        Reconciled found = new Reconcile().reconcile(new ReadExports().read(shop, settings), settings, (int)
                LocalDate.parse(AS_OF).toEpochDay());
        Balance hours = found.balances().stream()
                .filter(balance -> balance.name().equals("hours"))
                .findFirst()
                .orElseThrow();
        return hours.read()
                - hours.terms().stream()
                        .filter(term -> term.name().startsWith("set aside"))
                        .mapToLong(Balance.Term::amount)
                        .sum();
    }

    private static Set<String> under(Path shop) throws IOException {
        return ShapedShop.rows(shop.resolve("out/" + AS_OF + "/findings.csv")).stream()
                .filter(row -> row.get("verdict").equals("under-quoted"))
                .map(row -> row.get("repair_type"))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
