package benchtrue.reconcile;

import static benchtrue.ShopFolder.notice;
import static benchtrue.ShopFolder.setAside;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.Sheets;
import benchtrue.ShopFolder;
import benchtrue.intake.TableRows;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.shop.Balance;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables that do not lie one a file, one entry a row, one value a cell. */
class ShapesTest {
    private static final String TIMES = "[[files]]\nname = \"times.*\"\ntable = \"time-log\"\n";
    private static final String WIDE = TIMES + "[files.columns]\nticket = \"Job\"\ntechnician = \"Who\"\n";
    private static final String DAYS = "work_date = \"(column)\"\nhours = \"(cell)\"\n[files.unpivot]\n";

    @TempDir
    Path folder;

    private ShopFolder shop(String settings) {
        return new ShopFolder(folder).without("exports/time-log.csv").file("shop.toml", settings);
    }

    /** Returns a time log as {@code technician ticket day hours} a row. */
    private static List<String> entries(ShopFolder shop) {
        TableRows rows = shop.exports().rows(Table.TIME_LOG);
        List<String> entries = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            entries.add(rows.text(TimeColumn.TECHNICIAN, row) + " " + rows.text(TimeColumn.TICKET, row) + " "
                    + rows.text(TimeColumn.WORK_DATE, row) + " " + rows.text(TimeColumn.HOURS, row));
        }
        assertThat(shop.reconciled().balances()).allMatch(Balance::holds);
        return entries;
    }

    @Test
    void aWeekWithAColumnADayIsAnEntryACell() {
        ShopFolder shop = shop(WIDE + DAYS + "header = \"weekday\"\nafter = \"Week of\"\n")
                .file(
                        "exports/times.csv",
                        "Week of,Who,Job,Mon,Tue,Wed,Sum",
                        "2026-03-02,Ada,T1,6.5,0,,6.5",
                        "2026-03-02,Bo,T1,,-,2,2",
                        "Total,,,6.5,,2,8.5");
        assertThat(entries(shop)).containsExactly("Ada T1 2026-03-02 6.5", "Bo T1 2026-03-04 2");
        assertThat(shop.exports().rows(Table.TIME_LOG).place(1)).isEqualTo("exports/times.csv line 3 column \"Wed\"");
    }

    @Test
    void aWeekMayBeNamedByItsLastDayOrItsNumber() {
        String toml = WIDE + DAYS + "header = \"weekday\"\n";
        assertThat(entries(shop(toml + "before = \"Week ending\"\n")
                        .file("exports/times.csv", "Week ending,Who,Job,Mon,Fri", "2026-03-08,Ada,T1,1,2")))
                .containsExactly("Ada T1 2026-03-02 1", "Ada T1 2026-03-06 2");
        assertThat(entries(shop(toml + "after = \"{Jahr} KW {KW}\"\n")
                        .file("exports/times.csv", "Jahr,KW,Who,Job,Mo,Fr", "2026,10,Ada,T1,1,2")))
                .containsExactly("Ada T1 2026-03-02 1", "Ada T1 2026-03-06 2");
    }

    @Test
    void aMonthWithAColumnADayMayBeNamedByItsSheet() {
        Map<String, List<String>> sheets = new LinkedHashMap<>();
        sheets.put("M\u00e4rz 2026", List.of("Who|Job|1|2|31", "Ada|T1||1.5|2"));
        sheets.put("April 2026", List.of("Who|Job|1|2|31", "Ada|T1|3||4"));
        sheets.put("Notes", List.of("nothing|here"));
        ShopFolder shop = shop(TIMES + "sheet = \"*\"\n[files.columns]\nticket = \"Job\"\ntechnician = \"Who\"\n" + DAYS
                        + "header = \"day\"\nafter = \"(sheet)\"\n")
                .bytes("exports/times.xlsx", Sheets.of(sheets));
        assertThat(entries(shop))
                .containsExactlyInAnyOrder(
                        "Ada T1 2026-03-02 1.5",
                        "Ada T1 2026-03-31 2",
                        "Ada T1 2026-04-01 3",
                        "Ada T1 April 2026 31 4");
        assertThat(notice(shop.reconciled(), "unread-sheet").orElseThrow().examples())
                .containsExactly("exports/times.xlsx sheet \"Notes\"");
        assertThat(setAside(shop.reconciled()))
                .singleElement()
                .satisfies(row -> assertThat(row.file()).isEqualTo("exports/times.xlsx sheet \"April 2026\""));
    }

    @Test
    void aColumnATechnicianAndDatesInHeadersAreReadToo() {
        assertThat(entries(shop(TIMES
                                + "[files.columns]\nticket = \"Job\"\nwork_date = \"Day\"\ntechnician = \"(column)\"\n"
                                + "hours = \"(cell)\"\n[files.unpivot]\nheader = \"text\"\ncolumns = [\"Ada\", \"Bo\"]\n")
                        .file("exports/times.csv", "Day,Job,Ada,Bo", "2026-03-02,T1,1:30,", "2026-03-03,T1,,2")))
                .containsExactly("Ada T1 2026-03-02 1:30", "Bo T1 2026-03-03 2");
        assertThat(entries(shop(WIDE + DAYS + "header = \"date\"\n")
                        .file("exports/times.csv", "Who,Job,Mo 2.3.2026,Di 3.3.2026,Notes", "Ada,T1,1,2,x")))
                .containsExactly("Ada T1 2026-03-02 1", "Ada T1 2026-03-03 2");
    }

    @Test
    void aKeyInATextIsTakenOutAndATextWithoutOneIsTimeForTheShop() {
        ShopFolder shop = shop(TIMES + "[files.columns]\nticket = \"What\"\ntechnician = \"{First} {Last}\"\n"
                        + "work_date = \"Day\"\n[files.patterns]\nticket = '\\b(T\\d+)'\n")
                .file(
                        "exports/times.csv",
                        "Day,First,Last,What,hours",
                        "2026-03-02,Ada,Berg,Order T1 - archtop,1",
                        "2026-03-02,Ada,Berg,T1/2,1",
                        "2026-03-02,Ada,Berg,sweeping,1",
                        "2026-03-02,Ada,Berg,Order 99,1");
        assertThat(entries(shop))
                .containsExactly(
                        "Ada Berg T1 2026-03-02 1",
                        "Ada Berg T1 2026-03-02 1",
                        "Ada Berg  2026-03-02 1",
                        "Ada Berg Order 99 2026-03-02 1");
        assertThat(setAside(shop.reconciled()))
                .singleElement()
                .satisfies(row -> assertThat(row.line()).isEqualTo(5));
    }

    @Test
    void subtotalsAndHeadingsInTheMiddleAreLeftOutUnderOneReason() {
        ShopFolder shop = shop("").file(
                        "exports/time-log.csv",
                        "technician,work_date,ticket,hours",
                        "March 2026,,,",
                        "Ada,2026-03-02,T1,1.5",
                        "Ada,2026-03-03,T1,2",
                        "Subtotal March,,,3.5",
                        "April 2026",
                        "technician,work_date,ticket,hours",
                        "Ada,2026-04-02,T1,4",
                        "Bo,2026-04-02,,1",
                        ",,,5",
                        "Total,,,8.5");
        assertThat(entries(shop)).hasSize(4);
        assertThat(setAside(shop.reconciled())).isEmpty();
        assertThat(notice(shop.reconciled(), "totals-row").orElseThrow().count())
                .isEqualTo(6);
    }

    @Test
    void aRowThatLacksItsDayIsNoSubtotalWhateverItsHours() {
        ShopFolder shop = shop("").file(
                        "exports/time-log.csv",
                        "technician,work_date,ticket,hours",
                        "Ada,2026-03-02,T1,1",
                        "Ada,2026-03-03,T1,1",
                        "Ada,,T1,2",
                        "Total,,,4");
        assertThat(setAside(shop.reconciled()))
                .singleElement()
                .satisfies(row -> assertThat(row.line()).isEqualTo(4));
    }

    @Test
    void aHeadingCanSayWhatItsRowsDoNot() {
        assertThat(entries(shop(TIMES + "[files.columns]\ntechnician = \"(heading)\"\n")
                        .file(
                                "exports/times.csv",
                                "work_date,ticket,hours",
                                "Ada,,",
                                "2026-03-02,T1,1",
                                "Bo,,",
                                "2026-03-02,T1,2")))
                .containsExactly("Ada T1 2026-03-02 1", "Bo T1 2026-03-02 2");
    }

    @Test
    void aCellThatStandsOnceAboveItsRowsIsFilledDown() {
        assertThat(entries(shop(TIMES + "fill_down = [\"technician\", \"work_date\"]\n")
                        .file(
                                "exports/times.csv",
                                "technician,work_date,ticket,hours",
                                "Ada,2026-03-02,T1,1",
                                ",,T1,2",
                                "Bo,2026-03-03,T1,3")))
                .containsExactly("Ada T1 2026-03-02 1", "Ada T1 2026-03-02 2", "Bo T1 2026-03-03 3");
    }

    @Test
    void oneFileOfTicketsAndLinesIsReadAsBothAndItsFirstRowCounts() {
        String rules = "[[files]]\nname = \"all.csv\"\ntable = \"%s\"\n";
        ShopFolder shop = new ShopFolder(folder)
                .without("exports/tickets.csv")
                .without("exports/quoted-lines.csv")
                .file("shop.toml", rules.formatted("tickets") + rules.formatted("quoted-lines"))
                .file(
                        "exports/all.csv",
                        "ticket,opened,instrument_class,line,repair_type,quoted_hours,quoted_labour",
                        "T1,2026-03-02,flat-top,1,refret,12,1200",
                        "T1,2026-03-02,archtop,2,setup,1.5,150",
                        "T2,2026-03-03,flat-top,1,setup,1.5,150");
        Reconciled result = shop.reconciled();
        assertThat(result.ledger().tickets().size()).isEqualTo(2);
        assertThat(result.ledger().lines().size()).isEqualTo(3);
        assertThat(result.balances()).allMatch(Balance::holds);
        assertThat(notice(result, "ticket-against-itself").orElseThrow().examples())
                .containsExactly("exports/all.csv line 3: the first row is exports/all.csv line 2");
    }

    @Test
    void aWorkbookWithASheetATableAndTwoTablesOnOneSheetIsRead() {
        Map<String, List<String>> sheets = new LinkedHashMap<>();
        sheets.put("Log", List.of("technician|work_date|ticket|hours", "Ada|2026-03-02|T1|1.5"));
        List<String> both = new ArrayList<>(List.of(
                "ticket|opened|instrument_class|status",
                "T1|2026-03-02|flat-top|closed",
                "T2|2026-03-02|flat-top|open"));
        both.addAll(List.of("", "ticket|line|repair_type|quoted_hours", "T1|1|refret|12", "T2|1|setup|1.5"));
        sheets.put("Jobs", both);
        sheets.put(
                "Prices",
                List.of(
                        "repair_type|title|family|book_hours|book_labour",
                        "refret|Refret|fretwork|12|1200",
                        "setup|Setup|setup|1.5|150"));
        String rules = "[[files]]\nname = \"shop.xlsx\"\ntable = \"%s\"\nsheet = \"%s\"\n";
        ShopFolder shop = shop(rules.formatted("time-log", "Log") + rules.formatted("tickets", "Jobs")
                        + rules.formatted("quoted-lines", "Jobs") + rules.formatted("price-book", "Prices")
                        + "effective = \"2026-01-01\"\n")
                .without("exports/tickets.csv")
                .without("exports/quoted-lines.csv")
                .without("price-book/2026-01-01.csv")
                .bytes("exports/shop.xlsx", Sheets.of(sheets));
        Reconciled result = shop.reconciled();
        assertThat(result.ledger().tickets().size()).isEqualTo(2);
        assertThat(result.ledger().lines().size()).isEqualTo(2);
        assertThat(result.ledger().time().size()).isEqualTo(1);
        assertThat(setAside(result)).isEmpty();
    }

    @Test
    void aWideColumnOrASheetThatIsNotThereIsNamed() {
        assertThatThrownBy(() -> shop(WIDE + DAYS + "header = \"weekday\"\nafter = \"Week of\"\n")
                        .file("exports/times.csv", "Week off,Who,Job,Mon", "2026-03-02,Ada,T1,1")
                        .exports())
                .hasMessageContaining("found no column \"Week of\"")
                .hasMessageContaining("the nearest there is \"Week off\"");
        assertThatThrownBy(() -> shop(TIMES + "sheet = \"Juni\"\n")
                        .without("exports/times.csv")
                        .bytes("exports/times.xlsx", Sheets.of(Map.of("Juli", List.of("technician|work_date"))))
                        .exports())
                .hasMessageContaining("expected \"Juni\", as shop.toml says");
    }
}
