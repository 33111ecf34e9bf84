package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.Office;
import benchtrue.workbook.draft.WriteRevisionWorkbook;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A night drafts, the owner decides in a spreadsheet program of another make, and the next night reads what was decided. */
@Tag("office")
class DecidedInOfficeTest {
    /** Columns are counted from 0: the key in 24, the decision in 14, own hours, reason and date after it. */
    private static final String DECISIONS = """
              Dim sheet As Object
              sheet = book.Sheets.getByName("Decide")
              Dim row As Integer
              For row = 12 To 80
                Select Case sheet.getCellByPosition(24, row).String
                  Case "refret"
                    sheet.getCellByPosition(14, row).String = "own"
                    sheet.getCellByPosition(15, row).Value = 11.5
                  Case "neck-reset"
                    sheet.getCellByPosition(14, row).String = "take"
                  Case "full-setup"
                    sheet.getCellByPosition(14, row).String = "keep"
                    sheet.getCellByPosition(16, row).String = "new bench next spring"
                    sheet.getCellByPosition(17, row).Formula = "2027-06-30"
                End Select
              Next
            """;

    private static final String ONE_ROW = """
              Dim sheet As Object
              sheet = book.Sheets.getByName("Decide")
              Dim row As Integer
              For row = 12 To 80
                If sheet.getCellByPosition(24, row).String = "%s" Then
                  sheet.getCellByPosition(14, row).String = "own"
                  sheet.getCellByPosition(15, row).Value = %s
                End If
              Next
            """;

    @TempDir
    Path folder;

    private final StringWriter err = new StringWriter();
    private Path shop;

    @Test
    void theNextNightsBookHoldsWhatWasDecidedInAnotherProgram() throws Exception {
        shop = folder.resolve("shop");
        copy(OneNight.onTheSample().shop(), shop);
        Path drafted = shop.resolve("out").resolve(OneNight.AS_OF);
        Path decided = folder.resolve("decided.xlsx");
        new Office(folder.resolve("office"))
                .edit(drafted.resolve(WriteRevisionWorkbook.FILE).toRealPath(), decided, DECISIONS);
        String proposed = revision(drafted, "neck-reset").get(2);
        String kept = revision(drafted, "full-setup").get(1);

        run("adopt", decided.toString(), "--effective", "2026-11-15", "--as-of", OneNight.AS_OF);
        run("nightly", "--as-of", "2026-11-20");

        Path next = shop.resolve("out/2026-11-20");
        assertThat(revision(next, "refret").get(1)).isEqualTo("11.5000");
        assertThat(revision(next, "neck-reset").get(1)).isEqualTo(proposed);
        assertThat(revision(next, "full-setup").get(1)).isEqualTo(kept);
        assertThat(revision(next, "full-setup").toString()).contains("kept by you until", "new bench next spring");
    }

    @Test
    void twoBooksAheadDecidedInThreeSittingsInAnotherProgramUndoNothing() throws Exception {
        shop = folder.resolve("shop");
        copy(OneNight.onTheSample().shop(), shop);
        decide("refret", "11.5", "2026-12-01");
        decide("neck-reset", "12", "2026-12-01");
        run("nightly", "--as-of", OneNight.AS_OF);
        assertThat(revision(shop.resolve("out").resolve(OneNight.AS_OF), "refret"))
                .contains("11.5000")
                .anyMatch(cell -> cell.contains("decided on"));
        decide("full-setup", "1.5", "2027-01-01");

        run("nightly", "--as-of", "2026-12-05");
        Path december = shop.resolve("out/2026-12-05");
        assertThat(revision(december, "refret").get(1)).isEqualTo("11.5000");
        assertThat(revision(december, "full-setup").get(1))
                .as("the draft stands against the book of January")
                .isEqualTo("1.5000");
        run("nightly", "--as-of", "2027-01-05");
        Path january = shop.resolve("out/2027-01-05");
        assertThat(revision(january, "refret").get(1)).isEqualTo("11.5000");
        assertThat(revision(january, "neck-reset").get(1)).isEqualTo("12.0000");
        assertThat(revision(january, "full-setup").get(1)).isEqualTo("1.5000");
    }

    private void decide(String repairType, String hours, String effective) throws Exception {
        Path drafted = shop.resolve("out").resolve(OneNight.AS_OF).resolve(WriteRevisionWorkbook.FILE);
        Path decided = folder.resolve(repairType + ".xlsx");
        new Office(folder.resolve("office"))
                .edit(drafted.toRealPath(), decided, String.format(java.util.Locale.ROOT, ONE_ROW, repairType, hours));
        run("adopt", decided.toString(), "--effective", effective, "--as-of", OneNight.AS_OF);
    }

    private static List<String> revision(Path results, String repairType) throws IOException {
        return Files.readAllLines(results.resolve("revision.csv")).stream()
                .filter(line -> line.startsWith(repairType + ","))
                .map(line -> Arrays.asList(line.split(",")))
                .findFirst()
                .orElseThrow();
    }

    private void run(String command, String... more) {
        Clock clock = Clock.fixed(Instant.parse("2027-01-06T12:00:00Z"), ZoneOffset.UTC);
        String[] arguments = Stream.concat(Stream.of(command, "--shop", shop.toString()), Stream.of(more))
                .toArray(String[]::new);
        int exit = new Program(new PrintWriter(new StringWriter()), new PrintWriter(err), false, clock, Map.of())
                .run(arguments);
        assertThat(exit).as(err.toString()).isZero();
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file)), LinkOption.NOFOLLOW_LINKS);
            }
        }
    }
}
