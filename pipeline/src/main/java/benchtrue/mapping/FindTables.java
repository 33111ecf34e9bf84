package benchtrue.mapping;

import benchtrue.intake.ColumnProfile;
import benchtrue.intake.FileProfile;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.intake.columns.WageColumn;
import benchtrue.intake.columns.WideNames;
import benchtrue.settings.UnpivotHeader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Finds the tables of files and sheets that nobody has mapped; those of different months are taken together. */
final class FindTables {
    private final List<FileProfile> files;
    private final GuessTable guess;

    FindTables(List<FileProfile> files, TradeWords words) {
        this.files = files;
        guess = new GuessTable(words);
    }

    /** Returns a guess for each system's files, with these; a file of several tables has several. */
    Map<Guess, List<FileProfile>> guesses() {
        Map<Guess, List<FileProfile>> first = guesses(people(known().stream()
                .flatMap(file -> file.columns().stream())
                .filter(column -> column.known().filter(FindTables::isPeople).isPresent())));
        Set<String> people = people(first.keySet().stream()
                .flatMap(guess -> guess.matches().stream())
                .filter(match -> isPeople(match.column()) && match.isSure())
                .map(Match::source));
        Map<Guess, List<FileProfile>> guesses = guesses(people);
        for (Map.Entry<Guess, List<FileProfile>> found : List.copyOf(guesses.entrySet())) {
            for (Table table : List.of(Table.TICKETS, Table.QUOTED_LINES, Table.TIME_LOG)) {
                if (found.getKey().table() != Table.PRICE_BOOK && !isThere(table, guesses.keySet())) {
                    guess.beside(found.getKey(), table).ifPresent(other -> guesses.put(other, found.getValue()));
                }
            }
        }
        Overlap overlap = new Overlap(known(), List.copyOf(guesses.keySet()));
        Map<Guess, List<FileProfile>> weighed = new LinkedHashMap<>();
        guesses.forEach((made, alike) -> weighed.put(overlap.weigh(made), alike));
        return weighed;
    }

    private static boolean isPeople(Column column) {
        return column == WageColumn.TECHNICIAN || column == TimeColumn.TECHNICIAN;
    }

    private static Set<String> people(Stream<ColumnProfile> columns) {
        Set<String> people = new HashSet<>();
        columns.forEach(column -> people.addAll(column.texts().keySet()));
        return people;
    }

    private boolean isThere(Table table, Set<Guess> guesses) {
        return guesses.stream().anyMatch(guess -> guess.table() == table)
                || known().stream().anyMatch(file -> file.table().get() == table);
    }

    private Map<Guess, List<FileProfile>> guesses(Set<String> people) {
        Map<Guess, List<FileProfile>> guesses = new LinkedHashMap<>();
        for (List<FileProfile> alike : alike()) {
            Optional<Guess> made = guess.guess(FileProfile.together(alike), people);
            made.ifPresent(found -> guesses.put(found, alike));
        }
        return guesses;
    }

    private List<List<FileProfile>> alike() {
        Map<List<Object>, List<FileProfile>> alike = new LinkedHashMap<>();
        for (FileProfile file : files) {
            if (file.table().isEmpty()) {
                Object columns = file.refusal().isPresent() ? file.shown() : names(file);
                alike.computeIfAbsent(List.of(file.name().split("/")[0], columns), fresh -> new ArrayList<>())
                        .add(file);
            }
        }
        return List.copyOf(alike.values());
    }

    /** Each week's file has its own dates for headers. */
    private static List<String> names(FileProfile file) {
        return file.headers().stream()
                .map(name -> WideNames.isOf(UnpivotHeader.DATE, name) ? "a date" : name)
                .toList();
    }

    private List<FileProfile> known() {
        return files.stream().filter(file -> file.table().isPresent()).toList();
    }
}
