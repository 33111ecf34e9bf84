package benchtrue.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ShopFolder;
import benchtrue.intake.ReadExports;
import benchtrue.intake.columns.Table;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Notice;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A shop whose tickets, lines and price book are known, and a time log that is not. */
class DraftMappingTest {
    @TempDir
    Path folder;

    private ShopFolder shop() {
        return new ShopFolder(folder).without("exports/time-log.csv");
    }

    private Draft draft(ShopFolder shop) {
        return draft(shop, "");
    }

    private Draft draft(ShopFolder shop, String own) {
        Settings settings = new ReadSettings().read(shop.path());
        return new DraftMapping().draft(shop.path(), settings, own);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Job No;Tech;Date;Hours Worked;Activity     | T1;Ada;2026-03-03;1.5;repair        | hours   | bench",
                "Auftrag;Mitarbeiterin;Tag;Std.;Art          | T1;Ada;03.03.2026;1,5;Werkbank      | hours   | bench",
                "No ordre;Technicien;Jour;Dur\u00e9e;Activit\u00e9 | T1;Ada;03/03/2026;1,5;devis   | hours   | quoting",
                "Orden de trabajo;Empleado;Fecha;Horas;Tipo  | T1;Ada;13/03/2026;1,5;limpieza      | hours   | shop",
                "Commessa;Operatore;Giorno;Ore;Attivit\u00e0 | T1;Ada;13/03/2026;1,5;preventivo    | hours   | quoting",
                "Opdrachtnr;Monteur;Datum;Minuten;Soort      | T1;Ada;13-03-2026;90;schoonmaak     | minutes | shop",
                "Uppdrag;Tekniker;Dag;Tid;Typ                | T1;Ada;2026-03-13;1:30;bank         | hours   | bench",
            })
    void aTimeLogInTheShopsLanguageIsDraftedSuchThatItCanBeRead(String header, String row, String unit, String kind)
            throws IOException {
        ShopFolder shop = shop().file("exports/clock.csv", header.strip(), row.strip());
        Draft draft = draft(shop);
        assertThat(draft.questions()).as(draft.text()).isEmpty();
        assertThat(draft.text())
                .contains("name = \"clock.csv\"", "table = \"time-log\"", " = \"" + kind + "\"")
                .contains(unit.equals("minutes") ? "hours = \"minutes\"" : "[files.columns]");
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        assertThat(shop.reconciled().setAside().tables()).isEmpty();
        assertThat(shop.reconciled().ledger().time().seconds(0)).isEqualTo(5_400);
    }

    @Test
    void eachColumnIsGivenWithConfidenceAndReason() {
        Draft draft = draft(shop().file(
                        "exports/Zeiten.csv", "Auftrag,Mitarbeiter,Tag,Stunden,Kunde", "T1,Ada,2026-03-03,1.5,Erna"));
        assertThat(draft.text())
                .contains("ticket = \"Auftrag\"  # 99 %: the header says so; all of its cells can be read as keys")
                .contains("all of its values are tickets of the tickets file")
                .contains("# not read: \"Kunde\"")
                .doesNotContain("Erna");
        assertThat(draft.found()).containsExactly("exports/Zeiten.csv: time-log, 95 % sure.");
    }

    @Test
    void aColumnWithoutATellingNameIsFoundByItsValues() {
        ShopFolder shop = shop().file(
                        "exports/tickets.csv",
                        "ticket,opened,instrument_class",
                        "T1,2026-03-02,a",
                        "T2,2026-03-02,a",
                        "T3,2026-03-02,a")
                .file(
                        "exports/clock.csv",
                        "Mark 7,Worker,Day,Hours",
                        "T1,Ada,2026-03-03,1",
                        "T2,Ada,2026-03-03,1",
                        "T3,Ada,2026-03-03,1");
        assertThat(draft(shop).text())
                .contains("ticket = \"Mark 7\"  # 80 %: the header does not tell; all of its values are tickets");
    }

    @Test
    void repairsNamedByTheirTitlesBecomeThePriceBooksKeys() {
        Draft draft = draft(shop().file(
                        "exports/clock.csv",
                        "Job,Worker,Day,Hours,Operation",
                        "T1,Ada,2026-03-03,1,Refret",
                        "T1,Ada,2026-03-03,1,Buffing"));
        assertThat(draft.text())
                .contains(
                        "[words.repair_type]",
                        "\"Refret\" = \"refret\"  # 99 %: 1 row",
                        "\"Buffing\" = \"one-off\"  # ASKED: what is it (1 row)?");
        assertThat(draft.questions())
                .containsExactly(
                        "repairs: what is \"Buffing\"? Until [words.repair_type] of the draft says, such work counts"
                                + " as one-off and is not judged.");
    }

    @Test
    void aSpellingThatTurnsUpLaterIsAskedAndOldAnswersStay() throws IOException {
        String own =
                "[[files]]\nname = \"clock.csv\"\ntable = \"time-log\"\n[files.columns]\nticket = \"Job\"\ntechnician"
                        + " = \"Worker\"\nwork_date = \"Day\"\nhours = \"Hours\"\nrepair_type = \"Operation\"\n"
                        + "[words.repair_type]\n\"Buffing\" = \"setup\"\n";
        ShopFolder shop = shop().file("shop.toml", own)
                .file(
                        "exports/clock.csv",
                        "Job,Worker,Day,Hours,Operation",
                        "T1,Ada,2026-03-03,1,Buffing",
                        "T1,Ada,2026-03-03,1,Re-fret",
                        "T1,Ada,2026-03-03,1,Sanding");
        Draft draft = draft(shop, own);
        assertThat(draft.questions())
                .singleElement()
                .asString()
                .contains("Sanding")
                .doesNotContain("Buffing");
        assertThat(draft.text())
                .containsOnlyOnce("[words.repair_type]")
                .contains("\"Buffing\" = \"setup\"", "\"Re-fret\" = \"refret\"  # 99 %");
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        assertThat(shop.reconciled().setAside().tables()).isEmpty();
        assertThat(draft(shop, draft.text()).text()).as("nothing is new").isEmpty();
    }

    @Test
    void aWordThatNobodyKnowsIsAskedFor() {
        Draft draft = draft(shop().file(
                        "exports/clock.csv",
                        "Job,Worker,Day,Hours,Kind",
                        "T1,Ada,2026-03-03,1,repair",
                        "T1,Ada,2026-03-03,1,Zzz",
                        "T1,Ada,2026-03-03,1,Zzz"));
        assertThat(draft.questions())
                .containsExactly("exports/clock.csv: what does \"Zzz\" in \"Kind\" mean (2 rows)?");
        assertThat(draft.text()).contains("# \"Zzz\" = \"one of bench, handling, quoting, shop\"");
    }

    @Test
    void whatIsMissingIsAskedForInPlainWords() {
        Draft draft = draft(shop().file("exports/Stunden.csv", "Auftrag,Tag,Stunden", "T1,2026-03-03,1"));
        assertThat(draft.questions()).containsExactly("exports/Stunden.csv: which column says who did the work?");
        assertThat(draft.text()).contains("# technician = \"its header\"", "technician = \"the bench\"");
    }

    @Test
    void aNeededTableThatNoFileLooksLikeIsAskedFor() {
        Draft draft = draft(shop().file("exports/Kunden.csv", "Vorname,Strasse", "Erna,Gasse 1"));
        assertThat(draft.text()).isEmpty();
        assertThat(draft.found()).containsExactly("exports/Kunden.csv: looks like no table.");
        assertThat(draft.questions())
                .containsExactly(
                        "No file looks like time-log (one row is one stretch of one technician's time): export it,"
                                + " a run needs it.");
    }

    @Test
    void datesThatCanBeReadInTwoWaysAreAskedFor() {
        Draft draft = draft(shop().file("exports/clock.csv", "Job,Worker,Day,Hours", "T1,Ada,03/04/2026,1"));
        assertThat(draft.questions())
                .containsExactly("exports/clock.csv: which comes first in its dates, day or month?");
    }

    @Test
    void nextMonthsFileOfTheSameSystemNeedsNoNewRule() throws IOException {
        String header = "Job,Worker,Day,Hours";
        ShopFolder shop = shop().file("exports/clock_2026-09.csv", header, "T1,Ada,2026-09-03,1")
                .file("exports/clock_2026-10.csv", header, "T1,Ada,2026-10-03,1");
        Draft draft = draft(shop);
        assertThat(draft.text()).containsOnlyOnce("[[files]]").contains("name = \"clock_*.csv\"");
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        shop.file("exports/clock_2026-11.csv", header, "T1,Ada,2026-11-01,1");
        assertThat(shop.exports().rows(Table.TIME_LOG).size()).isEqualTo(3);
    }

    @Test
    void settingsAreCarriedOverAsTheyStand() throws IOException {
        String own = "# ours\nzone = \"Europe/Dublin\"\n[[files]]\nname = \"old.csv\"\ntable = \"waits\"\n";
        ShopFolder shop =
                shop().file("shop.toml", own).file("exports/clock.csv", "Job,Worker,Day,Hours", "T1,Ada,2026-03-03,1");
        String text = draft(shop, own).text();
        assertThat(text).contains(own);
        Files.writeString(folder.resolve(ReadSettings.FILE), text);
        assertThat(new ReadSettings().read(folder).files()).hasSize(2);
        assertThat(new ReadSettings().read(folder).zone().getId()).isEqualTo("Europe/Dublin");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"Job;Date;Repair;Hours | Code;Title;Hours", "Job;Date;Repair;Price | Code;Title;Price"})
    void aPriceListWithoutPricesOrWithoutHoursIsAskedAndTheDraftCanBeLoaded(String quotes, String prices)
            throws IOException {
        ShopFolder shop = shop().without("exports/tickets.csv")
                .without("exports/quoted-lines.csv")
                .without("price-book/2026-01-01.csv")
                .file("exports/Times.csv", "Day;Who;Job;Time", "2026-03-02;Ada;1001;1.50")
                .file("exports/Quotes.csv", quotes.strip(), "1001;2026-03-01;Refret;9")
                .file("exports/Prices.csv", prices.strip(), "refret;Refret;9");
        Draft draft = draft(shop);
        assertThat(draft.questions())
                .anyMatch(question -> question.startsWith("exports/Prices.csv: which column says"));
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        assertThat(shop.reconciled().ledger().time().seconds(0)).isEqualTo(5_400);
        boolean judged = quotes.contains("Hours");
        assertThat(draft.questions().stream().anyMatch(question -> question.contains("what does a bench hour cost")))
                .isEqualTo(!judged);
        assertThat(ShopFolder.notice(shop.reconciled(), "nothing-to-judge-by").map(Notice::examples))
                .isEqualTo(judged ? Optional.empty() : Optional.of(List.of("exports/Quotes.csv")));
        assertThat(shop.reconciled().ledger().books().newest().types()).hasSize(judged ? 1 : 0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "completed_date | closed",
                "Date collected | closed",
                "Due date       | promised",
                "Finished on    | finished"
            })
    void theDayAfterTheWorkIsNotTheDayThatWasPromised(String header, String column) {
        Draft draft = draft(new ShopFolder(folder)
                .without("exports/tickets.csv")
                .file(
                        "exports/Jobs.csv",
                        "job_id,received," + header + ",instrument",
                        "T1,2026-03-02,2026-03-20,archtop"));
        assertThat(draft.text()).contains(column + " = \"" + header + "\"");
    }

    @Test
    void columnsThatAreNotReadAreNamedWhereANeededOneIsNotFound() {
        Draft draft = draft(new ShopFolder(folder)
                .without("exports/tickets.csv")
                .without("exports/quoted-lines.csv")
                .file("exports/Jobs.csv", "job_id,received,signed off,instrument", "T1,2026-03-02,2026-03-20,archtop")
                .file("exports/Quotes.csv", "Job,Repair,Agreed", "T1,refret,12", "T1,setup,1.5"));
        assertThat(draft.questions())
                .contains(
                        "exports/Jobs.csv: which column says when a ticket was closed? It may be column 3 from the left.",
                        "exports/Quotes.csv: which column says hours quoted? It may be column 3 from the left.");
    }

    @Test
    void aSecondDraftKeepsWhatWorksAndReplacesOnlyTheRuleOfAFileThatChanged() throws IOException {
        ShopFolder shop = shop().file("exports/clock.csv", "Job,Worker,Day,Hours", "T1,Ada,2026-03-03,1")
                .file("exports/Waits.csv", "Job,From,To,Why", "T1,2026-03-03,2026-03-04,parts");
        String first = draft(shop).text();
        Files.writeString(folder.resolve(ReadSettings.FILE), first);
        assertThat(draft(shop, first).text()).isEmpty();

        shop.file("exports/clock.csv", "Order,Worker,Day,Hours,Mood", "T1,Ada,2026-03-03,1,fine")
                .file("exports/Waits.csv", "Job,From,To,Why,Where", "T1,2026-03-03,2026-03-04,parts,shelf");
        Draft second = draft(shop, first);
        assertThat(second.text())
                .contains("# Replaced below", "# name = \"clock.csv\"", "ticket = \"Order\"")
                .containsOnlyOnce("name = \"Waits.csv\"");
        assertThat(second.found()).contains("exports/Waits.csv: the column \"Where\" is new, and not read.");
        Files.writeString(folder.resolve(ReadSettings.FILE), second.text());
        assertThat(shop.exports().rows(Table.TIME_LOG).size()).isEqualTo(1);
        assertThat(draft(shop, second.text()).text()).isEmpty();
    }

    @Test
    void aDraftThatSomebodyChangedIsNeverWrittenOver() throws IOException {
        WriteDraft write = new WriteDraft();
        Path draft = write.write(folder, "a = 1\n");
        assertThat(write.write(folder, "a = 2\n")).hasContent(Files.readString(draft));
        Files.writeString(draft, Files.readString(draft).replace("a = 2", "a = 3"));
        assertThatThrownBy(() -> write.write(folder, "a = 4\n"))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.CANNOT_WRITE))
                .hasMessageContaining("shop-draft.toml: found changes of yours");
        assertThat(draft).content().contains("a = 3");
    }

    @Test
    void aWorkbookWithATitleAboveItsColumnsIsDraftedToo() throws IOException {
        ShopFolder shop = shop();
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(folder.resolve("exports/Stunden.xlsx"))) {
            XSSFSheet sheet = book.createSheet("Oktober");
            row(sheet, 0, "Zeiterfassung");
            row(sheet, 2, "Auftrag", "Mitarbeiter", "Tag", "Stunden");
            row(sheet, 3, "T1", "Ada", "03.03.2026", "1,5");
            book.write(out);
        }
        Draft draft = draft(shop);
        assertThat(draft.text()).contains("name = \"Stunden.xlsx\"", "hours = \"Stunden\"");
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        assertThat(shop.reconciled().ledger().time().seconds(0)).isEqualTo(5_400);
    }

    private static void row(XSSFSheet sheet, int at, String... cells) {
        XSSFRow row = sheet.createRow(at);
        for (int cell = 0; cell < cells.length; cell++) {
            row.createCell(cell).setCellValue(cells[cell]);
        }
    }

    @Test
    void whereEveryFileIsKnownThereIsNothingToDraft() {
        Draft draft = draft(new ShopFolder(folder));
        assertThat(draft.text()).isEmpty();
        assertThat(draft.questions()).isEmpty();
        assertThat(new ReadExports().read(folder, Settings.DEFAULTS).notices()).isEmpty();
    }

    @Test
    void aPriceListInTheInboxIsReadFromADayThatIsAsked() {
        Draft draft = draft(shop().file(
                        "exports/Preisliste.csv",
                        "Leistungsnr,Bezeichnung,Gruppe,Richtzeit,Preis",
                        "a,Neu,fretwork,12,1200"));
        assertThat(draft.questions())
                .anySatisfy(question -> assertThat(question).contains("from which day does this price list hold?"));
        assertThat(draft.text()).contains("effective = \"");
    }
}
