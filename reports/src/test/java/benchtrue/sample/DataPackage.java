package benchtrue.sample;

import benchtrue.intake.columns.Table;
import benchtrue.nightly.Json;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Writes {@code datapackage.json}: the files of a shop folder in the open Data Package and Table Schema format (Frictionless
 * Data, version 1), from the definitions that the parser reads by. Files of a table with the same columns are one resource;
 * each version of the price book is one of its own, since its keys come again in the next.
 */
final class DataPackage {
    private static final String FILE = "datapackage.json";
    private final Path shop;
    private final Map<String, Map<String, Object>> resources = new LinkedHashMap<>();

    private DataPackage(Path shop) {
        this.shop = shop;
    }

    static void write(Path shop) throws IOException {
        DataPackage made = new DataPackage(shop);
        for (Table table : Table.values()) {
            String folder = table == Table.PRICE_BOOK ? "price-book" : "exports";
            try (Stream<Path> files = Files.list(shop.resolve(folder))) {
                for (Path file : files.sorted().toList()) {
                    made.add(table, folder + "/" + file.getFileName());
                }
            }
        }
        Files.writeString(shop.resolve(FILE), Json.text(made.described()), StandardCharsets.UTF_8);
    }

    private void add(Table table, String path) throws IOException {
        String name = path.substring(path.indexOf('/') + 1, path.lastIndexOf('.'));
        boolean book = table == Table.PRICE_BOOK;
        if (!book && !name.matches(table.title() + "(-[0-9-]+)?")) {
            return;
        }
        List<String> header = header(path);
        List<String> all =
                table.columns().stream().map(column -> column.header()).toList();
        String resource = book ? table.title() + "-" + name : header.equals(all) ? table.title() : name;
        paths(resources.computeIfAbsent(resource, fresh -> resource(table, fresh, header)))
                .add(path);
    }

    private List<String> header(String path) throws IOException {
        try (BufferedReader lines = Files.newBufferedReader(shop.resolve(path), StandardCharsets.UTF_8)) {
            return List.of(lines.readLine().split(","));
        }
    }

    @SuppressWarnings("unchecked")
    private static List<Object> paths(Map<String, Object> resource) {
        return (List<Object>) resource.get("path");
    }

    private static Map<String, Object> resource(Table table, String name, List<String> header) {
        Map<String, Object> resource = new LinkedHashMap<>();
        resource.put("name", name);
        resource.put("title", table.title());
        resource.put("description", "One row is " + table.oneRow() + ".");
        resource.put("path", new ArrayList<>());
        resource.put("profile", "tabular-data-resource");
        resource.put("format", "csv");
        resource.put("mediatype", "text/csv");
        resource.put("encoding", "utf-8");
        resource.put("schema", TableSchema.of(table, header));
        return resource;
    }

    private Map<String, Object> described() {
        Map<String, Object> described = new LinkedHashMap<>();
        described.put("profile", "tabular-data-package");
        described.put("name", "benchtrue-sample");
        described.put("title", "An invented fretted-instrument repair shop");
        described.put(
                "description",
                "What a shop hands over, table by table. No real shop, person or instrument; some rows are wrong on purpose.");
        described.put("resources", List.copyOf(resources.values()));
        return described;
    }
}
