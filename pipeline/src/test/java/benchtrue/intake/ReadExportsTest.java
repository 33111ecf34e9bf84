package benchtrue.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ShopFolder;
import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TicketColumn;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadExportsTest {
    private static final String TICKETS = "ticket,opened,instrument_class";

    @TempDir
    Path folder;

    private void refused(ShopFolder shop, ExitCode code, String... words) {
        assertThatThrownBy(shop::exports)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(code))
                .hasMessageContainingAll(words);
    }

    private ShopFolder shop() {
        return new ShopFolder(folder);
    }

    @Test
    void aMissingShopFolderIsSaid() {
        Path nowhere = folder.resolve("nowhere");
        assertThatThrownBy(() -> new ReadExports().read(nowhere, Settings.DEFAULTS))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.MISSING))
                .hasMessageContaining("nowhere");
    }

    @Test
    void aColumnThatIsMissingIsNamedWithTheNearestThereIs() {
        refused(
                shop().file("exports/tickets.csv", "ticket,opend,instrument_class", "T1,2026-03-02,flat-top"),
                ExitCode.UNUSABLE_FILE,
                "exports/tickets.csv, line 1",
                "expected also opened (the nearest there is \"opend\")");
    }

    @Test
    void aColumnThatStandsThereTwiceIsRefused() {
        refused(
                shop().file("exports/tickets.csv", TICKETS + ",ticket", "T1,2026-03-02,flat-top,T1"),
                ExitCode.UNUSABLE_FILE,
                "column ticket: found twice");
    }

    @Test
    void aQuoteThatNeverClosesIsRefusedWithTheLineItOpensOn() {
        refused(
                shop().file(
                                "exports/tickets.csv",
                                TICKETS,
                                "T1,2026-03-02,flat-top",
                                "T2,2026-03-02,\"flat-top",
                                "T3,2026-03-02,x"),
                ExitCode.UNUSABLE_FILE,
                "exports/tickets.csv, line 3: found a quoted text that opens in this row and never closes");
    }

    @Test
    void lettersThatAreNotUtf8AreRefusedWithTheirLine() {
        refused(
                shop().bytes(
                                "exports/tickets.csv",
                                damaged(TICKETS + "\nT1,2026-03-02,fl\u00e4t\nT2,2026-03-02,fl\u00e4t")),
                ExitCode.UNUSABLE_FILE,
                "exports/tickets.csv, line 3: found bytes that are no letters of UTF-8");
    }

    /** Cuts the last letter beyond ASCII in two. */
    private static byte[] damaged(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        bytes[text.lastIndexOf('\u00e4') + 2] = 'x';
        return bytes;
    }

    @Test
    void anEmptyFileIsRefused() {
        refused(
                shop().bytes("exports/waits.csv", new byte[0]),
                ExitCode.UNUSABLE_FILE,
                "exports/waits.csv",
                "empty file");
    }

    @Test
    void aHeaderWithoutRowsIsAnEmptyTable() {
        Exports exports = shop().file("exports/waits.csv", "ticket,from,reason").exports();
        assertThat(exports.rows(Table.WAITS).size()).isZero();
        assertThat(exports.tables()).containsKey(Table.WAITS);
    }

    @Test
    void anEmptyInboxIsMissing() throws IOException {
        ShopFolder shop = shop();
        for (String name : new String[] {"tickets.csv", "quoted-lines.csv", "time-log.csv"}) {
            Files.delete(folder.resolve("exports").resolve(name));
        }
        refused(shop, ExitCode.MISSING, "exports", "found an empty folder");
    }

    @Test
    void aNeededTableWithoutAFileIsNamedWithTheNearestFile() throws IOException {
        ShopFolder shop = shop();
        Files.move(folder.resolve("exports/time-log.csv"), folder.resolve("exports/timelog.csv"));
        refused(shop, ExitCode.MISSING, "found no file of the table time-log", "\"timelog.csv\"");
    }

    @Test
    void aPriceBookWithoutADateInItsNameIsRefused() {
        refused(
                shop().file("price-book/new.csv", "repair_type,title,family,book_hours,book_labour", "a,A,setup,1,1"),
                ExitCode.UNUSABLE_FILE,
                "price-book/new.csv",
                "no date");
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheFirstColumn() {
        Exports exports = shop().bytes(
                        "exports/tickets.csv",
                        ("\uFEFF" + TICKETS + "\nT1,2026-03-02,flat-top\n").getBytes(StandardCharsets.UTF_8))
                .exports();
        assertThat(exports.rows(Table.TICKETS).text(TicketColumn.TICKET, 0)).isEqualTo("T1");
    }

    @Test
    void theLineOfARowIsTheLineItBeginsOn() {
        TableRows rows = shop().file(
                        "exports/tickets.csv",
                        TICKETS + ",remark",
                        "T1,2026-03-02,flat-top,\"two",
                        "lines\"",
                        "",
                        "T2,2026-03-02,mandolin,")
                .exports()
                .rows(Table.TICKETS);
        assertThat(rows.line(0)).isEqualTo(2);
        assertThat(rows.line(1)).isEqualTo(5);
    }

    @Test
    void theLongestTableNameWinsAndOtherNamesAreListedAsUnread() {
        Exports exports = shop().file("exports/ticketsales.csv", "a")
                .file("exports/notes.txt", "a")
                .exports();
        assertThat(exports.notices()).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo("unread-file");
            assertThat(notice.examples()).containsExactly("exports/notes.txt", "exports/ticketsales.csv");
        });
    }

    @Test
    void olderExportsComeFirst() {
        Exports exports = shop().file("exports/tickets-2026-10.csv", TICKETS)
                .file("exports/tickets-2026-09-30.csv", TICKETS)
                .file("exports/tickets (10).csv", TICKETS)
                .file("exports/tickets (9).csv", TICKETS)
                .exports();
        assertThat(exports.rows(Table.TICKETS).files())
                .extracting(InputFile::name)
                .containsExactly(
                        "exports/tickets (9).csv",
                        "exports/tickets (10).csv",
                        "exports/tickets.csv",
                        "exports/tickets-2026-09-30.csv",
                        "exports/tickets-2026-10.csv");
    }

    @Test
    void aLinkOutOfTheInboxIsRefused() throws IOException {
        ShopFolder shop = shop().file("elsewhere/waits.csv", "ticket,from,reason");
        Files.createSymbolicLink(folder.resolve("exports/waits.csv"), folder.resolve("elsewhere/waits.csv"));
        refused(shop, ExitCode.UNUSABLE_FILE, "exports/waits.csv", "link");
    }

    @Test
    void theDigestIsTheFilesSha256() {
        // sha256sum of the bytes "ticket,from,reason\r\n".
        Exports exports = shop().file("exports/waits.csv", "ticket,from,reason").exports();
        assertThat(exports.rows(Table.WAITS).files().get(0).sha256())
                .isEqualTo("492fcb65b31d86e8f522fbe9ec17e38e27e4b6201babe17f4255da43b24451a6");
    }
}
