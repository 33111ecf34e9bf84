package benchtrue.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.TimeEntries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Columns whose headers say it in the shop's own words, or not at all. */
class FoundColumnsTest {
    @TempDir
    Path folder;

    private Draft draft(ShopFolder shop) {
        return new DraftMapping().draft(shop.path(), new ReadSettings().read(shop.path()), "");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "quoted hrs",
                "Hrs quoted",
                "Est. time",
                "Estimate (h)",
                "Sollzeit",
                "Soll-Std.",
                "Vorgabezeit",
                "Heures pr\u00e9vues",
                "Horas estimadas",
                "Ore previste",
                "Geschatte uren",
                "Hours",
                "Std"
            })
    void quotedHoursAreFoundWhateverTheOrderOfTheWords(String header) {
        ShopFolder shop = new ShopFolder(folder)
                .without("exports/quoted-lines.csv")
                .file("exports/quotes.csv", "Order,Repair," + header, "T1,refret,12.5", "T1,setup,1.5");
        assertThat(draft(shop).text()).contains("quoted_hours = \"" + header + "\"");
    }

    @ParameterizedTest
    @CsvSource({
        "Date sortie, closed",
        "Out, closed",
        "Completed date, closed",
        "Date due, promised",
        "Due date, promised",
        "Fertig, finished"
    })
    void aDayOfATicketIsWhatItsHeaderSays(String header, String column) {
        ShopFolder shop = new ShopFolder(folder)
                .without("exports/tickets.csv")
                .file("exports/Jobs.csv", "Fiche,In,Instrument," + header, "T1,2026-03-02,archtop,2026-03-20");
        assertThat(draft(shop).text()).contains("opened = \"In\"", column + " = \"" + header + "\"");
    }

    @Test
    void aTicketWithASignInOneFileIsTheOneWithoutItInTheOther() throws IOException {
        ShopFolder shop = new ShopFolder(folder)
                .without("exports/tickets.csv")
                .without("exports/quoted-lines.csv")
                .without("exports/time-log.csv")
                .file(
                        "exports/orders.csv",
                        "Order,Received,Instrument",
                        "#1041,2026-03-02,archtop",
                        "#1042,2026-03-02,bass",
                        "#1043,2026-03-02,banjo")
                .file("exports/quotes.csv", "Order,Repair,Quoted hours", "#1041,refret,12", "#1042,refret,12")
                .file(
                        "exports/clock.csv",
                        "Who,Day,Task,Hours",
                        "Ada,2026-03-03,Order 1041 - frets out,5",
                        "Ada,2026-03-04,order 1042 bench,6",
                        "Ada,2026-03-05,1043 again,1");
        Draft draft = draft(shop);
        assertThat(draft.questions()).as(draft.text()).isEmpty();
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        assertThat(shop.reconciled().setAside().tables()).isEmpty();
        assertThat(shop.reconciled().ledger().time().size()).isEqualTo(3);
    }

    @Test
    void whoIsPaidIsFoundByTheNamesInTheTimeLog() {
        ShopFolder shop = new ShopFolder(folder)
                .file(
                        "exports/time-log.csv",
                        "ticket,technician,work_date,hours",
                        "T1,Ada,2026-03-03,1",
                        "T1,Bo,2026-03-03,1")
                .file("exports/wages.csv", "Nemo,Stundenlohn,Seit", "Ada,21,2024-01-01", "Bo,22,2024-01-01");
        assertThat(draft(shop).text()).contains("technician = \"Nemo\"  # 80 %: the header does not tell; each");
    }

    @Test
    void theHeadingAboveTheFirstBlockNamesItsTechnicianToo() throws IOException {
        ShopFolder shop = new ShopFolder(folder)
                .without("exports/time-log.csv")
                .file(
                        "exports/clock.csv",
                        "Rosa,,",
                        "Order,Day,Hours",
                        "T1,2026-03-03,5",
                        "Sven,,",
                        "Order,Day,Hours",
                        "T1,2026-03-04,6",
                        "Tove,,",
                        "T1,2026-03-05,1");
        Draft draft = draft(shop);
        assertThat(draft.text()).contains("technician = \"(heading)\"");
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        assertThat(shop.reconciled().setAside().tables()).isEmpty();
        TimeEntries time = shop.reconciled().ledger().time();
        assertThat(time.size()).isEqualTo(3);
        assertThat(IntStream.range(0, time.size()).map(time::technician)).doesNotHaveDuplicates();
    }

    @Test
    void oneWeeksDatesAreReadAsTheOtherWeeksTell() throws IOException {
        ShopFolder shop = new ShopFolder(folder)
                .without("exports/time-log.csv")
                .file("exports/week 10.csv", "Name,Order,02/03/2026,03/03/2026,04/03/2026,Total", "Ada,T1,,5,,5")
                .file("exports/week 11.csv", "Name,Order,09/03/2026,10/03/2026,11/03/2026,Total", "Ada,T1,6,,1,7")
                .file("exports/week 12.csv", "Name,Order,16/03/2026,17/03/2026,18/03/2026,Total", "Ada,T1,,,2,2");
        Draft draft = draft(shop);
        assertThat(draft.questions()).as(draft.text()).isEmpty();
        assertThat(draft.found()).containsExactly("exports/week 10.csv and 2 more like it: time-log, 95 % sure.");
        assertThat(draft.text()).contains("dates = \"day-month-year\"  # some of these files alone leave it open");
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        TimeEntries time = shop.reconciled().ledger().time();
        assertThat(time.size()).isEqualTo(4);
        assertThat(IntStream.range(0, 4).mapToObj(row -> LocalDate.ofEpochDay(time.workDay(row))))
                .contains(LocalDate.of(2026, 3, 3), LocalDate.of(2026, 3, 11));
        assertThat(new DraftMapping()
                        .draft(shop.path(), new ReadSettings().read(shop.path()), draft.text())
                        .found())
                .as("a day's column is no new column")
                .isEmpty();
    }

    @Test
    void itemsWithNamesAreRepairsAndItemsWithNumbersAreLines() {
        ShopFolder shop = new ShopFolder(folder)
                .without("exports/quoted-lines.csv")
                .file("exports/sold.csv", "ref,item,net price", "T1,Refret,1200", "T1,Set-up,150")
                .file("exports/sold2.csv", "ref,item,repair,net price", "T1,1,Refret,1200", "T1,2,Set-up,150");
        assertThat(draft(shop).text()).contains("repair_type = \"item\"", "line = \"item\"");
    }

    @Test
    void whereNoNameTellsAColumnTheOnlyOneThatCanBeItIsTaken() throws IOException {
        ShopFolder shop = new ShopFolder(folder)
                .without("exports/time-log.csv")
                .file(
                        "exports/qux.csv",
                        "Aaa,Bbb,Ccc,Ddd",
                        "2026-03-03,Ada,T1,1.5",
                        "2026-03-03,Bo,T1,0.75",
                        "2026-03-04,Ada,T1,2.25",
                        "2026-03-04,Bo,T1,1",
                        "2026-03-05,Ada,T1,1.5",
                        "2026-03-05,Bo,T1,1.5",
                        "2026-03-06,Ada,T1,1.5",
                        "2026-03-06,Bo,T1,1.5",
                        "2026-W11,Bo,T1,0.5")
                .file(
                        "exports/tickets.csv",
                        "ticket,opened,instrument_class",
                        "T1,2026-03-02,a",
                        "T2,2026-03-02,a",
                        "T3,2026-03-02,a");
        Draft draft = draft(shop);
        assertThat(draft.text())
                .contains(
                        "work_date = \"Aaa\"  # 55 %: the header does not tell; no other column can be read as day worked",
                        "technician = \"Bbb\"", "hours = \"Ddd\"");
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        TimeEntries time = shop.reconciled().ledger().time();
        assertThat(time.size()).isEqualTo(9);
        assertThat(LocalDate.ofEpochDay(time.workDay(8)))
                .as("the Monday of week 11")
                .isEqualTo(LocalDate.of(2026, 3, 9));
    }

    @Test
    void whereTwoColumnsCanBeItNeitherIsTaken() {
        ShopFolder shop = new ShopFolder(folder)
                .without("exports/quoted-lines.csv")
                .file(
                        "exports/quotes.csv",
                        Stream.concat(
                                        Stream.of("Order,Repair,Xyz,Zyx"),
                                        IntStream.range(0, 10).mapToObj(row -> "T1,refret,1.5,2." + row))
                                .toArray(String[]::new));
        assertThat(draft(shop).text()).doesNotContain("\nquoted_hours = ").contains("# quoted_hours = ");
    }

    @Test
    void whatALineCostsIsNotItsNumber() {
        ShopFolder shop = new ShopFolder(folder)
                .without("exports/quoted-lines.csv")
                .file("exports/quotes.csv", "Order,Line item,Line total", "T1,Refret,1200.00", "T1,Set-up,150.00");
        assertThat(draft(shop).text()).doesNotContain("\nline = ");
    }

    @Test
    void hoursOfAWeekAreSumsOverTheWeek() throws IOException {
        ShopFolder shop = new ShopFolder(folder)
                .without("exports/time-log.csv")
                .file("exports/weeks.csv", "Week,Order,Who,Hours", "2026-W10,T1,Ada,31.5", "2026-W11,T1,Ada,2");
        Draft draft = draft(shop);
        assertThat(draft.questions()).as(draft.text()).isEmpty();
        assertThat(draft.text()).contains("span = \"week\"  # its days are weeks");
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        assertThat(shop.reconciled().setAside().tables()).isEmpty();
    }

    @Test
    void tablesOneBelowTheOtherAreFoundByHeadersWithAbbreviations() {
        ShopFolder shop = new ShopFolder(folder)
                .without("exports/tickets.csv")
                .without("exports/quoted-lines.csv")
                .file(
                        "exports/Taller.csv",
                        "\u00D3rdenes,,,",
                        "N.\u00BA orden,Instrumento,Entrada,Salida",
                        "T1,archtop,2026-03-02,2026-03-20",
                        ",,,",
                        "Presupuestos,,,",
                        "N.\u00BA orden,Reparaci\u00F3n,Horas presup.,Importe",
                        "T1,refret,12,1200.00",
                        "T1,setup,1.5,150.00");
        assertThat(draft(shop).found())
                .satisfiesExactly(
                        tickets -> assertThat(tickets).startsWith("exports/Taller.csv: tickets"),
                        lines -> assertThat(lines).startsWith("exports/Taller.csv: quoted-lines"));
    }
}
