package benchtrue.command;

import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/**
 * A tidy shop's files as two systems of a German shop would have written them: order management (semicolons, windows-1252,
 * decimal commas, euro signs) and a time clock (tabs, UTF-8, minutes, repairs by their titles, one file a year).
 */
final class GermanShop {
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("open", "in Arbeit"),
            Map.entry("closed", "abgeschlossen"),
            Map.entry("void", "storniert"),
            Map.entry("accepted", "angenommen"),
            Map.entry("declined", "abgelehnt"),
            Map.entry("handling", "Annahme"),
            Map.entry("quoting", "Angebot"),
            Map.entry("shop", "allgemein"),
            Map.entry("part", "Ersatzteil"),
            Map.entry("supply", "Verbrauchsmaterial"),
            Map.entry("outside-work", "Fremdleistung"),
            Map.entry("acclimatising", "Akklimatisieren"),
            Map.entry("glue-curing", "Leimtrocknung"),
            Map.entry("finish-curing", "Lacktrocknung"),
            Map.entry("parts", "Ersatzteile"),
            Map.entry("approval", "Freigabe"),
            Map.entry("bench", "Werkbank"),
            Map.entry("pick-up", "Abholung"),
            Map.entry("fixed", "fix"),
            Map.entry("variable", "variabel"),
            Map.entry("hourly", "Stundenlohn"),
            Map.entry("salary", "Gehalt"),
            Map.entry("owner", "Inhaber"),
            Map.entry("goodwill", "Kulanz"),
            Map.entry("house", "Haus"),
            Map.entry("trade", "H\u00e4ndler"),
            Map.entry("maker-warranty", "Herstellergarantie"),
            Map.entry("our-fault", "eigener Fehler"),
            Map.entry("new-damage", "neuer Schaden"),
            Map.entry("settling", "Setzen"));

    private final Path from;
    private final Path to;
    private final Map<String, String> titles = new HashMap<>();

    private GermanShop(Path from, Path to) {
        this.from = from;
        this.to = to;
    }

    /** Writes the exports and the price book of a tidy shop folder anew into another. */
    static void write(Path from, Path to) throws IOException {
        GermanShop shop = new GermanShop(from, to);
        shop.rows("price-book/2022-01-01.csv")
                .forEach(row -> shop.titles.put(row.get("repair_type"), row.get("title")));
        shop.orders();
        shop.money();
        shop.clock();
    }

    private void orders() throws IOException {
        office(
                "exports/tickets.csv",
                "exports/Auftr\u00e4ge.csv",
                "ticket=Auftragsnr. opened=Annahmedatum promised=Zugesagt closed=Abgeschlossen_am status=Status"
                        + " instrument_class=Instrumentenart built_year=Baujahr traits=Merkmale quoted_by=Angeboten_von"
                        + " rework_of=Nacharbeit_zu finished=Fertiggestellt");
        office(
                "exports/quoted-lines.csv",
                "exports/Auftragspositionen.csv",
                "ticket=Auftragsnr. line=Pos. repair_type=Leistung quoted_hours=Angebotene_Stunden"
                        + " quoted_labour=Angebotspreis_Arbeit quoted_parts=Angebot_Material outcome=Entscheidung"
                        + " quoted_on=Angeboten_am billed_labour=Berechneter_Lohn billed_parts=Berechnetes_Material"
                        + " paid_by=Bezahlt_von rework_of=Nacharbeit_zu rework_of_line=Nacharbeit_zu_Position"
                        + " return_reason=Reklamationsgrund");
        office("exports/waits.csv", "exports/Wartezeiten.csv", "ticket=Auftragsnr. from=Von to=Bis reason=Grund");
        office(
                "exports/parts-usage.csv",
                "exports/Materialentnahmen.csv",
                "use=Beleg ticket=Auftragsnr. line=Pos. part=Artikel quantity=Menge unit_cost=Einkaufspreis"
                        + " unit_charge=Verkaufspreis used_on=Entnommen_am kind=Teileart");
    }

    private void money() throws IOException {
        office(
                "price-book/2022-01-01.csv",
                "price-book/2022-01-01.csv",
                "repair_type=Leistungsnr. title=Bezeichnung family=Gruppe book_hours=Richtzeit book_labour=Arbeitspreis"
                        + " least_hours=Mindestzeit hazards=Gefahren least_labour=Mindestpreis"
                        + " free_weeks=Kostenlose_Wochen");
        office(
                "exports/technicians.csv",
                "exports/L\u00f6hne.csv",
                "technician=Mitarbeiter hourly_wage=Stundenlohn effective_from=G\u00fcltig_ab"
                        + " weekly_bench_hours=Wochenstunden grade=Stufe pay_basis=Lohnart");
        office(
                "exports/paid-hours.csv",
                "exports/Lohnabrechnung.csv",
                "technician=Mitarbeiter month=Monat hours=Bezahlte_Stunden");
        office(
                "exports/overheads.csv",
                "exports/Gemeinkosten.csv",
                "month=Monat account=Kostenart amount=Betrag behaviour=Fix/variabel");
    }

    private void office(String file, String german, String columns) throws IOException {
        write(rows(file), german, columns, ';', Charset.forName("windows-1252"));
    }

    private void clock() throws IOException {
        Map<String, List<Map<String, String>>> years = new TreeMap<>();
        for (Map<String, String> row : rows("exports/time-log.csv")) {
            row.put("repair_type", titles.getOrDefault(row.get("repair_type"), row.get("repair_type")));
            row.put("hours", minutes(row.get("hours")));
            years.computeIfAbsent(row.get("work_date").substring(0, 4), fresh -> new ArrayList<>())
                    .add(row);
        }
        for (Map.Entry<String, List<Map<String, String>>> year : years.entrySet()) {
            write(
                    year.getValue(),
                    "exports/Zeiten_" + year.getKey() + ".csv",
                    "entry=Buchung ticket=Auftrag line=Position repair_type=T\u00e4tigkeit technician=Mitarbeiter"
                            + " work_date=Tag hours=Dauer_(min) start=Kommt end=Geht kind=Zeitart note=Bemerkung",
                    '\t',
                    StandardCharsets.UTF_8);
        }
    }

    private static String minutes(String hours) {
        return new BigDecimal(hours)
                .multiply(BigDecimal.valueOf(60))
                .stripTrailingZeros()
                .toPlainString()
                .replace('.', ',');
    }

    private List<Map<String, String>> rows(String file) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        List<Map<String, String>> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(from.resolve(file), StandardCharsets.UTF_8, format)) {
            for (CSVRecord row : parser) {
                rows.add(row.toMap());
            }
        }
        return rows;
    }

    /** A column more that is the customers', and nobody else's business. */
    private void write(List<Map<String, String>> rows, String file, String columns, char delimiter, Charset letters)
            throws IOException {
        List<String[]> pairs =
                Stream.of(columns.split(" ")).map(pair -> pair.split("=")).toList();
        Files.createDirectories(to.resolve(file).getParent());
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter).get();
        try (Writer out = Files.newBufferedWriter(to.resolve(file), letters);
                CSVPrinter printer = new CSVPrinter(out, format)) {
            List<String> header = new ArrayList<>(
                    pairs.stream().map(pair -> pair[1].replace('_', ' ')).toList());
            header.add("Kunde");
            printer.printRecord(header);
            for (Map<String, String> row : rows) {
                List<String> cells = new ArrayList<>();
                pairs.forEach(pair -> cells.add(german(pair[0], row.get(pair[0]))));
                cells.add("Erna Beispiel");
                printer.printRecord(cells);
            }
        }
    }

    private static String german(String column, String text) {
        UnaryOperator<String> decimals = number -> number.replace('.', ',');
        if (text.matches("\\d{4}-\\d\\d-\\d\\d")) {
            return text.substring(8) + "." + text.substring(5, 7) + "." + text.substring(0, 4);
        }
        if (text.matches("\\d{4}-\\d\\d")) {
            return text.substring(5) + "/" + text.substring(0, 4);
        }
        if (text.matches("-?[0-9.]+") && column.matches(".*labour|.*_parts|amount")) {
            String plain = decimals.apply(
                    new BigDecimal(text).setScale(2, RoundingMode.UNNECESSARY).toPlainString());
            return plain.replaceAll("(\\d)(\\d{3},)", "$1.$2") + " \u20ac";
        }
        if (text.matches("-?[0-9.]+")) {
            return decimals.apply(text);
        }
        return column.matches("status|outcome|kind|reason|behaviour|pay_basis|paid_by|return_reason")
                ? WORDS.getOrDefault(text, text)
                : text;
    }
}
