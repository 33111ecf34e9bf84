package benchtrue.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadFileRulesTest {
    private static final String EVERY_KEY = """
            currency = "EUR"
            [[files]]
            name = "Zeiten*.csv"
            table = "time-log"
            encoding = "windows-1252"
            delimiter = "tab"
            quote = "none"
            decimal = ","
            dates = "day-month-year"
            header_line = 4
            totals_row = true
            sheet = ["March", "April *"]
            effective = "2026-01-01"
            fill_down = "Auftrag"
            hours = "minutes"
            [files.columns]
            ticket = "Auftrag"
            [files.values.kind]
            "Werkbank" = "bench"
            [files.constants]
            technician = "t1"
            [files.patterns]
            ticket = '(\\d+)'
            [files.unpivot]
            header = "weekday"
            columns = ["Mo", "Di"]
            after = "Woche"
            [[files]]
            name = "Zeitkonto.xlsx"
            table = "paid-hours"
            """;

    @TempDir
    Path shop;

    private Settings read(String toml) throws IOException {
        Files.writeString(shop.resolve(ReadSettings.FILE), toml);
        return new ReadSettings().read(shop);
    }

    @Test
    void everyKeyOfARuleIsReadWithItsLine() throws IOException {
        assertThat(read(EVERY_KEY).files().get(0))
                .isEqualTo(new FileRule(
                        "Zeiten*.csv",
                        "time-log",
                        Optional.of(Charset.forName("windows-1252")),
                        Optional.of('\t'),
                        Optional.of(FileRule.NO_QUOTE),
                        Optional.of(DecimalSign.COMMA),
                        Optional.of(DateOrder.DAY_MONTH_YEAR),
                        OptionalInt.of(4),
                        Optional.of(TotalsRow.PRESENT),
                        new FileShape(
                                List.of("March", "April *"),
                                Optional.of(LocalDate.of(2026, 1, 1)),
                                List.of("Auftrag"),
                                List.of(new Pair("ticket", "(\\d+)", 23)),
                                Optional.of(new Unpivot(
                                        List.of("Mo", "Di"),
                                        UnpivotHeader.WEEKDAY,
                                        Optional.of("Woche"),
                                        Optional.empty(),
                                        24))),
                        Optional.of(HoursUnit.MINUTES),
                        Optional.empty(),
                        List.of(new Pair("ticket", "Auftrag", 17)),
                        List.of(new ValueMap("kind", List.of(new Pair("Werkbank", "bench", 19)), 18)),
                        List.of(new Pair("technician", "t1", 21)),
                        2));
    }

    @Test
    void whatARuleLeavesOutIsToldFromTheFile() throws IOException {
        FileRule bare = read(EVERY_KEY).files().get(1);
        assertThat(bare.line()).isEqualTo(28);
        assertThat(List.of(bare.encoding(), bare.delimiter(), bare.quote(), bare.decimal(), bare.dates()))
                .containsOnly(Optional.empty());
        assertThat(bare.shape()).isEqualTo(FileShape.PLAIN);
        assertThat(bare.headerLine()).isEmpty();
        assertThat(bare.columns()).isEmpty();
    }

    @Test
    void theRecordOfARunShowsTheRulesAsWritten() throws IOException {
        assertThat(read(EVERY_KEY).byKey().get("files"))
                .isEqualTo(List.of(
                        Map.ofEntries(
                                Map.entry("name", "Zeiten*.csv"),
                                Map.entry("table", "time-log"),
                                Map.entry("encoding", "windows-1252"),
                                Map.entry("delimiter", "tab"),
                                Map.entry("quote", "none"),
                                Map.entry("decimal", ","),
                                Map.entry("dates", "day-month-year"),
                                Map.entry("header_line", 4),
                                Map.entry("totals_row", true),
                                Map.entry("sheet", List.of("March", "April *")),
                                Map.entry("effective", "2026-01-01"),
                                Map.entry("fill_down", List.of("Auftrag")),
                                Map.entry("patterns", Map.of("ticket", "(\\d+)")),
                                Map.entry(
                                        "unpivot",
                                        Map.of("columns", List.of("Mo", "Di"), "header", "weekday", "after", "Woche")),
                                Map.entry("hours", "minutes"),
                                Map.entry("columns", Map.of("ticket", "Auftrag")),
                                Map.entry("values", Map.of("kind", Map.of("Werkbank", "bench"))),
                                Map.entry("constants", Map.of("technician", "t1"))),
                        Map.of("name", "Zeitkonto.xlsx", "table", "paid-hours")));
    }

    @ParameterizedTest
    @CsvSource({
        "Zeiten*.csv, Zeiten 2026-03.csv, true",
        "Zeiten*.csv, zeiten.CSV, true",
        "Zeiten*.csv, Zeiten.csv.bak, false",
        "Zeiten?.csv, Zeiten12.csv, false",
        "a.b+c?.csv, a.b+c1.csv, true",
        "a.b+c?.csv, aXb+c1.csv, false",
        "Auftr\u00E4ge.csv, Auftra\u0308ge.csv, true",
    })
    void aPatternFitsNamesWhateverCaseOrAccentsTheFileSystemWrites(String pattern, String file, boolean fits)
            throws IOException {
        Settings read = read("[[files]]\nname = \"" + pattern + "\"\ntable = \"tickets\"");
        assertThat(read.files().get(0).fits(file)).isEqualTo(fits);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "files = 1                                  | 1 | 1 | `unknown key \"files\"`",
                "[files]\\nname = \"a\"                     | 1 | 1 | `unknown key \"files\"`",
                "files = [1]                                | 1 | 10 | `expected [[files]] sections`",
                "[[files]]\\nname = \"a\"                   | 1 | 1 | `[[files]] without \"table\", expected a table's name`",
                "[[files]]\\ntable = \"tickets\"            | 1 | 1 | `[[files]] without \"name\"`",
                "[[files]]\\ncolums = \"a\"                 | 2 | 1 | `unknown key \"colums\" of [[files]]. Did you mean \"columns\"?`",
                "[[files]]\\nname = \"x/y.csv\"             | 2 | 1 | `\"files.name\" is \"x/y.csv\", expected a file name`",
                "[[files]]\\nname = 3                       | 2 | 1 | `\"files.name\" is 3`",
                "RULE encoding = \"latin-nine\"             | 4 | 1 | `\"files.encoding\" is \"latin-nine\"`",
                "RULE encoding = \"no such!\"               | 4 | 1 | `expected the name of an encoding`",
                "RULE delimiter = \";;\"                    | 4 | 1 | `expected one character or \"tab\"`",
                "RULE delimiter = \"a\"                     | 4 | 1 | `\"files.delimiter\" is \"a\"`",
                "RULE quote = \"\"                          | 4 | 1 | `expected one character or \"none\"`",
                "RULE decimal = \"'\"                       | 4 | 1 | `expected \".\" or \",\"`",
                "RULE dates = \"dmy\"                       | 4 | 1 | `expected \"day-month-year\"`",
                "RULE header_line = 0                       | 4 | 1 | `expected a whole number from 1`",
                "RULE totals_row = \"yes\"                  | 4 | 1 | `expected true or false`",
                "RULE sheet = 1                             | 4 | 1 | `expected a sheet's name`",
                "RULE hours = \"seconds\"                   | 4 | 1 | `expected \"hours\", \"minutes\", \"hundredths\" or`",
                "RULE columns = \"ticket\"                  | 4 | 1 | `\"files.columns\" is \"ticket\"`",
                "RULE [files.columns]\\nticket = 4          | 5 | 1 | `\"files.columns.ticket\" is 4, expected text in quotes`",
                "RULE [files.constants]\\nkind = \" \"      | 5 | 1 | `\"files.constants.kind\" is \" \"`",
                "RULE [files.values]\\nkind = \"bench\"     | 5 | 1 | `\"files.values\" is \"bench\", expected a section a column`",
                "RULE [files.values.kind]\\n\"a b\" = [1]   | 5 | 1 | `\"files.values.a b\" is a list`",
            })
    void whatCannotBeUsedIsRefusedWithItsPlace(String toml, int line, int column, String words) {
        String rule = "[[files]]\nname = \"a.csv\"\ntable = \"tickets\"\n";
        assertThatThrownBy(() -> read(toml.replace("RULE ", rule).replace("\\n", "\n")))
                .isInstanceOfSatisfying(
                        Refusal.class, r -> assertThat(r.exitCode()).isEqualTo(ExitCode.SETTINGS))
                .hasMessageStartingWith("shop.toml, line " + line + ", column " + column + ": ")
                .hasMessageContaining(words);
    }
}
