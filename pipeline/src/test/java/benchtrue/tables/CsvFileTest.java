package benchtrue.tables;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvFileTest {
    @TempDir
    Path folder;

    private interface Row {
        void write(CsvFile csv) throws IOException;
    }

    private String written(Row row) throws IOException {
        Path file = folder.resolve("table.csv");
        try (CsvFile csv = CsvFile.create(file, List.of("a"))) {
            row.write(csv);
            csv.endRow();
        }
        String text = Files.readString(file, StandardCharsets.UTF_8);
        assertThat(text).startsWith("a\r\n").endsWith("\r\n");
        return text.substring(3, text.length() - 2);
    }

    @Test
    void hoursAndMoneyHaveFourDecimalsAndAPoint() throws IOException {
        assertThat(written(
                        csv -> csv.hours(5400L).hours(1L).hours(-1L).hours(2L).hours(0L)))
                .isEqualTo("1.5000,0.0003,-0.0003,0.0006,0.0000");
        assertThat(written(csv -> csv.money(1_234_567L).money(-5L).money(0L))).isEqualTo("123.4567,-0.0005,0.0000");
        assertThat(written(csv -> csv.hours(2.34565).hours(-0.00001))).isEqualTo("2.3456,0.0000");
    }

    @Test
    void whatIsNotKnownIsEmptyNeverZero() throws IOException {
        assertThat(written(csv -> csv.hours(Absent.AMOUNT)
                        .money(Absent.AMOUNT)
                        .ratio(Double.NaN)
                        .ratio(Double.POSITIVE_INFINITY)
                        .hours(Double.NaN)
                        .day(Absent.DAY)
                        .text("")))
                .isEqualTo(",,,,,,");
    }

    @Test
    void ratiosHaveSixDecimals() throws IOException {
        assertThat(written(csv -> csv.ratio(1.0 / 3).ratio(-2).ratio(0.0000004)))
                .isEqualTo("0.333333,-2.000000,0.000000");
    }

    @Test
    void daysAreIso() throws IOException {
        assertThat(written(csv -> csv.day(0).day(20_757).day(-1))).isEqualTo("1970-01-01,2026-10-31,1969-12-31");
    }

    @Test
    void textIsQuotedOnlyWhereItMustBeAndNeverRuns() throws IOException {
        assertThat(written(csv ->
                        csv.text("a,b").text("a\"b").text("a\nb").text("ä").text("=1+1,2")))
                .isEqualTo("\"a,b\",\"a\"\"b\",\"a\nb\",ä,\"'=1+1,2\"");
    }

    @Test
    void longAndManyCellsSurviveTheBuffer() throws IOException {
        String large = "x".repeat(70_000);
        String many = "y".repeat(1_000);
        String text = written(csv -> {
            csv.text("1").text(large).text("2");
            for (int i = 0; i < 200; i++) {
                csv.text(many).count(i);
            }
        });
        String[] cells = text.split(",");
        assertThat(cells).hasSize(403).startsWith("1", large, "2", many, "0").endsWith(many, "199");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void hoursAreWrittenAsExactArithmeticWouldWriteThem(long seed) throws IOException {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            long seconds = random.nextLong(-10_000_000, 10_000_000);
            assertThat(written(csv -> csv.hours(seconds)))
                    .as("seed %d, %d s", seed, seconds)
                    .isEqualTo(Hours.text(seconds));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5})
    void numbersOfEveryLengthAreWrittenAsExactArithmeticWouldWriteThem(long seed) throws IOException {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            long number = random.nextLong() >> random.nextInt(63);
            assertThat(written(csv -> csv.count(number).money(number)))
                    .as("seed %d, %d", seed, number)
                    .isEqualTo(number + "," + BigDecimal.valueOf(number, 4).toPlainString());
        }
        for (long number = 1; number > 0 && number <= Long.MAX_VALUE / 10; number *= 10) {
            long ten = number;
            assertThat(written(csv -> csv.count(ten - 1).count(ten))).isEqualTo((ten - 1) + "," + ten);
        }
    }

    @Test
    void everyDayOfTwoCenturiesIsIsoHoweverOftenItComes() throws IOException {
        for (int day = -36_500; day < 36_500; day += 61) {
            int first = day;
            assertThat(written(csv -> csv.day(first).day(first + 8_192).day(first)))
                    .isEqualTo(LocalDate.ofEpochDay(first) + "," + LocalDate.ofEpochDay(first + 8_192) + ","
                            + LocalDate.ofEpochDay(first));
        }
    }
}
