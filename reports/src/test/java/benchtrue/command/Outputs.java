package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.CellReference;

/** What a night left, as a person or another program reads it. */
record Outputs(Path folder) {
    /** Returns a result table's rows by column. */
    List<Map<String, String>> table(String file) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        List<Map<String, String>> rows = new ArrayList<>();
        try (Reader text = Files.newBufferedReader(folder.resolve(file));
                CSVParser records = CSVParser.parse(text, format)) {
            for (CSVRecord record : records) {
                rows.add(record.toMap());
            }
        }
        return rows;
    }

    String text(String file) throws IOException {
        return Files.readString(folder.resolve(file));
    }

    /** Returns what a page says, without its marks. */
    String words(String page) throws IOException {
        return words("", text(page).replaceAll("(?s)<style.*?</style>|<script.*?</script>", " "));
    }

    private static String words(String before, String html) {
        return (before + html.replaceAll("<[^>]+>", " "))
                .replace("&nbsp;", "\u00a0")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replaceAll("&quot;|&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&")
                .replaceAll("[ \\t\\r\\n]+", " ")
                .strip();
    }

    /** Returns the page's rows of figures, cell by cell, by the repair's title. */
    Map<String, List<String>> repairsOnThePage() throws IOException {
        Map<String, List<String>> rows = new HashMap<>();
        Matcher row = Pattern.compile("(?s)<tr id=\"repair-[0-9]+\">(.*?)</tr>").matcher(text("review.html"));
        while (row.find()) {
            List<String> cells = new ArrayList<>();
            Matcher cell = Pattern.compile("(?s)<t[hd][^>]*>(.*?)</t[hd]>").matcher(row.group(1));
            while (cell.find()) {
                cells.add(words("", cell.group(1)));
            }
            rows.put(cells.get(0), cells);
        }
        return rows;
    }

    /** Returns a figure of the record of the run that stands after a heading of it. */
    String recorded(String heading, String figure) throws IOException {
        String json = text("run.json");
        Matcher found = Pattern.compile("\"" + figure + "\": \"?([-0-9.]+)\"?")
                .matcher(json.substring(json.indexOf("\"" + heading + "\"")));
        assertThat(found.find()).as(heading + " " + figure).isTrue();
        return found.group(1);
    }

    Workbook workbook(String file) throws IOException {
        return WorkbookFactory.create(folder.resolve(file).toFile(), null, true);
    }

    /** Returns the rows below a row of headings, which is known by one of them, up to the first empty row. */
    static List<Map<String, Cell>> below(Sheet sheet, String heading) {
        Map<Integer, String> headings = new LinkedHashMap<>();
        List<Map<String, Cell>> rows = new ArrayList<>();
        for (Row row : sheet) {
            if (headings.isEmpty()) {
                row.forEach(cell -> headings.put(cell.getColumnIndex(), cell.toString()));
                if (!headings.containsValue(heading)) {
                    headings.clear();
                }
            } else {
                Map<String, Cell> cells = new HashMap<>();
                headings.forEach((column, title) -> cells.putIfAbsent(title, row.getCell(column)));
                rows.add(cells);
            }
        }
        assertThat(rows).as(sheet.getSheetName() + ", " + heading).isNotEmpty();
        return rows;
    }

    /** Returns the cell of a name. */
    static Cell named(Workbook workbook, String name) {
        CellReference place = new CellReference(workbook.getName(name).getRefersToFormula());
        return workbook.getSheet(place.getSheetName()).getRow(place.getRow()).getCell(place.getCol());
    }
}
