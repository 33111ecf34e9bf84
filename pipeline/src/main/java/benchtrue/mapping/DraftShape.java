package benchtrue.mapping;

import benchtrue.format.TomlText;
import benchtrue.format.Words;
import benchtrue.intake.ColumnProfile;
import benchtrue.intake.WideColumns;
import benchtrue.intake.columns.Made;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.settings.UnpivotHeader;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The lines of a drafted rule that say how the rows of its files lie. */
final class DraftShape {
    /** Columns emptier than this are written once above their rows. */
    private static final double MOSTLY = 0.7;

    private static final double LEAST_EMPTY = 0.05;
    private static final int FEWEST = 3;

    private final Guess guess;
    private final List<String> lines;
    private final BiConsumer<String, String> ask;

    /**
     * Takes what the lines go to.
     *
     * @param lines of the rule
     * @param ask takes a question and the line that answers it
     */
    DraftShape(Guess guess, List<String> lines, BiConsumer<String, String> ask) {
        this.guess = guess;
        this.lines = lines;
        this.ask = ask;
    }

    /** Cells that were merged, or written once above their rows, hold for the rows below. */
    void fillDown() {
        boolean merged = needed().anyMatch(this::standsOnce);
        List<String> headers = needed().filter(
                        source -> merged && source.filled() < guess.file().rows())
                .map(ColumnProfile::header)
                .distinct()
                .map(TomlText::quoted)
                .toList();
        if (!headers.isEmpty()) {
            lines.add("fill_down = [" + String.join(", ", headers)
                    + "]  # many of its cells are empty: each holds for the rows below");
        }
    }

    /** A day with several rows is met twice where it stands on each; where none is, empty cells are those of its other rows. */
    private boolean standsOnce(ColumnProfile source) {
        long empty = guess.file().rows() - source.filled();
        boolean never = source.isUnique()
                && source.filled() > FEWEST
                && empty >= LEAST_EMPTY * guess.file().rows();
        return source.filled() < MOSTLY * guess.file().rows() || never && empty >= FEWEST;
    }

    private Stream<ColumnProfile> needed() {
        return guess.matches().stream()
                .filter(match -> match.isSure() && match.column().cell().need() == Need.REQUIRED)
                .map(Match::source)
                .filter(source -> !Made.isMade(source.header()) && source.filled() > 0);
    }

    /** Adds the sections behind the columns. */
    void sections() {
        List<Match> parts = guess.matches().stream()
                .filter(match -> match.isSure() && !match.pattern().isEmpty())
                .toList();
        if (!parts.isEmpty()) {
            lines.add("[files.patterns]");
            parts.forEach(match -> lines.add(match.column().header() + " = " + TomlText.quoted(match.pattern())
                    + "  # what the tickets look like"
                    + (match.column() == TimeColumn.TICKET ? "; a text without a figure is time for the shop" : "")));
        }
        guess.wide().ifPresent(this::unpivot);
    }

    private void unpivot(WideColumns wide) {
        lines.add("[files.unpivot]");
        lines.add("header = " + TomlText.quoted(Words.of(wide.header())) + "  # "
                + wide.columns().size()
                + " columns hold one entry a cell: \"(column)\" is the header, \"(cell)\" the cell");
        if (wide.header() == UnpivotHeader.TEXT) {
            lines.add("columns = ["
                    + wide.columns().stream()
                            .map(column -> TomlText.quoted(column.header()))
                            .collect(Collectors.joining(", "))
                    + "]");
        }
        wide.anchor()
                .ifPresent(anchor ->
                        lines.add(anchor.key() + " = " + TomlText.quoted(anchor.name()) + "  # " + anchor.reason()));
        if (wide.anchor().isEmpty() && (wide.header() == UnpivotHeader.DAY || wide.header() == UnpivotHeader.WEEKDAY)) {
            ask.accept(
                    "which column names the week or month that the headers \""
                            + wide.columns().get(0).header() + "\" to \""
                            + wide.columns().get(wide.columns().size() - 1).header() + "\" belong to?",
                    "after = \"its header\"");
        }
    }
}
