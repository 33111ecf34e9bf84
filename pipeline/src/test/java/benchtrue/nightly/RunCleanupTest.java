package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunCleanupTest {
    private static final LocalDate APRIL = LocalDate.of(2026, 4, 30);
    private static final LocalDate MAY = LocalDate.of(2026, 5, 31);
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 30);

    private static final LocalDate HORIZON = LocalDate.of(2026, 12, 31);

    @TempDir
    Path out;

    private PublishedResults shelf;
    private RunCleanup sweep;

    @BeforeEach
    void anEmptyShelf() {
        shelf = new PublishedResults(out);
        sweep = new RunCleanup(out, shelf);
    }

    private void publish(LocalDate date, String text) throws IOException {
        shelf.publish(date, WholeRun.seal(out, date, text), HORIZON);
    }

    private List<String> names(String folder) throws IOException {
        try (Stream<Path> found = Files.list(out.resolve(folder))) {
            return found.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void whatStoppedRunsLeftBehindIsCleared() throws IOException {
        publish(MAY, "may");
        RunFolder stopped = RunFolder.begin(out, JUNE + "-fedcba9876543210");
        Files.createDirectories(stopped.path().resolve("charts"));
        Files.writeString(stopped.path().resolve("charts/a.svg"), "half");
        WholeRun.seal(out, JUNE, "whole, but killed before it was linked");
        assertThat(sweep.unused()).isEmpty();
        assertThat(names(".runs")).containsExactly("2026-05-31-0123456789abcdef");
        assertThat(out.resolve("2026-05-31/result.txt")).hasContent("may");
    }

    @Test
    void filesThatPassAreClearedByTheNextNight() throws IOException {
        Files.createDirectories(out.resolve(".passing"));
        Files.writeString(out.resolve(".passing/font.tmp"), "left by a kill");
        sweep.passing();
        assertThat(names(".passing")).isEmpty();
    }

    @Test
    void aReplacedResultIsCleared() throws IOException {
        publish(MAY, "first");
        publish(MAY, "second");
        assertThat(names(".runs")).hasSize(2);
        assertThat(sweep.unused()).isEmpty();
        assertThat(names(".runs")).hasSize(1);
        assertThat(out.resolve("latest/result.txt")).hasContent("second");
    }

    @Test
    void aReplacedResultThatSomebodyChangedIsKeptAndNamed() throws IOException {
        for (String text : List.of("first", "second")) {
            publish(MAY, text);
            Files.writeString(out.resolve("2026-05-31/result.txt"), text + ", with the owner's decisions");
            publish(MAY, "after " + text);
            assertThat(sweep.unused()).singleElement().asString().contains("kept in " + out.resolve("kept"));
        }
        assertThat(names("kept")).containsExactly("2026-05-31-0123456789abcdef", "2026-05-31-0123456789abcdef-2");
        assertThat(out.resolve("kept/2026-05-31-0123456789abcdef/result.txt"))
                .content()
                .startsWith("first, with");
        assertThat(sweep.unused()).isEmpty();
    }

    @Test
    void whatTheProgramDidNotWriteIsNeverTouched() throws IOException {
        publish(MAY, "may");
        Files.createDirectories(out.resolve(".runs/my own"));
        Files.createDirectories(out.resolve("2020-01-01"));
        Files.writeString(out.resolve("2020-01-01/notes.txt"), "the owner's own");
        assertThat(sweep.unused()).isEmpty();
        assertThat(sweep.old(1, MAY))
                .singleElement()
                .asString()
                .contains("2020-01-01")
                .contains("stays");
        assertThat(names(".runs")).contains("my own");
        assertThat(out.resolve("2020-01-01/notes.txt")).exists();
    }

    @Test
    void onlyTheNewestResultsStayWhereTheOwnerSaysHowMany() throws IOException {
        publish(APRIL, "april");
        publish(MAY, "may");
        publish(JUNE, "june");
        assertThat(sweep.old(0, JUNE)).isEmpty();
        assertThat(names("")).contains("2026-04-30", "2026-05-31", "2026-06-30");
        assertThat(sweep.old(2, JUNE)).isEmpty();
        assertThat(names("")).containsExactly(".runs", "2026-05-31", "2026-06-30", "latest", "latest.html");
        assertThat(names(".runs")).hasSize(2);
    }

    @Test
    void theResultJustPublishedStaysWhateverItsDate() throws IOException {
        publish(MAY, "may");
        publish(JUNE, "june");
        publish(APRIL, "april");
        sweep.old(2, APRIL);
        assertThat(names("")).containsExactly(".runs", "2026-04-30", "2026-06-30", "latest", "latest.html");
    }

    @Test
    void anOldResultThatSomebodyChangedStays() throws IOException {
        publish(MAY, "may");
        Files.writeString(out.resolve("2026-05-31/own.txt"), "the owner's own");
        publish(JUNE, "june");
        assertThat(sweep.old(1, JUNE)).singleElement().asString().contains("2026-05-31", "changed by hand");
        assertThat(out.resolve("2026-05-31/own.txt")).exists();
    }
}
