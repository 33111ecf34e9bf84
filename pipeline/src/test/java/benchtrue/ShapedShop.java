package benchtrue;

import benchtrue.ShapedLog.Entry;
import benchtrue.ShapedLog.Subtotals;
import benchtrue.ShapedLog.Words;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/**
 * A tidy shop's canonical files as shops keep them by hand: wide sheets, subtotals, keys in texts, several tables in a file.
 * Time that is not spent at the bench, or on a repair that the ticket did not quote, stands there without its ticket, since such
 * sheets have no column that says so.
 */
public final class ShapedShop {
    private final Path from;
    private final Path to;
    private final Map<String, String> titles = new HashMap<>();
    private final List<Map<String, String>> book;
    private char delimiter = ';';

    /**
     * Reads the shop.
     *
     * @param from a shop folder with canonical files
     * @param to a folder for the others, made where it is not there
     */
    public ShapedShop(Path from, Path to) throws IOException {
        this.from = from;
        this.to = to;
        try (Stream<Path> books = Files.list(from.resolve("price-book"))) {
            book = rows(books.sorted().reduce((earlier, later) -> later).orElseThrow());
        }
        book.forEach(row -> titles.put(row.get("repair_type"), row.get("title")));
        Files.createDirectories(to.resolve("exports"));
    }

    /** Returns the seconds in the shop's time log, as its sheets have them. */
    public double seconds() throws IOException {
        return 3_600 * log(Words.ENGLISH, Subtotals.NONE).hours().doubleValue();
    }

    /** One workbook with five sheets: a week a row with a column a day, a heading and a subtotal a month. */
    public void workbook() throws IOException {
        Map<String, List<String>> sheets = new LinkedHashMap<>();
        sheets.put("Auftr\u00e4ge", tickets(Words.GERMAN));
        sheets.put("Positionen", lines(Words.GERMAN, ticket -> ticket, title -> title));
        sheets.put("Stunden", log(Words.GERMAN, Subtotals.MONTHLY).weeks());
        sheets.put("Preisliste", prices());
        sheets.put("Personal", staff());
        Files.write(to.resolve("exports/Werkstatt.xlsx"), Sheets.of(sheets));
    }

    /** One file of tickets and lines; a sheet a month with its days for columns. */
    public void joined() throws IOException {
        csv("Repairs", joinedLines());
        Files.write(
                to.resolve("exports/Timesheets.xlsx"),
                Sheets.of(log(Words.ENGLISH, Subtotals.NONE).months()));
        csv("Price list", prices());
    }

    /** Keys of tickets inside texts, repairs spelt as it came, first and last name apart, and a subtotal a month. */
    public void texts(long seed) throws IOException {
        Random random = new Random(seed);
        csv("Jobs", tickets(Words.ENGLISH));
        csv("Quotes", lines(Words.ENGLISH, ShapedShop::text, title -> spelt(title, random)));
        csv("Times", log(Words.ENGLISH, Subtotals.MONTHLY).texts());
        csv("Prices", prices());
    }

    /**
     * Any of these shapes together.
     *
     * @return the names of its tables, for a message
     */
    public String drawn(Random random) throws IOException {
        Words words = Words.values()[random.nextInt(2)];
        Map<String, List<String>> tables = new LinkedHashMap<>();
        boolean keysInTexts = random.nextInt(3) == 0;
        if (random.nextBoolean()) {
            tables.put(words == Words.GERMAN ? "Reparaturen" : "Repairs", joinedLines());
        } else {
            tables.put(words == Words.GERMAN ? "Auftr\u00e4ge" : "Jobs", tickets(words));
            tables.put(
                    words == Words.GERMAN ? "Positionen" : "Quotes",
                    lines(words, keysInTexts ? ShapedShop::text : ticket -> ticket, title -> spelt(title, random)));
        }
        tables.put(words == Words.GERMAN ? "Preisliste" : "Price list", prices());
        if (random.nextInt(3) == 0) {
            stack(tables);
        }
        ShapedLog log = log(words, Subtotals.values()[random.nextInt(2)]);
        String name = words == Words.GERMAN ? "Stunden" : "Times";
        Map<String, List<String>> split = new LinkedHashMap<>();
        switch (random.nextInt(7)) {
            case 0 -> tables.put(name, log.weeks());
            case 1 -> tables.put(name, log.people());
            case 2 -> tables.put(name, log.texts());
            case 3 -> tables.put(name, log.daysOnce());
            case 4 -> split.putAll(log.months());
            case 5 -> split.putAll(log.sheets());
            default -> split.putAll(log.dates());
        }
        delimiter = random.nextBoolean() ? ';' : ',';
        place(tables, split, random);
        return tables.keySet() + " and sheets or files " + split.keySet();
    }

    /** Puts all tables into one, each under a title and an empty row. */
    private static void stack(Map<String, List<String>> tables) {
        List<String> rows = new ArrayList<>();
        tables.forEach((name, table) -> {
            rows.addAll(rows.isEmpty() ? List.of() : List.of("", name));
            rows.addAll(table);
        });
        tables.clear();
        tables.put("Workshop", rows);
    }

    /** Puts tables into files or sheets; those of a log that is split into files or sheets of its own. */
    private void place(Map<String, List<String>> tables, Map<String, List<String>> split, Random random)
            throws IOException {
        // A file a person says nowhere inside whose it is.
        boolean people = split.keySet().stream().noneMatch(name -> name.contains("20"));
        if (!split.isEmpty() && (people || random.nextBoolean())) {
            Files.write(to.resolve("exports/Timesheets.xlsx"), Sheets.of(split));
        } else {
            for (Map.Entry<String, List<String>> table : split.entrySet()) {
                csv("Timesheet " + table.getKey(), table.getValue());
            }
        }
        if (random.nextBoolean()) {
            Files.write(to.resolve("exports/Shop.xlsx"), Sheets.of(tables));
        } else {
            for (Map.Entry<String, List<String>> table : tables.entrySet()) {
                csv(table.getKey(), table.getValue());
            }
        }
    }

    private static String text(String ticket) {
        return "Order " + ticket + " (quote)";
    }

    /** Returns a repair as somebody in a hurry writes it. */
    private static String spelt(String title, Random random) {
        String[] words = title.split(" ");
        return switch (random.nextInt(8)) {
            case 0 -> title.toUpperCase(Locale.ROOT);
            case 1 -> title.toLowerCase(Locale.ROOT);
            case 2 -> title.replace(' ', '-');
            case 3 ->
                words[words.length - 1] + ", " + String.join(" ", List.of(words).subList(0, words.length - 1));
            case 4 -> mistyped(title, 1 + random.nextInt(title.length() - 1));
            default -> title;
        };
    }

    private static String mistyped(String title, int at) {
        return Character.isLetter(title.charAt(at))
                ? title.substring(0, at) + title.charAt(at) + title.substring(at)
                : title;
    }

    private List<String> tickets(Words words) throws IOException {
        List<String> rows = new ArrayList<>(List.of(
                words == Words.GERMAN
                        ? "Auftrag|Annahme|Abgeschlossen|Instrument"
                        : "Job No|Received|Closed|Instrument"));
        for (Map<String, String> row : all("tickets")) {
            rows.add(String.join(
                    "|",
                    row.get("ticket"),
                    words.date(row.get("opened")),
                    words.date(row.get("closed")),
                    row.get("instrument_class")));
        }
        return rows;
    }

    private List<String> lines(Words words, UnaryOperator<String> ticket, UnaryOperator<String> title)
            throws IOException {
        List<String> rows = new ArrayList<>(List.of(
                words == Words.GERMAN
                        ? "Auftrag|Pos|Leistung|Angebotene Stunden|Preis Arbeit"
                        : "Job|Line|Repair|Quoted hours|Labour price"));
        for (Map<String, String> row : accepted()) {
            rows.add(ticket.apply(row.get("ticket")) + "|" + line(row, title));
        }
        return rows;
    }

    private List<String> joinedLines() throws IOException {
        Map<String, Map<String, String>> tickets = new HashMap<>();
        all("tickets").forEach(row -> tickets.put(row.get("ticket"), row));
        List<String> rows =
                new ArrayList<>(List.of("Job no|Date in|Date out|Instrument|Item|Repair|Quoted hours|Quoted price"));
        for (Map<String, String> row : accepted()) {
            Map<String, String> ticket = tickets.get(row.get("ticket"));
            rows.add(String.join(
                    "|",
                    row.get("ticket"),
                    ticket.get("opened"),
                    ticket.get("closed"),
                    ticket.get("instrument_class"),
                    line(row, title -> title)));
        }
        return rows;
    }

    private List<Map<String, String>> accepted() throws IOException {
        return all("quoted-lines").stream()
                .filter(row -> !row.getOrDefault("outcome", "").equals("declined"))
                .toList();
    }

    private String line(Map<String, String> row, UnaryOperator<String> title) {
        String repair = row.get("repair_type");
        return String.join(
                "|",
                row.get("line"),
                titles.containsKey(repair) ? title.apply(titles.get(repair)) : repair,
                row.get("quoted_hours"),
                row.get("quoted_labour"));
    }

    private List<String> prices() {
        List<String> rows = new ArrayList<>(List.of("Code|Title|Group|Hours|Price"));
        book.forEach(row -> rows.add(String.join(
                "|",
                row.get("repair_type"),
                row.get("title"),
                row.get("family"),
                row.get("book_hours"),
                row.get("book_labour"))));
        return rows;
    }

    private List<String> staff() throws IOException {
        List<String> rows = new ArrayList<>(List.of("Mitarbeiter|Stundenlohn|G\u00fcltig ab"));
        for (Map<String, String> row : all("technicians")) {
            rows.add(String.join(
                    "|", row.get("technician"), row.get("hourly_wage"), Words.GERMAN.date(row.get("effective_from"))));
        }
        return rows;
    }

    private ShapedLog log(Words words, Subtotals subtotals) throws IOException {
        Set<String> repairs = accepted().stream()
                .map(row -> row.get("ticket") + " " + row.get("repair_type"))
                .collect(Collectors.toSet());
        List<Entry> entries = new ArrayList<>();
        for (Map<String, String> row : all("time-log")) {
            boolean bench = List.of("", "bench").contains(row.getOrDefault("kind", ""));
            String done = row.getOrDefault("repair_type", "");
            boolean quoted = done.isEmpty() || repairs.contains(row.get("ticket") + " " + done);
            entries.add(new Entry(
                    LocalDate.parse(row.get("work_date")),
                    row.get("technician"),
                    bench && quoted ? row.get("ticket") : "",
                    hours(row)));
        }
        entries.sort(Comparator.comparing(Entry::day));
        return new ShapedLog(entries, words, subtotals);
    }

    /** Returns the hours of an entry, of two decimals. */
    private static BigDecimal hours(Map<String, String> row) {
        String hours = row.get("hours");
        BigDecimal minutes = hours.isEmpty()
                ? minutes(row.get("end")).subtract(minutes(row.get("start")))
                : hours.indexOf(':') < 0 ? new BigDecimal(hours).multiply(BigDecimal.valueOf(60)) : minutes(hours);
        return minutes.divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP);
    }

    private static BigDecimal minutes(String clock) {
        String[] parts = clock.split(":");
        return BigDecimal.valueOf(60L * Integer.parseInt(parts[0]) + Integer.parseInt(parts[1]));
    }

    private void csv(String name, List<String> rows) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter).get();
        StringWriter text = new StringWriter();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            for (String row : rows) {
                printer.printRecord((Object[]) row.split("\\|", -1));
            }
        }
        Files.writeString(to.resolve("exports").resolve(name + ".csv"), text.toString());
    }

    private List<Map<String, String>> all(String table) throws IOException {
        List<Map<String, String>> rows = new ArrayList<>();
        try (Stream<Path> files = Files.list(from.resolve("exports"))) {
            for (Path file : files.filter(path -> path.getFileName().toString().startsWith(table))
                    .sorted()
                    .toList()) {
                rows.addAll(rows(file));
            }
        }
        return rows;
    }

    /** Returns the rows of a CSV file, each by its headers. */
    public static List<Map<String, String>> rows(Path file) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        List<Map<String, String>> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            for (CSVRecord row : parser) {
                rows.add(row.toMap());
            }
        }
        return rows;
    }
}
