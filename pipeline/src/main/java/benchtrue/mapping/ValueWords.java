package benchtrue.mapping;

import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Kind;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Says what a file's own words mean by plain words of the trade. */
final class ValueWords {
    private final TradeWords words;

    ValueWords(TradeWords words) {
        this.words = words;
    }

    /** Returns the file's word and the contract's, empty where nobody knows it; none for words that need no telling. */
    SortedMap<String, Optional<String>> of(Match match) {
        SortedMap<String, Optional<String>> told = new TreeMap<>();
        Column column = match.column();
        for (String text : match.source().texts().keySet()) {
            if (column.cell().kind() == Kind.WORD && !column.cell().words().contains(text.toLowerCase(Locale.ROOT))) {
                told.put(text, words.meaning(column, text));
            }
        }
        return told;
    }
}
