package benchtrue.nightly;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.nio.file.Path;
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
        Path last = OwnerOnly.folder(out.resolve(LastRun.FOLDER));
        WholeFile.write(last.resolve("timings.json"), Json.text(timings));
    }

    /** How much memory the program's data took at most. */
    static final class PeakMemory {
        private PeakMemory() {}

        /** Returns the sum of the heap pools' peaks, in bytes: an upper bound of what was in use at any one time. */
        static long bytes() {
            return ManagementFactory.getMemoryPoolMXBeans().stream()
                    .filter(pool -> pool.getType() == MemoryType.HEAP)
                    .mapToLong(pool -> pool.getPeakUsage().getUsed())
                    .sum();
        }
    }
}
