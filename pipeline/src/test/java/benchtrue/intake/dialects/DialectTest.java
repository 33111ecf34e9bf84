package benchtrue.intake.dialects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ShopFolder;
import benchtrue.intake.Exports;
import benchtrue.intake.TableRows;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.OverheadColumn;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.WaitColumn;
import benchtrue.intake.files.DigestedFile;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DialectTest {
    private static final int MARCH_9 = (int) LocalDate.of(2026, 3, 9).toEpochDay();

    @TempDir
    Path folder;

    private Exports waits(String text, Charset charset) {
        return new ShopFolder(folder)
                .bytes("exports/waits.csv", text.getBytes(charset))
                .exports();
    }

    private Exports waits(String text) {
        return waits(text, StandardCharsets.UTF_8);
    }

    private static void isOneWait(Exports exports, int line) {
        TableRows rows = exports.rows(Table.WAITS);
        assertThat(rows.size()).isEqualTo(1);
        assertThat(rows.line(0)).isEqualTo(line);
        assertThat(rows.text(WaitColumn.TICKET, 0)).isEqualTo("T\u00e91");
        assertThat(rows.day(WaitColumn.FROM, 0)).isEqualTo(MARCH_9);
        assertThat(rows.readable(0)).isTrue();
    }

    @Test
    void semicolonsTabsAndBarsAreRead() {
        for (String delimiter : List.of(";", "\t", "|")) {
            isOneWait(waits("ticket,from,reason\nT\u00e91,2026-03-09,parts\n".replace(",", delimiter)), 2);
        }
    }

    @Test
    void anyEncodingOfTheContractIsRead() {
        String text = "ticket,from,reason\r\nT\u00e91,2026-03-09,parts\r\n";
        isOneWait(waits("\uFEFF" + text), 2);
        isOneWait(waits("\uFEFF" + text, StandardCharsets.UTF_16LE), 2);
        isOneWait(waits("\uFEFF" + text, StandardCharsets.UTF_16BE), 2);
        isOneWait(waits(text, StandardCharsets.UTF_16LE), 2);
        isOneWait(waits(text, Charset.forName("windows-1252")), 2);
    }

    @Test
    void linesBeforeTheColumnNamesAreReadPastWhateverEndsThem() {
        for (String end : List.of("\n", "\r\n", "\r")) {
            isOneWait(
                    waits("Waits, \"March\n\nprinted by\nticket,from,reason\nT\u00e91,2026-03-09,parts\n"
                            .replace("\n", end)),
                    5);
        }
    }

    @Test
    void anEmptyCellAtTheEndOfEveryRowIsReadPast() {
        isOneWait(waits("ticket;from;reason\nT\u00e91;2026-03-09;parts;\n"), 2);
        isOneWait(waits("ticket,from,reason\nT\u00e91,2026-03-09,parts,\n"), 2);
    }

    @Test
    void anEmptyCellAtTheEndOfOneRowOnlyIsNotTrusted() {
        assertThat(waits("ticket,from,reason\nT1,2026-03-09,parts,\nT2,2026-03-09,parts\n")
                        .rows(Table.WAITS)
                        .readable(0))
                .isFalse();
    }

    @Test
    void theOrderOfDatesIsToldOverAllDateColumnsTogether() {
        TableRows rows = waits("ticket,from,to,reason\nT1,3/9/2026,,parts\nT1,3/9/2026,3/13/2026,bench\n"
                        + "T2,3/9/2026,3/14/2026,bench\nT3,3/9/2026,3/15/2026,bench\n")
                .rows(Table.WAITS);
        assertThat(rows.day(WaitColumn.FROM, 0)).isEqualTo(MARCH_9);
    }

    @Test
    void datesThatCanBeReadInTwoWaysAreRefusedWithBothAndTheKeyThatSettlesIt() {
        assertThatThrownBy(() -> waits("ticket,from,reason\nT1,2026-01-02,parts\nT1,3/9/2026,bench\n"))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.UNUSABLE_FILE))
                .hasMessageContainingAll(
                        "exports/waits.csv, line 3, column from: found \"3/9/2026\"",
                        "2026-09-03 if the day stands first",
                        "2026-03-09 if the month does",
                        "name = \"waits.csv\", table = \"waits\", dates = \"day-month-year\"");
    }

    @Test
    void aDecimalCommaIsToldFromTheNumbers() {
        TableRows rows = new ShopFolder(folder)
                .file(
                        "exports/overheads.csv",
                        "month;account;amount",
                        "03/2026;rent;1.234",
                        "03/2026;light;12,5",
                        "03/2026;heat;1.000,25 \u20ac",
                        "03/2026;phone;14,25",
                        "03/2026;insurance;15,25",
                        "Total;;2.246,75")
                .exports()
                .rows(Table.OVERHEADS);
        assertThat(rows.size()).isEqualTo(5);
        assertThat(rows.value(OverheadColumn.AMOUNT, 0)).isEqualTo(12_340_000);
        assertThat(rows.value(OverheadColumn.AMOUNT, 2)).isEqualTo(10_002_500);
    }

    @Test
    void aTotalsRowIsReadPastAndListed() {
        ShopFolder shop = new ShopFolder(folder)
                .file(
                        "exports/paid-hours.csv",
                        "technician,month,hours",
                        "Ada,2026-03,100",
                        "Bo,2026-03,50.5",
                        ",,150.5");
        assertThat(shop.exports().rows(Table.PAID_HOURS).size()).isEqualTo(2);
        assertThat(shop.exports().notices())
                .filteredOn(notice -> notice.code().equals("totals-row"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.examples())
                        .containsExactly("exports/paid-hours.csv line 4 (it adds up the rows above)"));
    }

    @Test
    void aLastRowThatOnlyLacksSomethingIsNoTotal() {
        ShopFolder shop = new ShopFolder(folder)
                .file("exports/paid-hours.csv", "technician,month,hours", "Ada,2026-03,100", "Bo,2026-03,50.5", ",,77");
        assertThat(shop.exports().rows(Table.PAID_HOURS).size()).isEqualTo(3);
    }

    @Test
    void aFileSaysHowItIsWrittenAndWhy() {
        List<String> told = waits("ticket;from;reason\nT1;3/13/2026;parts\n", StandardCharsets.UTF_16LE)
                .rows(Table.WAITS)
                .files()
                .get(0)
                .told();
        assertThat(told)
                .containsExactly(
                        "encoding UTF-16LE (every other byte of its beginning is zero)",
                        "delimiter semicolon (3 known columns of line 1 stand apart with it)",
                        "dates month-day-year (1 of its dates can be read in no other)");
    }

    /** Told as day first, read as month first: each of its dates would be another. */
    @Test
    void aFileThatChangesBetweenTellingItsFormAndReadingItIsRefused() throws IOException {
        Path path = folder.resolve("waits.csv");
        Files.writeString(path, "ticket,from,reason\nT1,13/3/2026,parts\n");
        ExportFile file =
                new ExportFile(path, "exports/waits.csv", Optional.empty(), Table.WAITS, 0, Mapping.NONE, List.of());
        Dialects dialects = new Dialects();
        dialects.of(file);
        Files.writeString(path, "ticket,from,reason\nT1,3/13/2026,parts and more\n");
        try (DigestedFile bytes = dialects.open(file)) {
            assertThatThrownBy(bytes::finish)
                    .isInstanceOf(Refusal.class)
                    .hasMessageContainingAll("exports/waits.csv", "changed while it was read");
        }
    }
}
