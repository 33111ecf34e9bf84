package benchtrue.intake;

import java.util.HashMap;
import java.util.Map;

/**
 * Numbers quoted lines that have no number, within their ticket and in order. The same repair of the same ticket in a newer
 * export has the number that it had, so that a corrected quote takes the place of the one it corrects, and a repair that was
 * quoted later takes nobody's. Mutable.
 */
final class LineNumbers {
    /** What stands on a ticket: a repair, and whether it is the first of its kind in a file, the second, ... */
    private record Place(int ticket, int repair, int time) {}

    private final Map<Place, Integer> numbers = new HashMap<>();
    private final Map<Integer, Integer> last = new HashMap<>();
    private final Map<Place, Integer> inFile = new HashMap<>();

    /** Begins a file. */
    void begin() {
        inFile.clear();
    }

    /** Returns the number of the next line by the codes of its ticket and its repair. */
    String next(int ticket, int repair) {
        int time = inFile.merge(new Place(ticket, repair, 0), 1, Integer::sum);
        int number =
                numbers.computeIfAbsent(new Place(ticket, repair, time), fresh -> last.merge(ticket, 1, Integer::sum));
        return String.valueOf(number);
    }
}
