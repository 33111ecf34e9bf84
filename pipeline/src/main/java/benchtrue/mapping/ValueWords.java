package benchtrue.mapping;

import benchtrue.intake.ColumnProfile;
import benchtrue.intake.FileProfile;
import benchtrue.intake.columns.BookColumn;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Kind;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Says what a file's own words mean: by plain words of the trade, and repairs by their titles in the price book. */
final class ValueWords {
    private static final String ONE_OFF = "one-off";
    private final TradeWords words;
    private final Set<String> types;
    private final Map<String, String> typeByTitle = new HashMap<>();

    ValueWords(TradeWords words, Overlap overlap, List<FileProfile> known, List<Guess> guesses) {
        this.words = words;
        types = overlap.texts(BookColumn.REPAIR_TYPE);
        known.forEach(file -> addTitles(file, column(file, BookColumn.REPAIR_TYPE), column(file, BookColumn.TITLE)));
        guesses.forEach(guess ->
                addTitles(guess.file(), source(guess, BookColumn.REPAIR_TYPE), source(guess, BookColumn.TITLE)));
    }

    /** Where both have a text of its own in every row, the rows' order tells which belong together. */
    private void addTitles(FileProfile file, Optional<ColumnProfile> type, Optional<ColumnProfile> title) {
        if (type.isEmpty() || title.isEmpty() || !isFull(file, type.get()) || !isFull(file, title.get())) {
            return;
        }
        Iterator<String> types = type.get().texts().keySet().iterator();
        title.get().texts().keySet().forEach(text -> typeByTitle.put(PlainWords.plain(text), types.next()));
    }

    private static boolean isFull(FileProfile file, ColumnProfile column) {
        return column.isUnique() && column.filled() == file.rows();
    }

    private static Optional<ColumnProfile> column(FileProfile file, Column wanted) {
        return file.columns().stream()
                .filter(column -> column.known().filter(wanted::equals).isPresent())
                .findFirst();
    }

    private static Optional<ColumnProfile> source(Guess guess, Column wanted) {
        return guess.matches().stream()
                .filter(match -> match.column() == wanted)
                .map(Match::source)
                .findFirst();
    }

    /** Returns the file's word and the contract's, empty where nobody knows it; none for words that need no telling. */
    SortedMap<String, Optional<String>> of(Match match) {
        SortedMap<String, Optional<String>> told = new TreeMap<>();
        Column column = match.column();
        boolean repairs = column.header().equals(BookColumn.REPAIR_TYPE.header()) && column != BookColumn.REPAIR_TYPE;
        for (String text : match.source().texts().keySet()) {
            if (column.cell().kind() == Kind.WORD && !column.cell().words().contains(text.toLowerCase(Locale.ROOT))) {
                told.put(text, words.meaning(column, text));
            } else if (repairs && !types.isEmpty() && !types.contains(text) && !text.equals(ONE_OFF)) {
                told.put(text, Optional.ofNullable(typeByTitle.get(PlainWords.plain(text))));
            }
        }
        return told;
    }
}
