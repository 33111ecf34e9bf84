package benchtrue.intake;

import benchtrue.intake.SheetWriter.SheetCell;
import benchtrue.intake.cells.ReadCell;
import benchtrue.intake.cells.Reading;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.columns.Table;
import benchtrue.shop.Absent;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/** Writes a shop's canonical files anew, each in a random dialect of the data contract. */
public final class InAnyDialect {
    private static final String[] MONTHS = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");
    private final Random random;
    private final Table table;
    private final List<List<String>> rows;
    private final int dates;
    private final char decimal;
    private final int hours;
    private final int clocks;
    private final int months;
    private final String currency;

    private InAnyDialect(Random random, Table table, List<List<String>> rows) {
        this.random = random;
        this.table = table;
        this.rows = rows;
        dates = random.nextInt(8);
        decimal = random.nextBoolean() ? ',' : '.';
        hours = random.nextInt(3);
        clocks = random.nextInt(3);
        months = random.nextInt(4);
        currency = random.nextInt(3) == 0 ? "\u20ac" : "";
    }

    /**
     * Writes every file of a shop folder into another.
     *
     * @param seed of the choice of dialects
     */
    public static void write(Path from, Path to, long seed) throws IOException {
        Random random = new Random(seed);
        for (String place : List.of("exports", "price-book")) {
            Files.createDirectories(to.resolve(place));
            try (Stream<Path> files = Files.list(from.resolve(place))) {
                for (Path file : files.sorted().toList()) {
                    Table table = place.equals("exports") ? table(file) : Table.PRICE_BOOK;
                    new InAnyDialect(random, table, parsed(file))
                            .write(to.resolve(place), file.getFileName().toString());
                }
            }
        }
    }

    private static Table table(Path file) {
        return Stream.of(Table.values())
                .filter(table -> file.getFileName().toString().startsWith(table.title()))
                .findFirst()
                .orElseThrow();
    }

    private static List<List<String>> parsed(Path file) throws IOException {
        try (CSVParser parser = CSVFormat.RFC4180.parse(new StringReader(Files.readString(file)))) {
            return parser.stream().map(record -> List.of(record.values())).toList();
        }
    }

    private void write(Path folder, String name) throws IOException {
        boolean fitsASheet =
                rows.stream().allMatch(row -> row.size() == rows.get(0).size())
                        && rows.stream()
                                .flatMap(List::stream)
                                .allMatch(text -> text.chars()
                                        .noneMatch(letter ->
                                                letter < ' ' && letter != '\n' && letter != '\r' && letter != '\t'));
        if (fitsASheet && random.nextInt(4) == 0) {
            Files.write(folder.resolve(name.replace(".csv", ".xlsx")), SheetWriter.workbook(sheet()));
        } else {
            Files.write(folder.resolve(name), text());
        }
    }

    private Column column(int cell) {
        String name = cell < rows.get(0).size() ? rows.get(0).get(cell) : "";
        return table.columns().stream()
                .filter(column -> column.header().equals(name))
                .findFirst()
                .orElse(null);
    }

    /** Returns what a cell says, where it can be read and only its writing is the file's own. */
    private static long value(Column column, String text) {
        if (column == null || column.cell().kind().isText() || text.isBlank()) {
            return Absent.AMOUNT;
        }
        Reading reading = ReadCell.read(column.cell(), text);
        return reading.problem() == Problem.NONE ? reading.value() : Absent.AMOUNT;
    }

    private byte[] text() {
        char delimiter = new char[] {',', ';', '\t', '|'}[random.nextInt(4)];
        String end = random.nextInt(3) == 0 ? "\n" : "\r\n";
        String surplus = rows.size() > 1 && random.nextInt(4) == 0 ? String.valueOf(delimiter) : "";
        StringBuilder text = new StringBuilder();
        for (int line = random.nextInt(3) == 0 ? random.nextInt(4) : 0; line > 0; line--) {
            text.append(line == 2 ? "printed on a Monday" : "Export " + line).append(end);
        }
        for (int row = 0; row < rows.size(); row++) {
            List<String> cells = new ArrayList<>();
            for (int cell = 0; cell < rows.get(row).size(); cell++) {
                String written = row == 0
                        ? rows.get(row).get(cell)
                        : cell(cell, rows.get(row).get(cell));
                cells.add(quoted(written, delimiter));
            }
            text.append(String.join(String.valueOf(delimiter), cells))
                    .append(row > 0 ? surplus : "")
                    .append(end);
        }
        if (rows.size() > 2 && random.nextInt(4) == 0) {
            text.append("Total")
                    .append(String.valueOf(delimiter).repeat(rows.get(0).size() - 1))
                    .append(end);
        }
        return encoded(text.toString());
    }

    private byte[] encoded(String text) {
        Charset windows = Charset.forName("windows-1252");
        return switch (random.nextInt(5)) {
            case 0 -> ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
            case 1 -> ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE);
            case 2 -> ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16BE);
            case 3 -> text.getBytes(windows.newEncoder().canEncode(text) ? windows : StandardCharsets.UTF_8);
            default -> text.getBytes(StandardCharsets.UTF_8);
        };
    }

    private String quoted(String text, char delimiter) {
        boolean needed = text.chars().anyMatch(letter -> letter == delimiter || "\"\r\n".indexOf(letter) >= 0);
        return needed || random.nextInt(10) == 0 ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
    }

    private String cell(int cell, String text) {
        Column column = column(cell);
        long value = value(column, text);
        if (!Absent.has(value)) {
            return text;
        }
        return switch (column.cell().kind()) {
            case DAY -> date(LocalDate.ofEpochDay(value));
            case MONTH -> month((int) value / 12, (int) value % 12 + 1);
            case CLOCK -> clock((int) value);
            case HOURS, SIGNED_HOURS -> text.indexOf(':') >= 0 ? text : hours(value, text.strip());
            case MONEY, SIGNED_MONEY -> amount(text.strip(), currency);
            case QUANTITY -> amount(text.strip(), "");
            default -> text;
        };
    }

    private String date(LocalDate day) {
        int year = day.getYear();
        return switch (dates) {
            case 0 -> two(day.getDayOfMonth()) + "." + two(day.getMonthValue()) + "." + year;
            case 1 -> day.getDayOfMonth() + "/" + day.getMonthValue() + "/" + year;
            case 2 -> day.getMonthValue() + "/" + day.getDayOfMonth() + "/" + year;
            case 3 -> two(day.getDayOfMonth()) + "-" + MONTHS[day.getMonthValue() - 1] + "-" + two(year % 100);
            case 4 -> String.valueOf(day.toEpochDay() + 25_569);
            case 5 -> day + " 00:00:00";
            case 6 -> two(day.getDayOfMonth()) + "-" + two(day.getMonthValue()) + "-" + two(year % 100);
            default -> day.toString();
        };
    }

    private String month(int year, int month) {
        return switch (months) {
            case 0 -> two(month) + "/" + year;
            case 1 -> MONTHS[month - 1] + " " + year;
            case 2 -> year + two(month);
            default -> year + "-" + two(month);
        };
    }

    private String clock(int seconds) {
        String minutes = ":" + two(seconds / 60 % 60) + (seconds % 60 == 0 ? "" : ":" + two(seconds % 60));
        int hour = seconds / 3_600;
        if (clocks == 0 && hour < 24) {
            return (hour + 11) % 12 + 1 + minutes + (hour < 12 ? " AM" : " PM");
        }
        return (clocks == 1 ? two(hour) : String.valueOf(hour)) + minutes;
    }

    private String hours(long seconds, String text) {
        boolean whole = new BigDecimal(text)
                        .multiply(BigDecimal.valueOf(60))
                        .stripTrailingZeros()
                        .scale()
                <= 0;
        if (hours == 0 && whole) {
            long minutes = Math.abs(seconds) / 60;
            return (seconds < 0 ? "-" : "") + minutes / 60 + ":" + two((int) (minutes % 60));
        }
        return amount(text, hours == 1 ? " h" : "");
    }

    private String amount(String text, String unit) {
        BigDecimal number = new BigDecimal(text);
        String[] parts = number.abs().toPlainString().split("\\.");
        String whole = random.nextBoolean() ? parts[0] : grouped(parts[0]);
        String decimals = parts.length > 1 ? parts[1] : whole.equals(parts[0]) ? "" : "00";
        String plain = whole + (decimals.isEmpty() ? "" : decimal + decimals) + unit;
        if (number.signum() >= 0) {
            return plain;
        }
        return random.nextBoolean() || unit.equals(" h")
                ? "-" + plain
                : random.nextBoolean() ? "(" + plain + ")" : plain + "-";
    }

    private String grouped(String digits) {
        String group = decimal == ',' ? "." : ",";
        return digits.length() <= 3
                ? digits
                : grouped(digits.substring(0, digits.length() - 3)) + group + digits.substring(digits.length() - 3);
    }

    private static String two(int number) {
        return (number < 10 ? "0" : "") + number;
    }

    private List<List<SheetCell>> sheet() {
        List<List<SheetCell>> sheet = new ArrayList<>();
        for (int title = random.nextInt(3); title > 0; title--) {
            sheet.add(List.of(new SheetCell("Export " + title, SheetCell.TEXT)));
        }
        for (int row = 0; row < rows.size(); row++) {
            List<SheetCell> cells = new ArrayList<>();
            for (int cell = 0; cell < rows.get(row).size(); cell++) {
                String text = rows.get(row).get(cell);
                cells.add(row == 0 ? new SheetCell(text, SheetCell.TEXT) : sheetCell(cell, text));
            }
            sheet.add(cells);
        }
        return sheet;
    }

    private SheetCell sheetCell(int cell, String text) {
        Column column = column(cell);
        long value = value(column, text);
        if (!Absent.has(value)) {
            return new SheetCell(text, SheetCell.TEXT);
        }
        BigDecimal day = BigDecimal.valueOf(86_400);
        return switch (column.cell().kind()) {
            case DAY -> new SheetCell(String.valueOf(value + 25_569), 1);
            case CLOCK ->
                new SheetCell(
                        BigDecimal.valueOf(value)
                                .divide(day, MathContext.DECIMAL64)
                                .toPlainString(),
                        2);
            case HOURS, SIGNED_HOURS ->
                text.indexOf(':') >= 0
                        ? new SheetCell(
                                BigDecimal.valueOf(value)
                                        .divide(day, MathContext.DECIMAL64)
                                        .toPlainString(),
                                3)
                        : number(text);
            case MONEY, SIGNED_MONEY, QUANTITY -> number(text);
            default -> new SheetCell(text, SheetCell.TEXT);
        };
    }

    private static SheetCell number(String text) {
        return new SheetCell(new BigDecimal(text.strip()).toPlainString(), 0);
    }
}
