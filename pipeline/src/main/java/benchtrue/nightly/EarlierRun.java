package benchtrue.nightly;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What an earlier run read, from its record.
 *
 * @param inputs names of its files
 * @param settings its settings as they are written, by key
 */
record EarlierRun(Set<String> inputs, Map<String, String> settings) {
    EarlierRun {
        inputs = Set.copyOf(inputs);
        settings = new TreeMap<>(settings);
    }

    static EarlierRun of(Path folder) throws IOException {
        JsonObject record = Json.read(Files.readString(folder.resolve(RunRecord.FILE), StandardCharsets.UTF_8));
        Set<String> inputs = new TreeSet<>();
        for (JsonObject input : record.objects("inputs")) {
            inputs.add(input.text("file"));
        }
        return new EarlierRun(inputs, record.written("settings"));
    }

    /** Returns settings as a record would have them. */
    static Map<String, String> written(Map<String, ?> settings) throws IOException {
        return Json.read(Json.text(Map.of("settings", settings))).written("settings");
    }
}
