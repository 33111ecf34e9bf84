package benchtrue.intake.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvRecordsTest {
    private static List<List<String>> read(InputStream bytes) throws IOException {
        CsvRecords records = CsvRecords.open(bytes, "exports/tickets.csv");
        List<List<String>> all = new ArrayList<>();
        while (records.next()) {
            List<String> cells = new ArrayList<>();
            for (int cell = 0; cell < records.size(); cell++) {
                int start = records.start(cell);
                cells.add(new String(records.bytes(), start, records.end(cell) - start, StandardCharsets.UTF_8));
            }
            all.add(cells);
        }
        return all;
    }

    /** Cases of RFC 4180 as collected in max-mapper/csv-spectrum, commit d30e80f (BSD-2-Clause). */
    static List<Arguments> spectrum() {
        return List.of(
                Arguments.of(
                        "first,last,address,city,zip\nJohn,Doe,120 any st.,\"Anytown, WW\",08123",
                        List.of(
                                List.of("first", "last", "address", "city", "zip"),
                                List.of("John", "Doe", "120 any st.", "Anytown, WW", "08123"))),
                Arguments.of(
                        "a,b,c\n1,\"\",\"\"\n2,3,4",
                        List.of(List.of("a", "b", "c"), List.of("1", "", ""), List.of("2", "3", "4"))),
                Arguments.of(
                        "a,b\n1,\"ha \"\"ha\"\" ha\"\n3,4\n",
                        List.of(List.of("a", "b"), List.of("1", "ha \"ha\" ha"), List.of("3", "4"))),
                Arguments.of(
                        "a,b,c\n1,2,3\n\"Once upon \na time\",5,6\n7,8,9\n",
                        List.of(
                                List.of("a", "b", "c"),
                                List.of("1", "2", "3"),
                                List.of("Once upon \na time", "5", "6"),
                                List.of("7", "8", "9"))),
                Arguments.of(
                        "a,b\n1,\"ha \n\"\"ha\"\" \nha\"\n3,4\n",
                        List.of(List.of("a", "b"), List.of("1", "ha \n\"ha\" \nha"), List.of("3", "4"))),
                Arguments.of(
                        "key,val\n1,\"{\"\"type\"\": \"\"Point\"\", \"\"coordinates\"\": [102.0, 0.5]}\"\n",
                        List.of(
                                List.of("key", "val"),
                                List.of("1", "{\"type\": \"Point\", \"coordinates\": [102.0, 0.5]}"))),
                Arguments.of(
                        "a,b,c\n1,2,3\n4,5,\u02a4",
                        List.of(List.of("a", "b", "c"), List.of("1", "2", "3"), List.of("4", "5", "\u02a4"))));
    }

    @ParameterizedTest
    @MethodSource("spectrum")
    void theCasesOfTheStandardAreReadAsPublished(String text, List<List<String>> expected) throws IOException {
        assertThat(read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8))))
                .isEqualTo(expected);
        String windows = text.replace("\n", "\r\n");
        assertThat(read(new ByteArrayInputStream(windows.getBytes(StandardCharsets.UTF_8))))
                .hasSameSizeAs(expected);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void randomTablesAreReadTheSameFromASlowDisk(long seed) throws IOException {
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            String text = table(random);
            List<List<String>> expected = new ArrayList<>();
            try (CSVParser parser = CSVParser.parse(
                    text, CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get())) {
                for (CSVRecord record : parser) {
                    if (record.stream().anyMatch(cell -> !cell.isEmpty())) {
                        expected.add(record.toList());
                    }
                }
            }
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            assertThat(read(new Trickle(bytes, random)))
                    .as("seed %d: %s", seed, text)
                    .isEqualTo(expected);
        }
    }

    private static String table(Random random) {
        String[] ends = {"\n", "\r\n"};
        String[] pieces = {"a", "7", " ", "\u00e9", "\u65e5", "'", "x y", "", "-", ";"};
        String[] quotedPieces = {",", "\n", "\r\n", "\"\"", "\r"};
        StringBuilder text = new StringBuilder();
        for (int row = random.nextInt(6); row >= 0; row--) {
            for (int cell = random.nextInt(5); cell >= 0; cell--) {
                boolean quoted = random.nextInt(3) == 0;
                text.append(quoted ? "\"" : "");
                for (int i = random.nextInt(4); i > 0; i--) {
                    String[] from = quoted && random.nextBoolean() ? quotedPieces : pieces;
                    text.append(from[random.nextInt(from.length)]);
                }
                text.append(quoted ? "\"" : "").append(cell > 0 ? "," : "");
            }
            text.append(row > 0 || random.nextBoolean() ? ends[random.nextInt(2)] : "");
        }
        return text.toString();
    }

    /** Hands over a few bytes at a time, as a slow disk may. */
    private static final class Trickle extends InputStream {
        private final ByteArrayInputStream bytes;
        private final Random random;

        Trickle(byte[] bytes, Random random) {
            this.bytes = new ByteArrayInputStream(bytes);
            this.random = random;
        }

        @Override
        public int read() {
            return bytes.read();
        }

        @Override
        public int read(byte[] into, int offset, int length) {
            return bytes.read(into, offset, Math.min(length, 1 + random.nextInt(7)));
        }
    }
}
