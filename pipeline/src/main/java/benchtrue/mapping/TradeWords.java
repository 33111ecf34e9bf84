package benchtrue.mapping;

import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Table;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What shops call tables, columns and values, in several languages. */
final class TradeWords {
    private static final Pattern LIST = Pattern.compile("<(.+?)>");
    private final Map<String, Set<String>> known = new HashMap<>();
    private final Map<List<Object>, Double> likenesses = new HashMap<>();

    private final Set<List<String>> familiar = new HashSet<>();

    TradeWords() {
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(TradeWords.class.getResourceAsStream("words.txt"), StandardCharsets.UTF_8))) {
            lines.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(this::add);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        known.forEach((concept, words) -> {
            if (concept.startsWith("column ")) {
                words.forEach(word -> familiar.add(PlainWords.telling(word)));
            }
        });
        Stream.of(Table.values())
                .flatMap(table -> table.columns().stream())
                .forEach(column -> familiar.add(PlainWords.telling(column.header())));
    }

    private void add(String line) {
        int colon = line.indexOf(':');
        Set<String> words = Arrays.stream(line.substring(colon + 1).split(","))
                .flatMap(this::each)
                .map(PlainWords::plain)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        known.computeIfAbsent(line.substring(0, colon), fresh -> new LinkedHashSet<>())
                .addAll(words);
    }

    /** Returns a name with each word of the lists that it names, such as {@code <quoted> <hours>}. */
    private Stream<String> each(String name) {
        Matcher list = LIST.matcher(name);
        return list.find()
                ? words("any " + list.group(1)).stream().map(list::replaceFirst).flatMap(this::each)
                : Stream.of(name);
    }

    private Set<String> words(String concept) {
        return known.getOrDefault(concept, Set.of());
    }

    /** Returns how far a header names a column, 0 to 1. */
    double likeness(Table table, Column column, String header) {
        return likenesses.computeIfAbsent(List.of(table, column, header), fresh -> compare(table, column, header));
    }

    private double compare(Table table, Column column, String header) {
        String name = PlainWords.plain(header);
        return Stream.of(
                        Set.of(PlainWords.plain(column.header())),
                        words("column " + column.header()),
                        words("column " + table.title() + "." + column.header()))
                .flatMap(Set::stream)
                .mapToDouble(word -> PlainWords.likeness(name, word))
                .max()
                .orElse(0);
    }

    /** Returns how far a file's name tells a table, 0 to 1. */
    double likeness(Table table, String file) {
        String name = PlainWords.plain(file.replaceAll("\\.[^.]*$", "").replaceAll("\\d+", " "));
        return words("file " + table.title()).stream()
                .mapToDouble(word -> PlainWords.likeness(name, word))
                .max()
                .orElse(0);
    }

    /** Returns the contract's word for one of a file's; empty where none is known. */
    Optional<String> meaning(Column column, String text) {
        String plain = PlainWords.plain(text);
        List<String> words = column.cell().words();
        return words.stream()
                .filter(word -> PlainWords.plain(word).equals(plain))
                .findFirst()
                .or(() -> words.stream()
                        .filter(word ->
                                words("word " + column.header() + " " + word).contains(plain))
                        .findFirst());
    }

    /** Returns how many names of a header are words for a column of any table. */
    int familiar(List<String> names) {
        return (int) names.stream()
                .map(PlainWords::telling)
                .filter(words -> !words.isEmpty() && familiar.contains(words))
                .count();
    }
}
