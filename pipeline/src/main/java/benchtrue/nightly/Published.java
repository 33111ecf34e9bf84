package benchtrue.nightly;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/**
 * A night's results, there to be opened.
 *
 * @param review what was found
 * @param folder where the files stand, {@code out/<as-of date>}
 * @param notes what the owner should know of earlier runs and results, in words
 * @param took how long each stage took, in order
 */
public record Published(Review review, Path folder, List<String> notes, Map<String, Duration> took) {
    public Published {
        notes = List.copyOf(notes);
    }
}
