package benchtrue.intake.columns;

import java.util.List;

/**
 * What stands in a column.
 *
 * @param kind what the text must say
 * @param need whether every row must have it
 * @param words the contract's words where the kind is {@link Kind#WORD}, else empty
 * @param meaning one line for a person
 */
public record Cell(Kind kind, Need need, List<String> words, String meaning) {
    public Cell {
        words = List.copyOf(words);
    }

    static Cell needed(Kind kind, String meaning) {
        return new Cell(kind, Need.REQUIRED, List.of(), meaning);
    }

    static Cell derived(Kind kind, String meaning) {
        return new Cell(kind, Need.DERIVED, List.of(), meaning);
    }

    static Cell maybe(Kind kind, String meaning) {
        return new Cell(kind, Need.OPTIONAL, List.of(), meaning);
    }

    static Cell word(Enum<?>[] words, Need need, String meaning) {
        return new Cell(
                Kind.WORD,
                need,
                List.of(words).stream().map(benchtrue.format.Words::of).toList(),
                meaning);
    }

    /** Returns what is expected, in words for a message. */
    public String expected() {
        return words.isEmpty() ? kind.expected() : "one of " + String.join(", ", words);
    }
}
