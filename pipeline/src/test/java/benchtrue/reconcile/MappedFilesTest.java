package benchtrue.reconcile;

import static benchtrue.ShopFolder.notice;
import static benchtrue.ShopFolder.setAside;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ShopFolder;
import benchtrue.intake.TableRows;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TicketColumn;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files with names, headers, words and units of the shop's own systems. */
class MappedFilesTest {
    private static final String TIMES = """
            [[files]]
            name = "Zeiten*"
            table = "time-log"
            hours = "minutes"
            [files.columns]
            entry = "Nr."
            ticket = "Auftrag"
            technician = "Wer"
            work_date = "Tag"
            hours = "Dauer"
            kind = "Art"
            [files.values.kind]
            "Werkbank" = "bench"
            "Laden" = "shop"
            """;
    private static final String TIMES_HEADER = "Nr.,Auftrag,Wer,Tag,Dauer,Art,Kunde";

    @TempDir
    Path folder;

    private ShopFolder shop(String rules) {
        return new ShopFolder(folder).without("exports/time-log.csv").file("shop.toml", rules);
    }

    private ShopFolder clock(String... rows) {
        String[] lines = new String[rows.length + 1];
        lines[0] = TIMES_HEADER;
        System.arraycopy(rows, 0, lines, 1, rows.length);
        return shop(TIMES).file("exports/Zeiten M\u00e4rz.txt", lines);
    }

    private static TableRows log(ShopFolder shop) {
        return shop.exports().rows(Table.TIME_LOG);
    }

    private static void refused(ShopFolder shop, ExitCode code, String... words) {
        assertThatThrownBy(shop::exports)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(code))
                .hasMessageContainingAll(words);
    }

    @Test
    void aTimeClocksOwnHeadersWordsAndMinutesAreUnderstood() {
        Reconciled result = clock("1,T1,Ada,2026-03-03,90,Werkbank,Erna", "2,,Ada,2026-03-03,\"0:50\",laden ,")
                .reconciled();
        assertThat(result.setAside().tables()).isEmpty();
        assertThat(result.ledger().time().seconds(0)).as("the shop's own time").isEqualTo(3_000);
        assertThat(result.ledger().time().seconds(1)).as("bench time").isEqualTo(5_400);
    }

    @ParameterizedTest
    @CsvSource({
        "minutes, 90, 5400",
        "minutes, 100, 6000",
        "minutes, -100, -6000",
        "minutes, 7.25, 435",
        "minutes, 1:30, 5400",
        "hundredths, 150, 5400",
        "hundredths, 1, 36",
        "hundredths, 0.5, 18",
        "hours, 1.5, 5400",
    })
    void aNumberForHoursCountsWhatTheRuleSays(String unit, String text, long seconds) {
        ShopFolder shop = shop("[[files]]\nname=\"clock.csv\"\ntable=\"time-log\"\nhours=\"" + unit + "\"")
                .file("exports/clock.csv", "technician,work_date,hours", "Ada,2026-03-03," + text);
        assertThat(log(shop).value(TimeColumn.HOURS, 0)).isEqualTo(seconds);
        assertThat(log(shop)
                        .column(TimeColumn.HOURS)
                        .rounding(log(shop).code(TimeColumn.HOURS, 0))
                        .signum())
                .isZero();
    }

    @Test
    void minutesFinerThanASecondAreRoundedAndTheRoundingIsKept() {
        TableRows rows = log(clock("1,T1,Ada,2026-03-03,7.33,Werkbank,"));
        assertThat(rows.value(TimeColumn.HOURS, 0)).isEqualTo(440);
        assertThat(rows.column(TimeColumn.HOURS).rounding(rows.code(TimeColumn.HOURS, 0)))
                .isBetween(new java.math.BigDecimal("0.1999999999"), new java.math.BigDecimal("0.2000000001"));
    }

    @Test
    void whatHoldsForEveryRowIsSaidOnce() {
        ShopFolder shop =
                shop("""
                        [[files]]
                        name = "clock.csv"
                        table = "time-log"
                        [files.constants]
                        technician = "Ada"
                        kind = "shop"
                        """).file("exports/clock.csv", "entry,work_date,hours", "1,2026-03-03,1", "2,2026-03-04,2");
        TableRows rows = log(shop);
        assertThat(rows.text(TimeColumn.TECHNICIAN, 1)).isEqualTo("Ada");
        assertThat(shop.reconciled().setAside().tables()).isEmpty();
    }

    @Test
    void oneTimeStampColumnMayServeSeveralColumns() {
        ShopFolder shop = shop("""
                        [[files]]
                        name = "clock.csv"
                        table = "time-log"
                        [files.columns]
                        entry = "No"
                        ticket = "No"
                        """).file("exports/clock.csv", "No,technician,work_date,hours", "T1,Ada,2026-03-03,1");
        assertThat(log(shop).text(TimeColumn.ENTRY, 0)).isEqualTo("T1");
        assertThat(log(shop).text(TimeColumn.TICKET, 0)).isEqualTo("T1");
    }

    @Test
    void theShopsOwnNamesOfRepairsAndTraitsBecomeTheBooks() {
        ShopFolder shop = shop("""
                        [[files]]
                        name = "quoted-lines.csv"
                        table = "quoted-lines"
                        [files.values.repair_type]
                        "Bundierung neu" = "refret"
                        [[files]]
                        name = "tickets.csv"
                        table = "tickets"
                        [files.values.traits]
                        "Binding" = "bound-board"
                        """)
                .file("exports/quoted-lines.csv", "ticket,line,repair_type", "T1,1,bundierung NEU ", "T1,2,setup")
                .file("exports/tickets.csv", "ticket,opened,instrument_class,traits", "T1,2026-03-02,x,binding;hot")
                .file("exports/time-log.csv", "technician,work_date,hours");
        assertThat(shop.exports().rows(Table.QUOTED_LINES).text(LineColumn.REPAIR_TYPE, 0))
                .isEqualTo("refret");
        assertThat(shop.exports().rows(Table.TICKETS).text(TicketColumn.TRAITS, 0))
                .isEqualTo("bound-board;hot");
    }

    @Test
    void aMappedColumnHidesOneThatOnlyHappensToHaveItsName() {
        ShopFolder shop =
                shop("""
                        [[files]]
                        name = "clock.csv"
                        table = "time-log"
                        [files.columns]
                        hours = "Real"
                        ticket = "line"
                        """).file("exports/clock.csv", "line,technician,work_date,hours,Real", "T1,Ada,2026-03-03,99,1");
        assertThat(log(shop).text(TimeColumn.TICKET, 0)).isEqualTo("T1");
        assertThat(log(shop).has(TimeColumn.LINE)).isFalse();
        assertThat(log(shop).value(TimeColumn.HOURS, 0)).isEqualTo(3_600);
    }

    @Test
    void rowsSetAsideKeepTheShopsOwnTextAndComeBackUnderstood() {
        ShopFolder shop = clock("1,T1,Ada,2026-03-03,90,Werkbank,Erna", "2,T9,Ada,2026-03-04,30,Werkbank,Erna");
        SetAsideRow row = setAside(shop.reconciled()).get(0);
        assertThat(row.texts()).contains("T9", "30", "Werkbank").doesNotContain("Erna");
        Reconciled back = shop.file(
                        "exports/time-log-corrected.csv",
                        "source_file,source_line,source_digest,reasons,entry,ticket,technician,work_date,hours,kind",
                        row.file() + "," + row.line() + "," + row.digest() + ",,2,T1,Ada,2026-03-04,30,Werkbank")
                .reconciled();
        assertThat(back.setAside().tables()).isEmpty();
        assertThat(back.ledger().time().size()).isEqualTo(2);
        assertThat(back.ledger().time().seconds(1)).isEqualTo(1_800);
    }

    @Test
    void aPriceListKeepsItsOwnHeaders() {
        Reconciled result = shop("""
                        [[files]]
                        name = "2026-??-01.csv"
                        table = "price-book"
                        [files.columns]
                        repair_type = "Art.-Nr."
                        title = "Bezeichnung"
                        """)
                .file(
                        "price-book/2026-01-01.csv",
                        "Art.-Nr.,Bezeichnung,family,book_hours,book_labour",
                        "refret,Neu,fretwork,12,1200",
                        "setup,Einstellen,setup,1.5,150")
                .file("exports/time-log.csv", "technician,work_date,hours")
                .reconciled();
        assertThat(result.ledger()
                        .books()
                        .versions()
                        .get(0)
                        .type("setup")
                        .orElseThrow()
                        .title())
                .isEqualTo("Einstellen");
    }

    @Test
    void twoRulesForOneFileAreRefusedInsteadOfTheFirstWinning() {
        refused(
                shop(TIMES + "[[files]]\nname = \"*M\u00e4rz*\"\ntable = \"time-log\"\n")
                        .file("exports/Zeiten M\u00e4rz.csv", TIMES_HEADER),
                ExitCode.SETTINGS,
                "shop.toml, lines 1 and 15: found two rules for exports/Zeiten M\u00e4rz.csv");
    }

    @Test
    void aRuleThatFitsNoFileIsListed() {
        Reconciled result = shop(TIMES)
                .file("exports/time-log.csv", "technician,work_date,hours")
                .reconciled();
        assertThat(notice(result, "unused-rule").orElseThrow().examples()).containsExactly("line 1: Zeiten*");
    }

    @Test
    void aMappedHeaderThatIsNotThereIsRefusedWithTheNearest() {
        refused(
                shop(TIMES).file("exports/Zeiten.csv", "Nr.,Auftraege,Wer,Tag,Dauer,Art"),
                ExitCode.UNUSABLE_FILE,
                "exports/Zeiten.csv, line 1: found no column \"Auftrag\", expected it as ticket by shop.toml line 7",
                "(the nearest there is \"Auftraege\")");
    }

    @Test
    void aFileThatNothingFitsPointsToTheDraft() {
        Reconciled result =
                new ShopFolder(folder).file("exports/Zeiten.csv", TIMES_HEADER).reconciled();
        assertThat(notice(result, "unread-file").orElseThrow().words()).contains("benchtrue map");
        refused(
                shop("").file("exports/Zeiten.csv", TIMES_HEADER),
                ExitCode.MISSING,
                "found no file of the table time-log",
                "benchtrue map");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "table = \"timelog\"  | 1 | `found \"timelog\", which is no table. Did you mean \"time-log\"?`",
                "TABLE [files.columns]\\nticktet = \"a\" | 4 | `no column of time-log. Did you mean \"ticket\"?`",
                "TABLE [files.columns]\\nqqqqqqqqqqqqq = \"a\" | 4 | `There are: entry, ticket`",
                "TABLE [files.constants]\\nhours = \"x\" | 4 | `hours: found \"x\", expected hours such as 1.5`",
                "TABLE [files.constants]\\nkind = \"bnch\" | 4 | `kind: found \"bnch\", expected one of bench`",
                "TABLE [files.columns]\\nkind = \"a\"\\n[files.constants]\\nkind = \"shop\" | 6 | `found kind among the columns and the constants`",
                "TABLE [files.values.kind]\\na = \"bech\" | 4 | `found \"bech\", which is no word of kind. Did you mean \"bench\"?`",
                "TABLE [files.values.hours]\\na = \"1\" | 3 | `found words for hours, which holds hours such as`",
                "TABLE [files.values.kinds]\\na = \"bench\" | 3 | `Did you mean \"kind\"?`",
                "TABLE [files.values.kind]\\nA = \"bench\"\\na = \"shop\" | 5 | `found \"a\" for bench and for shop`",
            })
    void namesThatTheContractLacksAreRefusedWithTheirLine(String rule, int line, String words) {
        String toml = "[[files]]\n" + (rule.startsWith("TABLE") ? "" : "name = \"x\"\n")
                + rule.replace("TABLE ", "name = \"x\"; table = \"time-log\"\n")
                        .replace("; ", "\n")
                        .replace("\\n", "\n");
        int shift = rule.startsWith("TABLE") ? 1 : 0;
        refused(
                shop(toml).file("exports/time-log.csv", "technician,work_date,hours"),
                ExitCode.SETTINGS,
                "shop.toml, line " + (line + shift),
                words);
    }

    @ParameterizedTest
    @CsvSource({
        "'currency = \"EUR\"', $ 120.00, 'line 2, column quoted_labour: found \"$ 120.00\", expected amounts in EUR'",
        "'currency = \"EUR\"', 120 CHF, 'found \"120 CHF\", expected amounts in EUR'",
        "'currency = \"CAD\"', US$120, 'expected amounts in CAD'",
        "'', $120;\u20ac80, 'line 3, column quoted_labour: found \"\u20ac80\", expected one currency'",
        "'', 120 SEK;80 NOK, 'exports/quoted-lines.csv, line 2, column quoted_labour has \"120 SEK\"'",
    })
    void severalCurrenciesAreRefused(String settings, String amounts, String words) {
        String[] cells = amounts.split(";");
        ShopFolder shop = new ShopFolder(folder)
                .file("shop.toml", settings)
                .file(
                        "exports/quoted-lines.csv",
                        "ticket,line,repair_type,quoted_labour",
                        "T1,1,refret," + cells[0],
                        "T1,2,setup," + (cells.length > 1 ? cells[1] : "1"));
        refused(shop, ExitCode.UNUSABLE_FILE, words);
    }

    @ParameterizedTest
    @CsvSource({"CAD, $120", "EUR, 120 EUR", "EUR, '\u20ac 120'", "SEK, 120 kr", "EUR, n/a 3"})
    void theShopsOwnCurrencyIsNoSecondOne(String currency, String amount) {
        ShopFolder shop = new ShopFolder(folder)
                .file("shop.toml", "currency = \"" + currency + "\"")
                .file("exports/quoted-lines.csv", "ticket,line,repair_type,quoted_labour", "T1,1,refret," + amount);
        assertThat(shop.exports().rows(Table.QUOTED_LINES).size()).isEqualTo(1);
    }
}
