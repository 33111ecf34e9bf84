package benchtrue.settings;

import java.util.List;

/**
 * How a file's own words of one column become the data contract's.
 *
 * @param column canonical column
 * @param words the file's word = the contract's word
 * @param line of {@code shop.toml}, from 1, for messages
 */
public record ValueMap(String column, List<Pair> words, int line) {
    public ValueMap {
        words = List.copyOf(words);
    }
}
