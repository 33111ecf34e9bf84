package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.nightly.Night;
import benchtrue.nightly.Progress;
import benchtrue.nightly.Report;
import benchtrue.nightly.VerifyResult;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.WriteSample;
import benchtrue.settings.ReadSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Real processes killed at random moments of a measured run on the invented shop, publishing included, also when a date is run again.
 * After each kill every published result is as its record says, and the next run succeeds.
 */
class KilledRunsTest {
    private static final long SEED = 20_261_031;
    private static final List<LocalDate> DATES =
            List.of(LocalDate.of(2026, 9, 30), LocalDate.of(2026, 10, 31), LocalDate.of(2026, 10, 31));

    /** The signal's number above 128, as a shell would tell it. */
    private static final int KILLED = 137;

    @TempDir
    Path folder;

    private Path shop;
    private Path out;
    private final List<String> killedAt = new ArrayList<>();

    @BeforeEach
    void aShop() {
        shop = folder.resolve("shop");
        out = shop.resolve("out");
    }

    @Test
    void aKillAtAnyMomentLeavesTheLastGoodResult() throws Exception {
        WriteSample.write(SampleOptions.standard(shop).withTickets(300).withYears(2));
        killRuns(25, List.of(), List.of("-XX:TieredStopAtLevel=1"));
    }

    /** Fewer by {@code -Dbenchtrue.kills=}; compiled as the launcher has a shop of this size compiled. */
    @Test
    @Tag("proof")
    void threeHundredKillsLeaveTheLastGoodResult() throws Exception {
        WriteSample.write(SampleOptions.standard(shop));
        killRuns(
                Integer.getInteger("benchtrue.kills", 300), NightlyCommand.REPORTS, List.of("-XX:TieredStopAtLevel=1"));
    }

    private void killRuns(int kills, List<Report> reportsOfNextRun, List<String> java) throws Exception {
        Random random = new Random(SEED);
        long began = System.nanoTime();
        assertThat(Spawned.end(start(java, DATES.get(0)))).as(log()).isZero();
        long whole = System.nanoTime() - began;
        for (int kill = 0; kill < kills; kill++) {
            LocalDate date = DATES.get(kill % DATES.size());
            Process run = start(java, date);
            if (kill % 2 == 0) {
                pause((long) (random.nextDouble() * 1.05 * whole));
            } else {
                awaitPublishing(run, whole);
                pause(random.nextInt(20_000_000));
            }
            run.destroyForcibly();
            boolean killed = Spawned.end(run) == KILLED;
            killedAt.add(killed ? stage() : "after the end");
            everyResultIsWhole("after kill " + kill + " at " + stage());
            night(reportsOfNextRun, date);
            everyResultIsWhole("after the run that followed kill " + kill);
        }
        System.getLogger("benchtrue").log(System.Logger.Level.INFO, "killed at {0}", killedAt);
        assertThat(killedAt.stream().filter(at -> !at.equals("after the end")))
                .as("seed %d: killed at %s", SEED, killedAt)
                .hasSizeGreaterThan(kills / 2)
                .contains("Writing the results");
    }

    private Process start(List<String> java, LocalDate asOf) throws IOException {
        return Spawned.start(folder, java, "nightly", "--shop", "shop", "--as-of", asOf.toString(), "--quiet");
    }

    private static void pause(long nanos) throws InterruptedException {
        Thread.sleep(nanos / 1_000_000, (int) (nanos % 1_000_000));
    }

    /** Waits until the record of the run is written, which is the last file before the folder gets its name. */
    private void awaitPublishing(Process run, long atMost) throws Exception {
        long began = System.nanoTime();
        while (run.isAlive() && System.nanoTime() - began < 3 * atMost && !recordIsWritten()) {
            Thread.sleep(1);
        }
    }

    private boolean recordIsWritten() throws IOException {
        try (Stream<Path> runs = Files.list(out.resolve(".runs"))) {
            return runs.filter(run -> run.getFileName().toString().endsWith(".partial"))
                    .anyMatch(run -> Files.exists(run.resolve("run.json")));
        }
    }

    private String stage() throws IOException {
        String note = Files.readString(out.resolve(".last/run.json"));
        return note.contains("\"stage\"") ? note.replaceAll("(?s).*\"stage\": \"([^\"]*)\".*", "$1") : "after the end";
    }

    private void everyResultIsWhole(String when) throws IOException {
        List<Path> results = new ArrayList<>(List.of(out.resolve("latest")));
        for (LocalDate date : DATES) {
            Path result = out.resolve(date.toString());
            if (Files.exists(result)) {
                results.add(result);
            }
        }
        for (Path result : results) {
            assertThat(new VerifyResult().verify(result))
                    .as("seed %d, %s: %s", SEED, when, result)
                    .isEmpty();
        }
    }

    private void night(List<Report> reports, LocalDate date) {
        Night night = new Night(reports, Progress.UNHEARD, Clock.systemUTC(), Program.version());
        Path published = night.run(shop, new ReadSettings().read(shop), (int) date.toEpochDay())
                .folder();
        assertThat(published).isEqualTo(out.resolve(date.toString()));
        assertThat(out.resolve(".runs")).isDirectoryNotContaining("glob:**.partial");
        assertThat(out.resolve("kept")).doesNotExist();
    }

    private String log() throws IOException {
        return Files.readString(folder.resolve("spawned.log"));
    }
}
