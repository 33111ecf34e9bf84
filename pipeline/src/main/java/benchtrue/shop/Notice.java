package benchtrue.shop;

import java.util.List;

/**
 * Something the owner should know about the data: used, but doubtful, changed or incomplete.
 *
 * @param code stable name of the kind of notice, such as {@code time-after-close}
 * @param words what it means, in plain words
 * @param count how often it was met
 * @param examples the first few places, such as {@code exports/time-log.csv line 12}
 */
public record Notice(String code, String words, long count, List<String> examples) {
    public Notice {
        examples = List.copyOf(examples);
    }
}
