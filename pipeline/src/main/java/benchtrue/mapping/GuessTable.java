package benchtrue.mapping;

import benchtrue.intake.ColumnProfile;
import benchtrue.intake.FileProfile;
import benchtrue.intake.WideColumns;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.Made;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.settings.UnpivotHeader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Guesses which table a file is, from the names of its columns, what stands in them and the file's own name. */
final class GuessTable {
    private static final double READABLE = 0.8;
    private static final double MISSING = 1.2;
    private static final double UNTOLD = 0.4;
    private static final double MAY_BE = 0.6;
    private static final int LONGEST_KEY = 3;
    private final TradeWords words;
    private final Map<List<Object>, Double> fits = new HashMap<>();

    /** A column of the file and one of the table, with what speaks for both being one. */
    private record Pair(Column column, ColumnProfile source, double name, double readable) {
        double score() {
            return name * readable;
        }
    }

    GuessTable(TradeWords words) {
        this.words = words;
    }

    /** Returns the table that most speaks for; empty where no table is likely. */
    Optional<Guess> guess(FileProfile file, Set<String> people) {
        fits.clear();
        boolean book = file.name().startsWith("price-book/");
        Optional<WideColumns> wide = WideColumns.of(file, people, header -> words.familiar(List.of(header)) > 0);
        return Stream.of(Table.values())
                .filter(table -> table != Table.SURCHARGES && (!book || table == Table.PRICE_BOOK))
                .filter(table -> wide.isEmpty() || table == Table.TIME_LOG)
                .map(table -> guess(wide.map(WideColumns::rest).orElse(file), table, wide))
                .filter(guess -> guess.score() > 0 && guess.matches().size() > 1)
                .max(Comparator.comparingDouble(Guess::score));
    }

    /** Returns another table that stands in the rows of one: tickets whose columns stand on each of their lines. */
    Optional<Guess> beside(Guess first, Table table) {
        fits.clear();
        if (first.wide().isPresent()) {
            return Optional.empty();
        }
        Guess other = guess(first.file(), table, Optional.empty());
        List<ColumnProfile> taken = first.matches().stream().map(Match::source).toList();
        long own = other.matches().stream()
                .filter(match -> match.isSure() && !taken.contains(match.source()))
                .count();
        boolean priced = other.matches().stream()
                .anyMatch(match -> match.isSure()
                        && (match.column() == LineColumn.QUOTED_HOURS || match.column() == LineColumn.QUOTED_LABOUR));
        boolean whole = other.missing().isEmpty() && own >= 2 && (table != Table.QUOTED_LINES || priced);
        return whole ? Optional.of(other) : Optional.empty();
    }

    /** A sheet is named for its table; one that is named for a month or a person leaves it to its file's name. */
    private double likeness(Table table, FileProfile file) {
        String name = file.sheet()
                .filter(sheet -> Stream.of(Table.values()).anyMatch(any -> words.likeness(any, sheet) > 0))
                .orElse(file.file());
        return words.likeness(table, name);
    }

    private Guess guess(FileProfile file, Table table, Optional<WideColumns> wide) {
        List<Match> matches = new ArrayList<>();
        List<ColumnProfile> taken = new ArrayList<>();
        double score = 2 * likeness(table, file);
        for (Pair pair : pairs(file, table, wide)) {
            boolean free =
                    !taken.contains(pair.source) && matches.stream().noneMatch(match -> match.column() == pair.column);
            if (free) {
                taken.add(pair.source);
                matches.add(match(pair));
                score += pair.score() * (pair.column.cell().need() == Need.OPTIONAL ? MAY_BE : 1);
            }
        }
        stamp(file, table, matches);
        technician(file, table, matches);
        if (wide.isEmpty()) {
            int named = matches.size();
            matches = new UnnamedColumns(file, matches).found(table.columns());
            score += UNTOLD * (matches.size() - named);
        }
        matches.sort(Comparator.comparingInt(match -> match.column().ordinal()));
        Guess guess = new Guess(file, table, matches, 0, wide);
        long told = guess.missing().stream().filter(DraftRule::hasDefault).count();
        double missing = MISSING * (guess.missing().size() - told)
                + UNTOLD * (told + guess.derived().size());
        return new Guess(file, table, matches, score - missing, wide);
    }

    private List<Pair> pairs(FileProfile file, Table table, Optional<WideColumns> wide) {
        List<Pair> pairs = new ArrayList<>();
        for (ColumnProfile source : file.columns()) {
            for (Column column : table.columns()) {
                double name = likeness(table, column, source, wide);
                double readable = name == 0 ? 0 : Made.isMade(source.header()) ? 1 : readable(column, source);
                if (readable >= READABLE) {
                    pairs.add(new Pair(column, source, name, readable));
                }
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::score).reversed());
        return pairs;
    }

    /** What the headers and the cells of wide columns say, no other column of the file says. */
    private double likeness(Table table, Column column, ColumnProfile source, Optional<WideColumns> wide) {
        if (wide.isEmpty()) {
            return words.likeness(table, column, source.header());
        }
        Column header = wide.get().header() == UnpivotHeader.TEXT ? TimeColumn.TECHNICIAN : TimeColumn.WORK_DATE;
        return switch (source.header()) {
            case Made.COLUMN -> column == header ? 1 : 0;
            case Made.CELL -> column == TimeColumn.HOURS ? 1 : 0;
            default ->
                column == header || column == TimeColumn.HOURS ? 0 : words.likeness(table, column, source.header());
        };
    }

    private static void technician(FileProfile file, Table table, List<Match> matches) {
        table.columns().stream()
                .filter(column -> column.header().equals(TimeColumn.TECHNICIAN.header()))
                .findFirst()
                .flatMap(column -> JoinedNames.of(file, column))
                .ifPresent(joined -> {
                    matches.removeIf(match -> match.column() == joined.column());
                    matches.add(joined);
                });
    }

    /** Returns the share of a column's cells that the other can take; an empty column tells nothing and may be any. */
    private double readable(Column column, ColumnProfile source) {
        Kind kind = column.cell().kind();
        if (source.filled() == 0) {
            return column.cell().need() != Need.REQUIRED ? 1 : 0;
        }
        if (column == LineColumn.LINE && !areKeys(source)) {
            return 0; // Lines have numbers or letters; what has names is what the line is for.
        }
        if (kind == Kind.WORD) {
            long known = source.texts().keySet().stream()
                    .filter(text -> words.meaning(column, text).isPresent())
                    .count();
            return known == 0
                    ? 0
                    : READABLE + (1 - READABLE) * known / source.texts().size();
        }
        return fits.computeIfAbsent(List.of(kind, source.header()), fresh -> source.fits(column));
    }

    private static boolean areKeys(ColumnProfile source) {
        long keys = source.texts().keySet().stream()
                .filter(text -> text.length() <= LONGEST_KEY || text.matches("\\D*\\d+\\D*"))
                .count();
        return keys >= MAY_BE * source.texts().size();
    }

    private static Match match(Pair pair) {
        String name = pair.name == 1 ? "the header says so" : "the header is close to it";
        String cells = pair.source.filled() == 0
                ? "all cells are empty"
                : Percent.of(pair.readable) + " of its cells can be read as " + kind(pair.column);
        return new Match(pair.column, pair.source, (0.45 + 0.5 * pair.name) * pair.readable, name + "; " + cells);
    }

    private static String kind(Column column) {
        return column.cell().kind() == Kind.WORD
                ? "its words"
                : column.cell().kind().expected();
    }

    /** Where the day of work has no column of its own, the stamp at which the stretch began tells it. */
    private static void stamp(FileProfile file, Table table, List<Match> matches) {
        boolean dated = matches.stream().anyMatch(match -> match.column() == TimeColumn.WORK_DATE);
        if (table == Table.TIME_LOG && !dated) {
            matches.stream()
                    .filter(match -> match.column() == TimeColumn.START)
                    .filter(match -> match.source().fits(TimeColumn.WORK_DATE) >= READABLE)
                    .findFirst()
                    .ifPresent(start -> matches.add(new Match(
                            TimeColumn.WORK_DATE,
                            start.source(),
                            start.confidence(),
                            "the stamp holds the day as well")));
        }
    }
}
