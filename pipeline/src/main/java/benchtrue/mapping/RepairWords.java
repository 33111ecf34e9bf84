package benchtrue.mapping;

import benchtrue.format.TomlText;
import benchtrue.intake.ColumnProfile;
import benchtrue.intake.FileProfile;
import benchtrue.intake.columns.BookColumn;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.settings.Settings;
import benchtrue.shop.PriceBooks;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Gathers the spellings of repairs over all files of quotes and of time, and drafts what each means: a repair of the price book, or,
 * without one, the spelling of it that is met most. Each word is asked once, and none that is answered already.
 */
final class RepairWords {
    private static final int SHOWN = 5;
    private static final int FEWEST = 3;
    private static final int RARE = 100;
    private static final double WORTH_SHOWING = 0.3;
    private static final Pattern SECTION =
            Pattern.compile("^\\s*\\[\\s*words\\s*\\.\\s*repair_type\\s*][^\\n]*$", Pattern.MULTILINE);
    private final Map<String, Long> quoted = new HashMap<>();
    private final Map<String, Long> logged = new HashMap<>();
    private final Map<String, String> titles = new LinkedHashMap<>();
    private final Set<String> answered = new HashSet<>();
    private final List<String> lines = new ArrayList<>();
    private final List<String> open = new ArrayList<>();
    private long met;

    /** A name that a text may be, and how alike both are. */
    private record Near(String repair, double likeness) {}

    RepairWords(List<FileProfile> known, List<Guess> guesses, Settings settings) {
        Stream.concat(settings.words().stream(), settings.files().stream().flatMap(rule -> rule.values().stream()))
                .filter(map -> map.column().equals(LineColumn.REPAIR_TYPE.header()))
                .flatMap(map -> map.words().stream())
                .forEach(pair -> answered.add(PlainWords.plain(pair.key())));
        known.forEach(file -> take(
                file,
                column -> file.columns().stream()
                        .filter(source -> source.known().filter(column::equals).isPresent())
                        .findFirst()));
        guesses.forEach(guess -> take(
                guess.file(),
                column -> guess.matches().stream()
                        .filter(match -> match.column() == column && match.isSure())
                        .map(Match::source)
                        .findFirst()));
        draft();
    }

    /** Finds the column of a file that is a canonical one. */
    private interface Columns {
        Optional<ColumnProfile> of(Column column);
    }

    private void take(FileProfile file, Columns columns) {
        columns.of(LineColumn.REPAIR_TYPE).ifPresent(source -> add(quoted, source));
        columns.of(TimeColumn.REPAIR_TYPE).ifPresent(source -> add(logged, source));
        Optional<ColumnProfile> type = columns.of(BookColumn.REPAIR_TYPE);
        Optional<ColumnProfile> title = columns.of(BookColumn.TITLE);
        type.ifPresent(source -> source.texts().keySet().forEach(key -> titles.put(key, key)));
        if (type.isPresent() && title.isPresent() && isFull(file, type.get()) && isFull(file, title.get())) {
            // Where both have a text of its own in every row, the rows' order tells which belong together.
            Iterator<String> types = type.get().texts().keySet().iterator();
            title.get().texts().keySet().forEach(text -> titles.put(text, types.next()));
        }
    }

    private static void add(Map<String, Long> counts, ColumnProfile source) {
        source.texts().forEach((text, count) -> counts.merge(text, count, Long::sum));
    }

    private static boolean isFull(FileProfile file, ColumnProfile column) {
        return column.isUnique() && column.filled() == file.rows();
    }

    private void draft() {
        met = Stream.of(quoted, logged)
                .flatMap(counts -> counts.values().stream())
                .mapToLong(Long::longValue)
                .sum();
        boolean book = !titles.isEmpty();
        Map<String, Long> together = new HashMap<>();
        quoted.forEach((name, count) -> together.merge(RepairNames.sorted(name), count, Long::sum));
        List<String> names = new ArrayList<>(quoted.keySet());
        names.sort(Comparator.comparing((String name) -> -together.get(RepairNames.sorted(name)))
                .thenComparing(name -> -quoted.get(name))
                .thenComparing(name -> name));
        names.removeIf(name -> answered.contains(PlainWords.plain(name)));
        for (String name : names) {
            draft(name, quoted.get(name), book);
        }
        List<String> others = new ArrayList<>(logged.keySet());
        others.removeAll(quoted.keySet());
        others.sort(null);
        others.removeIf(name -> answered.contains(PlainWords.plain(name)));
        others.forEach(name -> draft(name, logged.get(name), true));
    }

    /** Drafts what a name means; without a book, one that is like no other is a repair of its own. */
    private void draft(String name, long rows, boolean mustBeKnown) {
        if (name.equals(PriceBooks.ONE_OFF) || name.equals(titles.get(name))) {
            return;
        }
        List<Near> nearest = nearest(name);
        boolean alike = !nearest.isEmpty() && nearest.get(0).likeness >= RepairNames.ALIKE;
        boolean rival = nearest.size() > 1 && nearest.get(1).likeness > nearest.get(0).likeness - 0.05;
        if (alike && !rival) {
            lines.add(line(name, nearest.get(0).repair)
                    + "  # " + Math.round(100 * Math.min(0.99, nearest.get(0).likeness)) + " %: " + rows(rows)
                    + (nearest.size() > 1 ? "; the next is " + TomlText.quoted(nearest.get(1).repair) : ""));
        } else if (mustBeKnown || alike) {
            ask(name, rows, nearest, alike);
        } else {
            titles.put(name, name);
        }
    }

    /** What was met once or twice in many rows and is like no repair may be somebody's name that slipped into the column. */
    private void ask(String name, long rows, List<Near> nearest, boolean alike) {
        if (alike || rows >= FEWEST || rows * RARE >= met) {
            String known = nearest.stream()
                    .filter(near -> near.likeness >= WORTH_SHOWING)
                    .map(near -> TomlText.quoted(near.repair))
                    .collect(Collectors.joining(", "));
            open.add(name);
            lines.add(line(name, PriceBooks.ONE_OFF) + "  # ASKED: what is it (" + rows(rows) + ")?"
                    + (known.isEmpty() ? "" : " The nearest: " + known));
        }
    }

    private static String line(String name, String repair) {
        return TomlText.quoted(name) + " = " + TomlText.quoted(repair);
    }

    private static String rows(long rows) {
        return rows + (rows == 1 ? " row" : " rows");
    }

    /** Returns the two repairs nearest to a name. */
    private List<Near> nearest(String name) {
        Map<String, Double> likeness = new LinkedHashMap<>();
        titles.forEach((title, repair) -> likeness.merge(repair, RepairNames.likeness(name, title), Math::max));
        return likeness.entrySet().stream()
                .map(entry -> new Near(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparingDouble(Near::likeness).reversed().thenComparing(Near::repair))
                .limit(2)
                .toList();
    }

    /** Returns the lines of the table of words, without its header. */
    List<String> lines() {
        return List.copyOf(lines);
    }

    /** Returns the owner's settings with the new words in the table of words that stands there. */
    String into(String own) {
        Matcher section = SECTION.matcher(own);
        return section.find() && !lines.isEmpty()
                ? own.substring(0, section.end()) + "\n" + String.join("\n", lines) + own.substring(section.end())
                : own;
    }

    /** Returns the lines behind the owner's settings: rules, then the table of words where none stands there. */
    List<String> after(String own, List<String> rules) {
        List<String> all = new ArrayList<>(rules);
        if (!lines.isEmpty() && !SECTION.matcher(own).find()) {
            all.add("");
            all.add("# What repairs are called, whichever file they stand in.");
            all.add("[words.repair_type]");
            all.addAll(lines);
        }
        return all;
    }

    /** Returns what to ask: one sentence for all words, which stand in the draft one by one. */
    Optional<String> question() {
        if (open.isEmpty()) {
            return Optional.empty();
        }
        Collection<String> shown = open.subList(0, Math.min(SHOWN, open.size()));
        return Optional.of("repairs: what "
                + (open.size() == 1 ? "is " : "are ")
                + shown.stream().map(TomlText::quoted).collect(Collectors.joining(", "))
                + (open.size() > SHOWN ? " and " + (open.size() - SHOWN) + " more" : "")
                + "? Until [words.repair_type] of the draft says, such work counts as one-off and is not judged.");
    }
}
