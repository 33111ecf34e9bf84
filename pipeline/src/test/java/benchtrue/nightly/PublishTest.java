package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ReviewOf;
import benchtrue.ShopBuilder;
import benchtrue.ShopFolder;
import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.findings.FindVerdicts;
import benchtrue.findings.Findings;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.AlreadyDecided;
import benchtrue.revision.ProposeRevision;
import benchtrue.revision.Revision;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PublishTest {
    private static final Report PICTURE = (review, folder) -> {
        Files.createDirectories(folder.resolve("charts"));
        Files.writeString(folder.resolve("charts/a.svg"), "<svg/>");
    };

    private static final Settings SETTINGS = Settings.DEFAULTS;

    private static final LocalDate HORIZON = LocalDate.of(2026, 12, 31);

    @TempDir
    Path out;

    private static Review review(String asOf, double hours) {
        ShopBuilder shop = new ShopBuilder().asOf(asOf).type("refret", 8).type("setup", 1.5, "setup");
        for (int i = 0; i < 8; i++) {
            shop.ticket("T" + i).line("refret", 8).logged("ann", "1", hours + 0.25 * i);
        }
        Ledger ledger = shop.build();
        JobLines jobs = new SplitHours().split(ledger, SETTINGS);
        CostedLines costs = new CostLines().cost(jobs, SETTINGS);
        Findings findings = new FindVerdicts().find(costs, SETTINGS);
        Revision revision = new ProposeRevision().propose(costs, findings, SETTINGS, AlreadyDecided.NOTHING);
        return ReviewOf.found(SETTINGS, costs, findings, revision);
    }

    private static Inputs inputs(String content) {
        return new Inputs(List.of(new FileDigest("exports/tickets.csv", content.length(), content)), new TreeMap<>());
    }

    private Path publish(Review review, Inputs inputs, Report... reports) {
        return new Publish(out, HORIZON, "1.2.3").publish(review, inputs, List.of(reports));
    }

    private List<String> tree() throws IOException {
        try (Stream<Path> found = Files.walk(out)) {
            return found.map(file -> FileDigest.name(out, file))
                    .filter(name -> !name.isEmpty())
                    .sorted()
                    .toList();
        }
    }

    @Test
    void everyFileIsThereAndInTheRecordOfTheRun() throws IOException {
        Path folder = publish(review("2026-10-31", 8), inputs("a"), PICTURE);
        assertThat(folder).isEqualTo(out.resolve("2026-10-31"));
        String record = Files.readString(folder.resolve("run.json"));
        for (String file : List.of("charts/a.svg", "digest.txt", "findings.csv", "lines.csv", "revision.csv")) {
            assertThat(record)
                    .contains("\"" + file + "\"")
                    .contains(FileDigest.of(folder, folder.resolve(file)).sha256());
        }
        assertThat(record).contains("\"version\": \"1.2.3\"", "\"as_of\": \"2026-10-31\"", "\"quoted_lines\": 8");
    }

    @Test
    void theSameNightAgainGivesTheSameBytes(@TempDir Path elsewhere) throws IOException {
        Path here = publish(review("2026-10-31", 8), inputs("a"), PICTURE);
        String first = Files.readString(here.resolve("run.json"));
        assertThat(Files.readString(
                        publish(review("2026-10-31", 8), inputs("a"), PICTURE).resolve("run.json")))
                .isEqualTo(first);
        Path there = new Publish(elsewhere.resolve("new/out"), HORIZON, "1.2.3")
                .publish(review("2026-10-31", 8), inputs("a"), List.of(PICTURE));
        assertThat(there.resolve("run.json")).hasContent(first);
    }

    @Test
    void aReportThatFailsPublishesNothingAndTheLastGoodResultStands() throws IOException {
        publish(review("2026-09-30", 8), inputs("a"), PICTURE);
        publish(review("2026-10-31", 8), inputs("a"), PICTURE);
        List<String> before = tree();
        Report full = (review, folder) -> {
            Files.writeString(folder.resolve("half.txt"), "half");
            throw new IOException("No space left on device");
        };
        assertThatThrownBy(() -> publish(review("2026-10-31", 9), inputs("b"), PICTURE, full))
                .isInstanceOfSatisfying(
                        Refusal.class, r -> assertThat(r.exitCode()).isEqualTo(ExitCode.CANNOT_WRITE))
                .hasMessageContaining("No space left on device");
        assertThat(tree()).isEqualTo(before);
    }

    @Test
    void aFaultInAReportPublishesNothing() throws IOException {
        Report faulty = (review, folder) -> {
            throw new IllegalStateException("a fault");
        };
        assertThatThrownBy(() -> publish(review("2026-10-31", 9), inputs("b"), faulty))
                .isInstanceOf(IllegalStateException.class);
        assertThat(tree()).containsExactly(".runs");
    }

    @Test
    void aFirstResultSaysThatThereIsNothingToCompareWith() throws IOException {
        Path folder = publish(review("2026-10-31", 8), inputs("a"));
        assertThat(Files.readString(folder.resolve("digest.txt")))
                .startsWith("Benchtrue, results to 31 Oct 2026. No earlier result to compare with.\n");
    }

    @Test
    void theDigestSaysWhichVerdictsChanged() throws IOException {
        publish(review("2026-09-30", 7.2), inputs("a"));
        Path folder = publish(review("2026-10-31", 12), inputs("b"));
        assertThat(Files.readAllLines(folder.resolve("digest.txt")))
                .hasSizeLessThanOrEqualTo(30)
                .contains(
                        "Benchtrue, results to 31 Oct 2026. Compared with the result of 30 Sep 2026.",
                        "  refret: now under-quoted, was on the mark; no more jobs than then, but its hours"
                                + " or quotes were corrected; 1.61 hours per quoted hour over 8 jobs,"
                                + " was 1.01 over 8.");
    }

    @Test
    void anEarlierResultThatCannotBeReadDoesNotCostTonights() throws IOException {
        Path earlier = publish(review("2026-09-30", 8), inputs("a"));
        Files.writeString(earlier.resolve("findings.csv"), "saved by something else\n1\n");
        Path folder = publish(review("2026-10-31", 8), inputs("a"));
        assertThat(Files.readString(folder.resolve("digest.txt")))
                .contains("The findings of 30 Sep 2026 can't be read, so nothing is compared.");
        assertThat(Files.readString(folder.resolve("run.json"))).contains("\"2026-09-30/findings.csv\"");
    }

    @Test
    void whatALibraryMakesOfADiskThatTakesNoMoreIsNoFaultOfTheProgram() {
        Report refused = (review, folder) -> {
            throw new IllegalStateException(new IOException("the disk takes no more"));
        };
        assertThatThrownBy(() -> publish(review("2026-10-31", 8), inputs("a"), refused))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.CANNOT_WRITE))
                .hasMessageContaining("the disk takes no more");
    }

    @ParameterizedTest
    @ValueSource(strings = {".", ".runs", ".last"})
    void whereNothingCanBeWrittenTheNightEndsWithThePlaceAndWhatToDo(String place, @TempDir Path shop)
            throws IOException {
        new ShopFolder(shop);
        Path there = shop.resolve("out").resolve(place).normalize();
        Files.createDirectories(there.getParent());
        Files.writeString(there, "a file where a folder should be");
        Night night = new Night(List.of(PICTURE), Progress.UNHEARD, Clock.systemUTC(), "test");
        assertThatThrownBy(() -> night.run(shop, SETTINGS, ShopFolder.AS_OF))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.CANNOT_WRITE))
                .hasMessageContainingAll(shop.resolve("out").toString(), "Check who may write there");
        assertThat(there).hasContent("a file where a folder should be");
    }
}
