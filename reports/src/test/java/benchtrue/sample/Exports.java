package benchtrue.sample;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads the files of an invented shop back, independently of how they were written. */
final class Exports {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private Exports() {}

    /** Returns the rows of all files whose name begins with a table's name, in order of the names. */
    static List<CSVRecord> table(Path shop, String table) throws IOException {
        List<CSVRecord> rows = new ArrayList<>();
        try (Stream<Path> files = Files.list(shop.resolve("exports"))) {
            for (Path file : files.filter(path -> path.getFileName().toString().startsWith(table))
                    .sorted()
                    .toList()) {
                rows.addAll(rows(file));
            }
        }
        return rows;
    }

    static List<CSVRecord> rows(Path file) throws IOException {
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, FORMAT)) {
            List<CSVRecord> rows = parser.getRecords();
            for (CSVRecord row : rows) {
                if (!row.isConsistent()) {
                    throw new AssertionError(file + " has a ragged row: " + row);
                }
            }
            return rows;
        }
    }

    /** Returns every file under a folder by its path relative to it. */
    static Map<String, byte[]> bytes(Path folder) throws IOException {
        Map<String, byte[]> bytes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                bytes.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        return bytes;
    }
}
