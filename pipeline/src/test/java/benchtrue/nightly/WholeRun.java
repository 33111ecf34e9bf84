package benchtrue.nightly;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** A small run folder with one result and its record, made as the program makes them. */
final class WholeRun {
    static final String RESULT = "result.txt";

    private WholeRun() {}

    static Path seal(Path out, LocalDate date, String text) throws IOException {
        RunFolder run = RunFolder.begin(out, date + "-0123456789abcdef");
        Files.writeString(run.path().resolve(RESULT), text);
        List<Map<String, Object>> outputs = RunFolder.digests(run.path()).stream()
                .map(file ->
                        Map.<String, Object>of("file", file.file(), "bytes", file.bytes(), "sha256", file.sha256()))
                .toList();
        Files.writeString(run.path().resolve(RunRecord.FILE), Json.text(Map.of("outputs", outputs)));
        return run.seal();
    }
}
