package benchtrue.mapping;

import java.util.List;

/**
 * A drafted mapping.
 *
 * @param text of {@code shop-draft.toml}; empty where every file is known
 * @param found a sentence a file that was looked at
 * @param questions what a person must still say
 */
public record Draft(String text, List<String> found, List<String> questions) {
    public Draft {
        found = List.copyOf(found);
        questions = List.copyOf(questions);
    }
}
