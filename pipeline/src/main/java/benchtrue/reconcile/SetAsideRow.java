package benchtrue.reconcile;

import java.util.List;

/**
 * One row that can't be used.
 *
 * @param file the file it stands in, such as {@code exports/time-log.csv}
 * @param line the line on which it begins
 * @param digest tells this row's text from any other
 * @param reasons everything that is wrong with it
 * @param texts its original text in the canonical columns, in their order
 */
public record SetAsideRow(String file, int line, String digest, List<String> reasons, List<String> texts) {
    public SetAsideRow {
        reasons = List.copyOf(reasons);
        texts = List.copyOf(texts);
    }
}
