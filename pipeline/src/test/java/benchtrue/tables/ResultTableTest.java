package benchtrue.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ResultTableTest {
    private static final ResultTable<String> NAMES = ResultTable.<String>of("names", "One row is one name")
            .text("name", "as it is written", name -> name)
            .count("letters", "how many it has", String::length);

    @TempDir
    Path folder;

    private String written(String name) throws IOException {
        NAMES.write(List.of(name), folder);
        String text = Files.readString(folder.resolve("names.csv"), StandardCharsets.UTF_8);
        assertThat(text).startsWith("name,letters\r\n").endsWith("," + name.length() + "\r\n");
        return text.substring(text.indexOf('\n') + 1, text.lastIndexOf(','));
    }

    @ParameterizedTest
    @CsvSource({"5400, 1.5000", "1, 0.0003", "-1, -0.0003", "2, 0.0006", "0, 0.0000"})
    void hoursHaveFourDecimalsAndAPoint(long seconds, String cell) {
        assertThat(CellText.hours(seconds)).isEqualTo(cell);
    }

    @ParameterizedTest
    @CsvSource({"1234567, 123.4567", "-5, -0.0005", "0, 0.0000"})
    void moneyHasFourDecimalsAndAPoint(long tenThousandths, String cell) {
        assertThat(CellText.money(tenThousandths)).isEqualTo(cell);
    }

    @ParameterizedTest
    @CsvSource({"0.3333333333, 0.333333", "-2, -2.000000", "0.0000004, 0.000000", "NaN, ''", "Infinity, ''"})
    void ratiosHaveSixDecimalsAndWhatIsNoneIsEmpty(double ratio, String cell) {
        assertThat(CellText.ratio(ratio)).isEqualTo(cell);
    }

    @Test
    void whatIsNotKnownIsEmptyNeverZero() {
        assertThat(List.of(
                        CellText.hours(Absent.AMOUNT),
                        CellText.money(Absent.AMOUNT),
                        CellText.hours(Double.NaN),
                        CellText.day(Absent.DAY),
                        CellText.number("")))
                .containsOnly("");
    }

    @ParameterizedTest
    @CsvSource({"0, 1970-01-01", "20757, 2026-10-31", "-1, 1969-12-31"})
    void daysAreIso(int day, String cell) {
        assertThat(CellText.day(day)).isEqualTo(cell);
    }

    @Test
    void aNumberThatIsTextIsANumberOrADay() {
        assertThat(CellText.number("-3.50")).isEqualTo("-3.50");
        assertThat(CellText.number("2026-10-31")).isEqualTo("2026-10-31");
        assertThatIllegalArgumentException().isThrownBy(() -> CellText.number("=1+1"));
    }

    @Test
    void textIsQuotedOnlyWhereItMustBeAndNeverRuns() throws IOException {
        assertThat(written("a,b")).isEqualTo("\"a,b\"");
        assertThat(written("a\"b")).isEqualTo("\"a\"\"b\"");
        assertThat(written("a\nb")).isEqualTo("\"a\nb\"");
        assertThat(written("b\u00e4")).isEqualTo("b\u00e4");
        assertThat(written("=1+1,2")).isEqualTo("\"'=1+1,2\"");
        assertThat(written("x".repeat(70_000))).isEqualTo("x".repeat(70_000));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void numbersAreWrittenAsExactArithmeticWouldWriteThem(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            long seconds = random.nextLong(-10_000_000, 10_000_000);
            assertThat(CellText.hours(seconds))
                    .as("seed %d, %d s", seed, seconds)
                    .isEqualTo(Hours.text(seconds));
            long amount = random.nextLong() >> random.nextInt(63);
            assertThat(CellText.money(amount))
                    .as("seed %d, %d", seed, amount)
                    .isEqualTo(BigDecimal.valueOf(amount, 4).toPlainString());
        }
    }

    @Test
    void aTableIsReadBackByItsHeadersAndOneThatSomebodyChangedIsTold() throws IOException {
        NAMES.write(List.of("ann", "ben"), folder);
        assertThat(NAMES.read(folder, row -> row.get("name") + row.get("letters")))
                .containsExactly("ann3", "ben3");
        Files.writeString(folder.resolve("names.csv"), "other\r\nann\r\n");
        assertThatThrownBy(() -> NAMES.read(folder, row -> row.get("name")))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("names.csv is not as it was written");
    }

    @Test
    void aTableDescribesItselfAsTableSchema() {
        assertThat(NAMES.described())
                .containsEntry("name", "names")
                .containsEntry("path", "names.csv")
                .extractingByKey("schema")
                .asString()
                .contains("name=letters, type=integer, description=how many it has", "missingValues=[]");
    }
}
