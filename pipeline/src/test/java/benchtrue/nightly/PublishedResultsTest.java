package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShelfTest {
    private static final LocalDate MAY = LocalDate.of(2026, 5, 31);
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 30);

    @TempDir
    Path out;

    private PublishedResults shelf(String links) {
        return links.equals("allowed")
                ? new PublishedResults(out)
                : new PublishedResults(out, (link, target) -> {
                    throw new UnsupportedOperationException("no links here");
                });
    }

    private void run(PublishedResults shelf, LocalDate date, String text) throws IOException {
        shelf.publish(date, WholeRun.seal(out, date, text));
    }

    private String published(PublishedResults shelf, LocalDate date) throws IOException {
        return Files.readString(
                shelf.before(date.plusDays(1)).orElseThrow().folder().resolve("result.txt"));
    }

    private List<String> names(Path folder) throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"allowed", "refused"})
    void aDateRunAgainReplacesItsResult(String links) throws IOException {
        PublishedResults shelf = shelf(links);
        run(shelf, MAY, "first");
        run(shelf, MAY, "second");
        assertThat(published(shelf, MAY)).isEqualTo("second");
        run(shelf, MAY, "third");
        assertThat(published(shelf, MAY)).isEqualTo("third");
    }

    @Test
    void theLatestIsTheNewestDateWhicheverWasRunLast() throws IOException {
        PublishedResults shelf = shelf("allowed");
        run(shelf, JUNE, "june");
        run(shelf, MAY, "may");
        assertThat(out.resolve("latest/result.txt")).hasContent("june");
        run(shelf, JUNE, "june again");
        assertThat(out.resolve("latest/result.txt")).hasContent("june again");
        assertThat(names(out)).containsExactly(".runs", "2026-05-31", "2026-06-30", "latest");
    }

    @Test
    void whereLinksAreRefusedATextNamesTheFolder() throws IOException {
        PublishedResults shelf = shelf("refused");
        run(shelf, MAY, "may");
        run(shelf, JUNE, "june");
        String name = Files.readString(out.resolve("latest.txt")).strip();
        assertThat(name).isEqualTo(".runs/2026-06-30-0123456789abcdef");
        assertThat(out.resolve(name).resolve("result.txt")).hasContent("june");
        assertThat(names(out)).containsExactly(".runs", "2026-05-31.txt", "2026-06-30.txt", "latest.txt");
    }

    @Test
    void onlyAnEarlierDateIsWhatTheNextIsComparedWith() throws IOException {
        PublishedResults shelf = shelf("allowed");
        run(shelf, JUNE, "june");
        assertThat(shelf.before(JUNE)).isEmpty();
        run(shelf, MAY, "may");
        assertThat(shelf.before(JUNE)).hasValue(new PublishedResults.Result(MAY, out.resolve("2026-05-31")));
    }

    @Test
    void resultsAreTheOwnersAlone() throws IOException {
        RunFolder run = RunFolder.begin(out, MAY + "-0123456789abcdef");
        Files.createDirectories(run.path().resolve("charts"));
        Files.writeString(run.path().resolve("charts/a.svg"), "x");
        Path whole = run.seal();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(whole.getParent())))
                .isEqualTo("rwx------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(whole)))
                .isEqualTo("rwx------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(whole.resolve("charts/a.svg"))))
                .isEqualTo("rw-------");
    }
}
