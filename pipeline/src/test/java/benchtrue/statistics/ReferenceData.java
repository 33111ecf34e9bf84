package benchtrue.statistics;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Published data kept as small files beside the tests: a header line, then commas. */
record ReferenceData(List<String> header, List<String[]> rows) {

    static ReferenceData read(String name) {
        try (InputStream in = ReferenceData.class.getResourceAsStream("/statistics/" + name)) {
            List<String[]> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> line.split(","))
                    .toList();
            return new ReferenceData(Arrays.asList(lines.get(0)), lines.subList(1, lines.size()));
        } catch (IOException e) {
            throw new AssertionError(name, e);
        }
    }

    String[] text(String column) {
        int index = header.indexOf(column);
        return rows.stream().map(row -> row[index]).toArray(String[]::new);
    }

    double[] numbers(String column) {
        return Arrays.stream(text(column)).mapToDouble(Double::parseDouble).toArray();
    }

    /** Levels numbered in alphabetical order, as R numbers a factor. */
    int[] levels(String column) {
        String[] text = text(column);
        List<String> names = Arrays.stream(text).distinct().sorted().toList();
        return Arrays.stream(text).mapToInt(names::indexOf).toArray();
    }

    static double[] numbersIn(String text) {
        return Arrays.stream(text.trim().split("[\\s|,]+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
