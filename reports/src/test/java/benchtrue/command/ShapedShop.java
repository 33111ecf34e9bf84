package benchtrue.command;

import benchtrue.Sheets;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A tidy shop's files as shops keep them by hand: wide sheets, subtotals, keys in texts, several tables in a file. */
final class ShapedShop {
    private final Path from;
    private final Path to;
    private final Map<String, String> titles = new HashMap<>();
    private final List<Map<String, String>> book;

    ShapedShop(Path from, Path to) throws IOException {
        this.from = from;
        this.to = to;
        try (Stream<Path> books = Files.list(from.resolve("price-book"))) {
            book = rows(books.sorted().reduce((earlier, later) -> later).orElseThrow());
        }
        book.forEach(row -> titles.put(row.get("repair_type"), row.get("title")));
        Files.createDirectories(to.resolve("exports"));
    }

    /** One workbook with five sheets: a week a row with a column a day, a heading and a subtotal a month. */
    void workbook() throws IOException {
        Map<String, List<String>> sheets = new LinkedHashMap<>();
        sheets.put("Auftr\u00e4ge", tickets(true));
        sheets.put("Positionen", lines(true, false));
        sheets.put("Stunden", weeks());
        sheets.put("Preisliste", prices());
        sheets.put("Personal", staff());
        Files.write(to.resolve("exports/Werkstatt.xlsx"), Sheets.of(sheets));
    }

    /** A sheet a technician, the days of the month for columns; one file of tickets and lines. */
    void joined() throws IOException {
        csv("exports/Repairs.csv", joinedLines());
        Map<String, List<String>> sheets = new LinkedHashMap<>();
        months().forEach(sheets::put);
        Files.write(to.resolve("exports/Timesheets.xlsx"), Sheets.of(sheets));
        csv("exports/Price list.csv", prices());
    }

    /** Keys of tickets inside texts, first and last name apart, titles above the columns and subtotals a day. */
    void texts() throws IOException {
        csv("exports/Jobs.csv", tickets(false));
        csv("exports/Quotes.csv", lines(false, true));
        csv("exports/Times.csv", texted());
        csv("exports/Prices.csv", prices());
    }

    private List<String> tickets(boolean german) throws IOException {
        List<String> rows = new ArrayList<>(
                List.of(german ? "Auftrag|Annahme|Abgeschlossen|Instrument" : "Job No|Received|Closed|Instrument"));
        for (Map<String, String> row : all("tickets")) {
            rows.add(String.join(
                    "|",
                    row.get("ticket"),
                    date(row.get("opened"), german),
                    date(row.get("closed"), german),
                    row.get("instrument_class")));
        }
        return rows;
    }

    private List<String> lines(boolean german, boolean texts) throws IOException {
        List<String> rows = new ArrayList<>(List.of(
                german
                        ? "Auftrag|Pos|Leistung|Angebotene Stunden|Preis Arbeit"
                        : "Job|Line|Repair|Quoted hours|Labour price"));
        for (Map<String, String> row : all("quoted-lines")) {
            if (!row.get("outcome").equals("declined")) {
                String ticket = texts ? "Order " + row.get("ticket") + " (quote)" : row.get("ticket");
                rows.add(String.join(
                        "|",
                        ticket,
                        row.get("line"),
                        titles.getOrDefault(row.get("repair_type"), row.get("repair_type")),
                        row.get("quoted_hours"),
                        row.get("quoted_labour")));
            }
        }
        return rows;
    }

    private List<String> joinedLines() throws IOException {
        Map<String, Map<String, String>> tickets = new HashMap<>();
        all("tickets").forEach(row -> tickets.put(row.get("ticket"), row));
        List<String> rows =
                new ArrayList<>(List.of("Job no|Date in|Date out|Instrument|Item|Repair|Quoted hours|Quoted price"));
        for (Map<String, String> row : all("quoted-lines")) {
            Map<String, String> ticket = tickets.get(row.get("ticket"));
            if (!row.get("outcome").equals("declined")) {
                rows.add(String.join(
                        "|",
                        row.get("ticket"),
                        ticket.get("opened"),
                        ticket.get("closed"),
                        ticket.get("instrument_class"),
                        row.get("line"),
                        titles.getOrDefault(row.get("repair_type"), row.get("repair_type")),
                        row.get("quoted_hours"),
                        row.get("quoted_labour")));
            }
        }
        return rows;
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
                    "|", row.get("technician"), row.get("hourly_wage"), date(row.get("effective_from"), true)));
        }
        return rows;
    }

    private List<String> weeks() throws IOException {
        SortedMap<String, SortedMap<String, BigDecimal[]>> months = new TreeMap<>();
        for (Map<String, String> row : all("time-log")) {
            LocalDate day = LocalDate.parse(row.get("work_date"));
            LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
            BigDecimal[] week = months.computeIfAbsent(monday.toString().substring(0, 7), fresh -> new TreeMap<>())
                    .computeIfAbsent(
                            monday + "|" + row.get("technician") + "|" + row.get("ticket"), fresh -> new BigDecimal[7]);
            int at = day.getDayOfWeek().getValue() - 1;
            week[at] = week[at] == null ? hours(row) : week[at].add(hours(row));
        }
        List<String> rows = new ArrayList<>(
                List.of("Zeiterfassung der Werkstatt", "", "Woche ab|Mitarbeiter|Auftrag|Mo|Di|Mi|Do|Fr|Sa|So|Summe"));
        months.forEach((month, weeks) -> {
            rows.add(month);
            BigDecimal[] sums = new BigDecimal[8];
            weeks.forEach((key, days) -> {
                BigDecimal sum = BigDecimal.ZERO;
                StringBuilder row = new StringBuilder(date(key.substring(0, 10), true) + key.substring(10));
                for (int day = 0; day < 7; day++) {
                    row.append('|').append(days[day] == null ? "" : days[day].toPlainString());
                    sums[day] = add(sums[day], days[day]);
                    sum = add(sum, days[day]);
                }
                sums[7] = add(sums[7], sum);
                rows.add(row + "|" + sum.toPlainString());
            });
            StringBuilder total = new StringBuilder("Summe " + month + "||");
            for (BigDecimal sum : sums) {
                total.append('|').append(sum.toPlainString());
            }
            rows.add(total.toString());
        });
        return rows;
    }

    private SortedMap<String, List<String>> months() throws IOException {
        SortedMap<String, SortedMap<String, BigDecimal[]>> months = new TreeMap<>();
        for (Map<String, String> row : all("time-log")) {
            LocalDate day = LocalDate.parse(row.get("work_date"));
            BigDecimal[] month = months.computeIfAbsent(row.get("work_date").substring(0, 7), fresh -> new TreeMap<>())
                    .computeIfAbsent(row.get("technician") + "|" + row.get("ticket"), fresh -> new BigDecimal[31]);
            int at = day.getDayOfMonth() - 1;
            month[at] = add(month[at], hours(row));
        }
        SortedMap<String, List<String>> sheets = new TreeMap<>();
        months.forEach((month, keys) -> {
            StringBuilder header = new StringBuilder("Tech|Job");
            for (int day = 1; day <= 31; day++) {
                header.append('|').append(day);
            }
            List<String> rows = new ArrayList<>(List.of(header.toString()));
            keys.forEach((key, days) -> {
                StringBuilder row = new StringBuilder(key);
                for (BigDecimal day : days) {
                    row.append('|').append(day == null ? "" : day.toPlainString());
                }
                rows.add(row.toString());
            });
            sheets.put(month, rows);
        });
        return sheets;
    }

    private List<String> texted() throws IOException {
        List<String> rows = new ArrayList<>(List.of("Day|First name|Last name|What|Hours"));
        String last = "";
        BigDecimal sum = BigDecimal.ZERO;
        List<Map<String, String>> all = new ArrayList<>(all("time-log"));
        all.sort((one, other) -> one.get("work_date").compareTo(other.get("work_date")));
        for (Map<String, String> row : all) {
            String month = row.get("work_date").substring(0, 7);
            if (!last.isEmpty() && !last.equals(month)) {
                rows.add("Subtotal|||" + "|" + sum.toPlainString());
                sum = BigDecimal.ZERO;
            }
            last = month;
            sum = sum.add(hours(row));
            String what =
                    row.get("ticket").isEmpty() ? "sweeping up" : "Order " + row.get("ticket") + " - at the bench";
            rows.add(String.join(
                    "|",
                    row.get("work_date"),
                    row.get("technician"),
                    "of the shop",
                    what,
                    hours(row).toPlainString()));
        }
        return rows;
    }

    private static BigDecimal add(BigDecimal sum, BigDecimal more) {
        BigDecimal start = sum == null ? BigDecimal.ZERO : sum;
        return more == null ? start : start.add(more);
    }

    /** Returns the hours of an entry, of two decimals. */
    private static BigDecimal hours(Map<String, String> row) {
        String hours = row.get("hours");
        if (hours.isEmpty()) {
            return minutes(row.get("end"))
                    .subtract(minutes(row.get("start")))
                    .divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP);
        }
        return hours.indexOf(':') < 0
                ? new BigDecimal(hours).setScale(2, RoundingMode.HALF_UP)
                : minutes(hours).divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP);
    }

    private static BigDecimal minutes(String clock) {
        String[] parts = clock.split(":");
        return BigDecimal.valueOf(60L * Integer.parseInt(parts[0]) + Integer.parseInt(parts[1]));
    }

    private static String date(String day, boolean german) {
        return german && !day.isEmpty()
                ? day.substring(8) + "." + day.substring(5, 7) + "." + day.substring(0, 4)
                : day;
    }

    private void csv(String file, List<String> rows) throws IOException {
        List<String> lines = rows.stream()
                .map(row -> row.replace(";", ",").replace("|", ";"))
                .toList();
        Files.writeString(to.resolve(file), String.join("\r\n", lines) + "\r\n");
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

    private static List<Map<String, String>> rows(Path file) throws IOException {
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
