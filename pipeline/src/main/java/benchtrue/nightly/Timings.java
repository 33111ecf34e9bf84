package benchtrue.nightly;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;

/** {@code out/.last/timings.json}: how long the last run took and what memory, outside the dated results. */
final class Timings {
    private Timings() {}

    static void write(Path out, Map<String, Duration> took) throws IOException {
        Map<String, Object> seconds = new LinkedHashMap<>();
        took.forEach((stage, duration) -> seconds.put(stage, duration.toMillis() / 1000.0));
        Map<String, Object> timings = new LinkedHashMap<>();
        timings.put("seconds_a_stage", seconds);
        timings.put(
                "seconds", took.values().stream().mapToLong(Duration::toMillis).sum() / 1000.0);
        timings.put("peak_heap_bytes", PeakMemory.bytes());
        Path last = Files.createDirectories(out.resolve(".last"));
        Path next = last.resolve("timings.json.next");
        Files.writeString(next, Json.text(timings), StandardCharsets.UTF_8);
        Files.move(next, last.resolve("timings.json"), StandardCopyOption.ATOMIC_MOVE);
    }
}
