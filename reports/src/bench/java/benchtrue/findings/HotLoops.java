package benchtrue.findings;

import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.intake.Exports;
import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Ledger;
import benchtrue.reconcile.Reconcile;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Tidiness;
import benchtrue.sample.WriteSample;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** The loops that a night spends its time in, each alone and warm, on an invented shop. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class HotLoops {
    private static final int AS_OF = (int) LocalDate.of(2026, 10, 31).toEpochDay();

    @Param({"1200", "12000"})
    public int tickets;

    private Path shop;
    private Settings settings;
    private Exports exports;
    private Ledger ledger;
    private JobLines jobs;
    private CostedLines costs;

    @Setup(Level.Trial)
    public void aShop() throws IOException {
        shop = Files.createTempDirectory("benchtrue-bench").resolve("shop");
        WriteSample.write(SampleOptions.standard(shop)
                .withTickets(tickets)
                .withYears(tickets > 5_000 ? 20 : 4)
                .with(Tidiness.TIDY));
        settings = new ReadSettings().read(shop);
        exports = parsing();
        ledger = reconciling();
        jobs = split();
        costs = new CostLines().cost(jobs, settings);
    }

    @TearDown(Level.Trial)
    public void clear() throws IOException {
        try (Stream<Path> files = Files.walk(shop.getParent())) {
            List<Path> deepestFirst = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepestFirst) {
                Files.delete(file);
            }
        }
    }

    @Benchmark
    public Exports parsing() {
        return new ReadExports().read(shop, settings);
    }

    @Benchmark
    public Ledger reconciling() {
        return new Reconcile().reconcile(exports, settings, AS_OF).ledger();
    }

    @Benchmark
    public JobLines split() {
        return new SplitHours().split(ledger, settings);
    }

    /** Delete-a-group jackknife and 2,000 resamples. */
    @Benchmark
    public LoadEvidence[] bootstrap() {
        TypeTotals totals = TypeTotals.of(jobs);
        boolean[] enough = new boolean[totals.tickets().length];
        Arrays.fill(enough, true);
        double[] ones = new double[enough.length];
        Arrays.fill(ones, 1);
        LoadReach sure = new LoadReach(ones, ones, ones);
        return new WeighLoads(jobs, settings, UnreadShares.of(jobs.ledger(), settings, totals, sure))
                .weigh(enough, ShopPace.STEADY.corrections(jobs));
    }

    /** Crossed random effects of families, types, technicians, classes and writers. */
    @Benchmark
    public StudyJobs mixedModel() {
        return new StudyJobs(jobs, new SpotCopiedQuotes(jobs, OwnHours.of(jobs)).honest(), ShopPace.STEADY);
    }

    @Benchmark
    public Findings allFindings() {
        return new FindVerdicts().find(costs, settings);
    }
}
