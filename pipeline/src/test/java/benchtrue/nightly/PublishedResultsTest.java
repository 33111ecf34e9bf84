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

class PublishedResultsTest {
    private static final LocalDate MAY = LocalDate.of(2026, 5, 31);
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 30);

    private static final LocalDate HORIZON = LocalDate.of(2026, 12, 31);

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
        shelf.publish(date, WholeRun.seal(out, date, text), HORIZON);
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
        assertThat(names(out)).containsExactly(".runs", "2026-05-31", "2026-06-30", "latest", "latest.html");
    }

    @Test
    void whereLinksAreRefusedTheFolderItselfBearsTheDate() throws IOException {
        PublishedResults shelf = shelf("refused");
        run(shelf, MAY, "may");
        run(shelf, JUNE, "june");
        assertThat(out.resolve("latest.txt")).hasContent("2026-06-30");
        assertThat(out.resolve("2026-06-30/result.txt")).hasContent("june");
        assertThat(names(out)).containsExactly(".runs", "2026-05-31", "2026-06-30", "latest.html", "latest.txt");
    }

    @ParameterizedTest
    @ValueSource(strings = {"allowed", "refused"})
    void aPageOfOneNameLeadsToTheNewestReviewOnEverySystem(String links) throws IOException {
        PublishedResults shelf = shelf(links);
        run(shelf, JUNE, "june");
        run(shelf, MAY, "may");
        assertThat(out.resolve("latest.html")).content().contains("href=\"2026-06-30/review.html\"");
    }

    @Test
    void aCopyThatTurnedLinksIntoFoldersIsRepairedByTheNextNight() throws IOException {
        shelf("refused").publish(MAY, WholeRun.seal(out, MAY, "may"), HORIZON);
        Files.createDirectories(out.resolve("latest"));
        Files.writeString(out.resolve("latest/result.txt"), "may");
        PublishedResults shelf = shelf("allowed");
        run(shelf, JUNE, "june");
        run(shelf, MAY, "may again");
        assertThat(out.resolve("latest/result.txt")).hasContent("june");
        assertThat(out.resolve("2026-05-31/result.txt")).hasContent("may again");
        assertThat(new RunCleanup(out, shelf).unused())
                .singleElement()
                .asString()
                .contains("kept");
    }

    @Test
    void whereLinksAreRefusedACopyOfTheLatestDoesNotStayBesideTheTextThatNamesTheNewest() throws IOException {
        Files.createDirectories(out.resolve("latest"));
        Files.writeString(out.resolve("latest/result.txt"), "may");
        PublishedResults shelf = shelf("refused");
        run(shelf, JUNE, "june");
        shelf.restore();
        assertThat(out.resolve("latest.txt")).hasContent("2026-06-30");
        assertThat(out.resolve("latest")).doesNotExist();
    }

    @Test
    void aKillBetweenTwoRenamesLosesNoResult() throws IOException {
        PublishedResults shelf = shelf("refused");
        run(shelf, MAY, "may");
        Files.move(out.resolve("2026-05-31"), out.resolve(".runs/2026-05-31.replaced"));
        shelf.restore();
        assertThat(published(shelf, MAY)).isEqualTo("may");
    }

    @Test
    void aResultForADayThatHasNotComeIsNeverTheLatest() throws IOException {
        PublishedResults shelf = shelf("allowed");
        LocalDate mistyped = LocalDate.of(2036, 6, 30);
        run(shelf, MAY, "may");
        shelf.publish(mistyped, WholeRun.seal(out, mistyped, "mistyped"), HORIZON);
        assertThat(out.resolve("latest/result.txt")).hasContent("may");
        run(shelf, JUNE, "june");
        assertThat(out.resolve("latest/result.txt")).hasContent("june");
        assertThat(shelf.beyond(HORIZON)).containsExactly(mistyped);
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
