package benchtrue.sample;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Table;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the open description says of the tables is so. */
@SuppressWarnings("unchecked")
class DataPackageTest {
    @TempDir
    Path folder;

    private static Map<String, Object> schema(Table table) {
        return TableSchema.of(
                table, table.columns().stream().map(Column::header).toList());
    }

    private static List<Map<String, Object>> fields(Table table) {
        return (List<Map<String, Object>>) schema(table).get("fields");
    }

    private List<CSVRecord> rows(Table table) throws IOException {
        if (table != Table.PRICE_BOOK) {
            return Exports.table(folder, table.title());
        }
        try (Stream<Path> books = Files.list(folder.resolve("price-book"))) {
            return Exports.rows(books.findFirst().orElseThrow());
        }
    }

    @ParameterizedTest
    @EnumSource(Table.class)
    void everyColumnThatIsReadIsDescribed(Table table) {
        assertThat(fields(table))
                .extracting(field -> field.get("name"))
                .containsExactlyElementsOf(
                        table.columns().stream().map(Column::header).toList());
        assertThat(fields(table))
                .allSatisfy(
                        field -> assertThat((String) field.get("description")).isNotBlank());
    }

    @Test
    void aTidyShopMeetsItsDescription() throws IOException {
        WriteSample.write(SampleOptions.standard(folder).withTickets(300).with(Tidiness.TIDY));
        for (Table table : Table.values()) {
            Set<List<String>> keys = new HashSet<>();
            List<String> key = (List<String>) schema(table).getOrDefault("primaryKey", List.of());
            for (CSVRecord row : rows(table)) {
                for (Map<String, Object> field : fields(table)) {
                    if (row.isMapped((String) field.get("name"))) {
                        check(table, field, row.get((String) field.get("name")));
                    }
                }
                assertThat(key.isEmpty() || keys.add(texts(row, key)))
                        .as(table + " " + row)
                        .isTrue();
            }
        }
    }

    private static void check(Table table, Map<String, Object> field, String text) {
        Map<String, Object> constraints = (Map<String, Object>) field.getOrDefault("constraints", Map.of());
        String told = table.title() + " " + field.get("name") + ": " + text;
        if (text.isEmpty()) {
            assertThat(constraints.get("required")).as(told).isNull();
            return;
        }
        switch ((String) field.get("type")) {
            case "date" -> assertThat(LocalDate.parse(text)).as(told).isNotNull();
            case "yearmonth" -> assertThat(text).as(told).matches("\\d{4}-\\d\\d");
            case "year" -> assertThat(text).as(told).matches("\\d{4}");
            case "integer" -> assertThat(Integer.parseInt(text)).as(told).isNotNegative();
            case "number" -> assertThat(Double.parseDouble(text)).as(told).isFinite();
            default -> assertThat(field.get("type")).isEqualTo("string");
        }
        if (constraints.containsKey("pattern")) {
            assertThat(text).as(told).matches((String) constraints.get("pattern"));
        }
        if (constraints.containsKey("enum")) {
            assertThat((List<String>) constraints.get("enum")).as(told).contains(text);
        }
    }

    @Test
    void aTidyShopsRowsLookBackAtRowsThatAreThere() throws IOException {
        WriteSample.write(SampleOptions.standard(folder).withTickets(300).with(Tidiness.TIDY));
        int resolved = 0;
        for (Table table : Table.values()) {
            for (Map<String, Object> key :
                    (List<Map<String, Object>>) schema(table).getOrDefault("foreignKeys", List.of())) {
                Map<String, Object> target = (Map<String, Object>) key.get("reference");
                String name = (String) target.get("resource");
                Table other = Stream.of(Table.values())
                        .filter(known -> known.title().equals(name))
                        .findFirst()
                        .orElse(table);
                Set<List<String>> known = new HashSet<>();
                for (CSVRecord row : rows(other)) {
                    known.add(texts(row, (List<String>) target.get("fields")));
                }
                for (CSVRecord row : rows(table)) {
                    List<String> wanted = texts(row, (List<String>) key.get("fields"));
                    if (!wanted.contains("")) {
                        assertThat(known).as(table + " " + row).contains(wanted);
                        resolved++;
                    }
                }
            }
        }
        assertThat(resolved).isGreaterThan(1_000);
    }

    private static List<String> texts(CSVRecord row, List<String> columns) {
        List<String> texts = new ArrayList<>();
        columns.forEach(column -> texts.add(row.isMapped(column) ? row.get(column) : ""));
        return texts;
    }

    @Test
    void everyFileOfTheCommittedSampleIsDescribedOnce() throws IOException {
        Path sample = Path.of("..", "sample-exports");
        String described = Files.readString(sample.resolve("datapackage.json"));
        for (String inside : List.of("exports", "price-book")) {
            try (Stream<Path> files = Files.list(sample.resolve(inside))) {
                for (Path file : files.toList()) {
                    String path = "\"" + inside + "/" + file.getFileName() + "\"";
                    assertThat(described.split(path, -1)).as(path).hasSize(2);
                }
            }
        }
    }
}
