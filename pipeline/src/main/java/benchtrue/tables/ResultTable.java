package benchtrue.tables;

import benchtrue.format.FormulaGuard;
import benchtrue.shop.FileOut;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A result table, declared once: what writes its file (RFC 4180, UTF-8 without a mark, CRLF, columns in the order they are
 * declared), what describes it in the data package, and what reads it back. Text that a spreadsheet would run as a formula is
 * made harmless.
 *
 * @param <R> what one row is made from
 */
public final class ResultTable<R> {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180;
    private static final String TEXT = "string";
    private static final Pattern NUMBER = Pattern.compile("-?[0-9.:,]+");

    private final String name;
    private final String description;
    private final List<Column<R>> columns = new ArrayList<>();

    private record Column<R>(String header, String type, String description, Function<R, String> cell) {
        /** Appends a cell; a number or a day behind another cell is never quoted, which need not be looked for. */
        private void print(R row, StringBuilder record) throws IOException {
            String text = cell.apply(row);
            if (type.equals(TEXT) || record.isEmpty()) {
                FORMAT.print(text, record, record.isEmpty());
            } else {
                record.append(FORMAT.getDelimiterString()).append(text);
            }
        }
    }

    private ResultTable(String name, String description) {
        this.name = name;
        this.description = description;
    }

    /**
     * Begins a table.
     *
     * @param name of its file, without the ending
     * @param description what one row is
     */
    public static <R> ResultTable<R> of(String name, String description) {
        return new ResultTable<>(name, description);
    }

    private ResultTable<R> column(String header, String type, String description, Function<R, String> cell) {
        columns.add(new Column<>(header, type, description, cell));
        return this;
    }

    /** Adds text. */
    public ResultTable<R> text(String header, String description, Function<R, String> text) {
        return column(header, TEXT, description, row -> FormulaGuard.written(text.apply(row)));
    }

    /** Adds text as somebody else wrote it: made harmless, but a number with a minus stays one. */
    ResultTable<R> original(String header, String description, Function<R, String> text) {
        return column(header, TEXT, description, row -> {
            String cell = text.apply(row);
            return NUMBER.matcher(cell).matches() ? cell : FormulaGuard.written(cell);
        });
    }

    ResultTable<R> day(String header, String description, ToIntFunction<R> day) {
        return column(header, "date", description, row -> CellText.day(day.applyAsInt(row)));
    }

    /** Adds a whole number. */
    public ResultTable<R> count(String header, String description, ToLongFunction<R> count) {
        return column(header, "integer", description, row -> CellText.count(count.applyAsLong(row)));
    }

    /** Adds a year and month, given by one of its days. */
    ResultTable<R> month(String header, String description, ToIntFunction<R> day) {
        return column(header, "yearmonth", description, row -> CellText.month(day.applyAsInt(row)));
    }

    /** Adds hours that are counted in seconds. */
    public ResultTable<R> seconds(String header, String description, ToLongFunction<R> seconds) {
        return column(header, "number", description + ", hours", row -> CellText.hours(seconds.applyAsLong(row)));
    }

    /** Adds hours that are a ratio or a sum of ratios. */
    ResultTable<R> hours(String header, String description, ToDoubleFunction<R> hours) {
        return column(header, "number", description + ", hours", row -> CellText.hours(hours.applyAsDouble(row)));
    }

    /** Adds money in ten-thousandths. */
    public ResultTable<R> money(String header, String description, ToLongFunction<R> tenThousandths) {
        return column(
                header,
                "number",
                description + ", in the shop's currency",
                row -> CellText.money(tenThousandths.applyAsLong(row)));
    }

    /** Adds a ratio. */
    public ResultTable<R> ratio(String header, String description, ToDoubleFunction<R> ratio) {
        return column(header, "number", description, row -> CellText.ratio(ratio.applyAsDouble(row)));
    }

    /** Adds a number that is text already. */
    ResultTable<R> number(String header, String description, Function<R, String> number) {
        return column(header, "number", description, row -> CellText.number(number.apply(row)));
    }

    String file() {
        return name + ".csv";
    }

    /** Returns how many columns it has. */
    int size() {
        return columns.size();
    }

    /** Returns what makes the text of a column's cells. */
    public Function<R, String> cell(String header) {
        return columns.stream()
                .filter(column -> column.header.equals(header))
                .findFirst()
                .orElseThrow()
                .cell;
    }

    /** Writes the table into a folder that exists. */
    public void write(Iterable<R> rows, Path folder) throws IOException {
        writeTo(rows, folder.resolve(file()));
    }

    /** Writes the table into a file of another name. */
    public void writeTo(Iterable<R> rows, Path file) throws IOException {
        try (Writer out = FileOut.text(file)) {
            FORMAT.printRecord(out, columns.stream().map(Column::header).toArray());
            StringBuilder text = new StringBuilder();
            for (R row : rows) {
                text.setLength(0);
                for (Column<R> column : columns) {
                    column.print(row, text);
                }
                FORMAT.println(text);
                out.append(text);
            }
        }
    }

    /**
     * Reads the table of an earlier result back, its cells by their headers.
     *
     * @throws IOException where it can't be read or is not as it was written
     */
    <T> List<T> read(Path folder, Function<CSVRecord, T> row) throws IOException {
        Path file = folder.resolve(file());
        CSVFormat headed =
                FORMAT.builder().setHeader().setSkipHeaderRecord(true).get();
        try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return headed.parse(text).stream().map(row).toList();
        } catch (IllegalArgumentException | UncheckedIOException e) {
            throw new IOException(file + " is not as it was written", e);
        }
    }

    /** Returns the table as a resource of a data package: Table Schema, an empty cell for what is not known. */
    public Map<String, Object> described() {
        List<Map<String, Object>> fields = new ArrayList<>();
        for (Column<R> column : columns) {
            Map<String, Object> field = new LinkedHashMap<>();
            field.put("name", column.header);
            field.put("type", column.type);
            field.put("description", column.description);
            fields.add(field);
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("fields", fields);
        schema.put("missingValues", List.of(""));
        Map<String, Object> resource = new LinkedHashMap<>();
        resource.put("name", name);
        resource.put("path", file());
        resource.put("description", description);
        resource.put("profile", "tabular-data-resource");
        resource.put("format", "csv");
        resource.put("mediatype", "text/csv");
        resource.put("encoding", "utf-8");
        resource.put("schema", schema);
        return resource;
    }
}
