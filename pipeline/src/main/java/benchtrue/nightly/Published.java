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
 * @param neverEnded names of earlier runs that were stopped before they published; what they left is cleared
 * @param took how long each stage took, in order
 */
public record Published(Review review, Path folder, List<String> neverEnded, Map<String, Duration> took) {
    public Published {
        neverEnded = List.copyOf(neverEnded);
    }
}
