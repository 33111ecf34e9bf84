package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import benchtrue.nightly.VerifyResult;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.WriteSample;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk without room, and many runs at once. */
class CrowdedNightTest {
    @TempDir
    Path folder;

    private Path shop;
    private Path out;
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void aSmallShop() throws IOException {
        shop = folder.resolve("shop");
        out = Files.createDirectories(folder.resolve("disk"));
        WriteSample.write(SampleOptions.standard(shop).withTickets(100).withYears(2));
    }

    private int nightly(String asOf) {
        return new Program(
                        new PrintWriter(new StringWriter()), new PrintWriter(err), false, Clock.systemUTC(), Map.of())
                .run("nightly", "--shop", shop.toString(), "--as-of", asOf, "--quiet");
    }

    private static boolean done(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(command).start().waitFor() == 0;
        } catch (IOException noSuchProgram) {
            return false;
        }
    }

    @Test
    void aFullDiskEndsWith73AndTheLastGoodResultStands() throws Exception {
        assumeTrue(
                done("mount", "-t", "tmpfs", "-o", "size=12m", "tmpfs", out.toString()),
                "a small file system can be mounted: needs root");
        try {
            Files.createSymbolicLink(shop.resolve("out"), out);
            assertThat(nightly("2026-09-30")).as(err.toString()).isZero();
            Path ballast = out.resolve("ballast");
            Files.write(ballast, new byte[(int) (out.toFile().getUsableSpace() - 300_000)]);
            assertThat(nightly("2026-10-31")).isEqualTo(73);
            assertThat(err.toString()).contains("error 73", "can't be written", "the disk is full");
            assertThat(out.resolve("2026-10-31")).doesNotExist();
            assertThat(out.resolve(".runs")).isDirectoryNotContaining("glob:**.partial");
            assertThat(new VerifyResult().verify(out.resolve("latest"))).isEmpty();
            Files.delete(ballast);
            assertThat(nightly("2026-10-31")).as(err.toString()).isZero();
            assertThat(err.toString()).contains("note: The run before this one, to 2026-10-31, ended with 73: ");
        } finally {
            done("umount", out.toString());
        }
    }

    @Test
    void anInboxThatVanishedEndsWith66AndTheLastGoodResultStands() throws Exception {
        assertThat(nightly("2026-09-30")).as(err.toString()).isZero();
        Files.move(shop.resolve("exports"), folder.resolve("elsewhere"));
        assertThat(nightly("2026-10-31")).isEqualTo(66);
        assertThat(err.toString()).contains("error 66", "exports: found no such folder");
        assertThat(new VerifyResult().verify(shop.resolve("out/latest"))).isEmpty();
        Files.move(folder.resolve("elsewhere"), shop.resolve("exports"));
        assertThat(nightly("2026-10-31")).as(err.toString()).isZero();
        assertThat(err.toString()).contains("note: The run before this one, to 2026-10-31, ended with 66: ");
    }

    @Test
    void anOutFolderThatMayNotBeWrittenEndsWith73AndTheLastGoodResultStands() throws Exception {
        assertThat(nightly("2026-09-30")).as(err.toString()).isZero();
        Path results = shop.resolve("out");
        assumeTrue(done("chattr", "+i", results.toString()), "a folder can be made immutable: needs root and chattr");
        try {
            assertThat(nightly("2026-10-31")).isEqualTo(73);
            assertThat(new VerifyResult().verify(results.resolve("latest"))).isEmpty();
        } finally {
            done("chattr", "-i", results.toString());
        }
        assertThat(nightly("2026-10-31")).as(err.toString()).isZero();
        assertThat(new VerifyResult().verify(results.resolve("latest"))).isEmpty();
    }

    @Test
    void ofTwentyStartsAtOnceEachPublishesOrIsTurnedAway() throws Exception {
        List<Process> runs = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            runs.add(Spawned.start(
                    folder,
                    List.of("-XX:TieredStopAtLevel=1"),
                    "nightly",
                    "--shop",
                    "shop",
                    "--as-of",
                    "2026-10-31",
                    "--quiet"));
        }
        List<Integer> codes = new ArrayList<>();
        for (Process run : runs) {
            codes.add(Spawned.end(run));
        }
        String log = Files.readString(folder.resolve("spawned.log"));
        assertThat(codes).as(log).hasSize(20).containsOnly(0, 75);
        assertThat(log).contains("error 75: Another run is working on");
        assertThat(new VerifyResult().verify(shop.resolve("out/latest"))).isEmpty();
    }
}
