package benchtrue.mapping;

import benchtrue.intake.ColumnProfile;
import benchtrue.intake.FileProfile;
import benchtrue.intake.columns.BookColumn;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.Made;
import benchtrue.intake.columns.PaidColumn;
import benchtrue.intake.columns.PartColumn;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TicketColumn;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.intake.columns.WageColumn;
import benchtrue.intake.columns.WaitColumn;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Weighs columns that hold another file's keys by how many of their values are there. */
final class Overlap {
    private static final double MANY = 0.7;
    private static final int FEWEST_TEXTS = 3;

    private static final Map<Column, Column> TARGETS = Map.ofEntries(
            Map.entry(LineColumn.TICKET, TicketColumn.TICKET),
            Map.entry(TimeColumn.TICKET, TicketColumn.TICKET),
            Map.entry(PartColumn.TICKET, TicketColumn.TICKET),
            Map.entry(WaitColumn.TICKET, TicketColumn.TICKET),
            Map.entry(TicketColumn.REWORK_OF, TicketColumn.TICKET),
            Map.entry(LineColumn.REWORK_OF, TicketColumn.TICKET),
            Map.entry(LineColumn.REPAIR_TYPE, BookColumn.REPAIR_TYPE),
            Map.entry(TimeColumn.REPAIR_TYPE, BookColumn.REPAIR_TYPE),
            Map.entry(TimeColumn.TECHNICIAN, WageColumn.TECHNICIAN),
            Map.entry(PaidColumn.TECHNICIAN, WageColumn.TECHNICIAN));

    private final Map<Column, Set<String>> keys = new HashMap<>();
    private final Map<List<Object>, Match> found = new HashMap<>();
    private final boolean withoutSigns;

    /**
     * Takes what is known of all files.
     *
     * @param known files that need no mapping
     */
    Overlap(List<FileProfile> known, List<Guess> guesses) {
        for (FileProfile file : known) {
            file.columns().forEach(source -> source.known().ifPresent(column -> add(column, source)));
        }
        guesses.forEach(guess -> guess.matches().forEach(match -> add(match.column(), match.source())));
        withoutSigns = areWrittenWithoutSigns(guesses);
        guesses.forEach(guess -> {
            for (Column key : guess.missing()) {
                keyOf(guess, key, known, guesses).ifPresent(match -> {
                    found.put(List.of(guess, key), match);
                    add(key, match.source());
                });
            }
        });
    }

    /** Returns whether time logs name tickets without the sign that stands before each in the tickets file. */
    private boolean areWrittenWithoutSigns(List<Guess> guesses) {
        Set<String> signed = tickets();
        Set<String> bare = KeysInTexts.bare(signed);
        return guesses.stream()
                .filter(guess -> guess.table() == Table.TIME_LOG)
                .anyMatch(guess -> !names(guess, signed) && names(guess, bare));
    }

    private static boolean names(Guess guess, Set<String> tickets) {
        List<ColumnProfile> columns = guess.file().columns();
        return columns.stream().anyMatch(source -> source.among(tickets) >= MANY)
                || new KeysInTexts(tickets).in(null, columns, TimeColumn.TICKET).isPresent();
    }

    /** Returns the tickets of the tickets file, else of the quotes. */
    private Set<String> tickets() {
        return texts(TicketColumn.TICKET).isEmpty() ? texts(LineColumn.TICKET) : texts(TicketColumn.TICKET);
    }

    /** Returns the column of which each text stands once and most stand in a column of another file that is meant for such keys. */
    private static Optional<Match> keyOf(Guess guess, Column key, List<FileProfile> known, List<Guess> guesses) {
        if (!TARGETS.containsValue(key)) {
            return Optional.empty();
        }
        List<ColumnProfile> pointing = Stream.concat(
                        known.stream()
                                .flatMap(file -> file.columns().stream())
                                .filter(source -> source.known()
                                        .map(TARGETS::get)
                                        .filter(key::equals)
                                        .isPresent()),
                        guesses.stream().filter(other -> other != guess).flatMap(other -> pointing(other, key)))
                .toList();
        return guess.unused().stream()
                .filter(source -> !Made.isMade(source.header())
                        && source.isUnique()
                        && source.texts().size() > 1)
                .flatMap(source -> pointing.stream()
                        .map(other -> other.among(source.texts().keySet()))
                        .filter(share -> share >= MANY)
                        .max(Double::compare)
                        .map(share -> new Match(
                                key,
                                source,
                                0.8 * share,
                                "the header does not tell; each of its values stands once, and " + Percent.of(share)
                                        + " of those of another file are among them"))
                        .stream())
                .max(Comparator.comparingDouble(Match::confidence));
    }

    /** Returns the columns of a file that may point to a key: what does by its name, and all that nothing is known of. */
    private static Stream<ColumnProfile> pointing(Guess guess, Column key) {
        List<Column> meant = guess.table().columns().stream()
                .filter(column -> TARGETS.get(column) == key)
                .toList();
        List<ColumnProfile> named = guess.matches().stream()
                .filter(match -> meant.contains(match.column()))
                .map(Match::source)
                .toList();
        if (meant.isEmpty()) {
            return Stream.empty();
        }
        return Stream.concat(named.stream(), guess.unused().stream())
                .filter(source -> !Made.isMade(source.header()) || named.contains(source))
                .filter(source -> source.texts().size() > 1);
    }

    private void add(Column column, ColumnProfile source) {
        keys.computeIfAbsent(column, fresh -> new HashSet<>())
                .addAll(source.texts().keySet());
    }

    /** Returns the texts of a canonical column in all files. */
    Set<String> texts(Column column) {
        return keys.getOrDefault(column, Set.of());
    }

    /** Returns a guess with what the values say of its columns. */
    Guess weigh(Guess guess) {
        List<Match> matches = new ArrayList<>();
        guess.matches().forEach(match -> matches.add(weigh(match)));
        for (Column column : guess.table().columns()) {
            Optional.ofNullable(found.get(List.of(guess, column))).ifPresent(matches::add);
            if (TARGETS.containsKey(column) && matches.stream().noneMatch(match -> match.column() == column)) {
                unnamed(guess, column).ifPresent(matches::add);
            }
        }
        guess.table().columns().stream()
                .filter(column -> TARGETS.get(column) == TicketColumn.TICKET
                        && column.header().equals("ticket"))
                .findFirst()
                .ifPresent(column -> keysInTexts(guess, column, matches));
        if (withoutSigns) {
            matches.replaceAll(Overlap::withoutSign);
        }
        matches.sort(Comparator.comparingInt(match -> match.column().ordinal()));
        return guess.with(matches);
    }

    private static Match withoutSign(Match match) {
        boolean ticket = match.column() == TicketColumn.TICKET || TARGETS.get(match.column()) == TicketColumn.TICKET;
        return ticket && !KeysInTexts.bare(match.source().texts().keySet()).isEmpty()
                ? new Match(
                        match.column(),
                        match.source(),
                        match.confidence(),
                        match.reason() + "; the time log leaves the sign out",
                        KeysInTexts.SIGNED.pattern())
                : match;
    }

    private void keysInTexts(Guess guess, Column column, List<Match> matches) {
        Match named = matches.stream()
                .filter(match -> match.column() == column)
                .findFirst()
                .orElse(null);
        Set<String> there = guess.table() == Table.TIME_LOG ? tickets() : texts(TicketColumn.TICKET);
        new KeysInTexts(withoutSigns ? KeysInTexts.bare(there) : there)
                .in(named, guess.file().columns(), column)
                .ifPresent(found -> {
                    matches.remove(named);
                    // A text that holds a key differs from ticket to ticket, so that it names nothing else.
                    matches.removeIf(other -> other.source().equals(found.source()));
                    matches.add(found);
                });
    }

    private Match weigh(Match match) {
        Set<String> there = texts(TARGETS.get(match.column()));
        if (there.isEmpty() || match.source().filled() == 0) {
            return match;
        }
        double share = match.source().among(there);
        return new Match(
                match.column(),
                match.source(),
                Math.min(0.99, match.confidence() * (0.6 + 0.4 * share) + (share >= MANY ? 0.04 : 0)),
                match.reason() + "; " + reason(match.column(), share));
    }

    private Optional<Match> unnamed(Guess guess, Column column) {
        Set<String> there = texts(TARGETS.get(column));
        return guess.unused().stream()
                .filter(source -> !Made.isMade(source.header()))
                .filter(source -> source.texts().size() >= FEWEST_TEXTS && source.among(there) >= MANY)
                .max(Comparator.comparingDouble(source -> source.among(there)))
                .map(source -> new Match(
                        column,
                        source,
                        0.8 * source.among(there),
                        "the header does not tell; " + reason(column, source.among(there))));
    }

    private static String reason(Column column, double share) {
        return Percent.of(share) + " of its values are "
                + switch (TARGETS.get(column).header()) {
                    case "ticket" -> "tickets of the tickets file";
                    case "repair_type" -> "repair types of the price book";
                    default -> "technicians of the wages file";
                };
    }
}
