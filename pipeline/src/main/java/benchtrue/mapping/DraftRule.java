package benchtrue.mapping;

import benchtrue.format.TomlText;
import benchtrue.format.Words;
import benchtrue.intake.ColumnProfile;
import benchtrue.intake.columns.BookColumn;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.Made;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.OverheadColumn;
import benchtrue.intake.columns.PartColumn;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TicketColumn;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.intake.columns.WageColumn;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Collectors;

/** The text of one {@code [[files]]} rule, with what speaks for each line of it behind. */
final class DraftRule {
    /** More words than these in one column are keys or free text, and asking for each would help nobody. */
    private static final int MOST_QUESTIONS = 40;

    private static final double FITS = 0.9;
    private static final int MOST_CANDIDATES = 4;

    /** What holds for all rows until somebody says better; an empty text is the first day of the files. */
    private static final Map<Column, String> DEFAULTS = Map.of(
            BookColumn.FAMILY, "repairs",
            TimeColumn.TECHNICIAN, "the bench",
            WageColumn.EFFECTIVE_FROM, "",
            OverheadColumn.ACCOUNT, "overhead",
            PartColumn.PART, "part",
            PartColumn.QUANTITY, "1");

    private final Guess guess;
    private final ValueWords words;
    private final List<String> lines = new ArrayList<>();
    private final List<String> questions = new ArrayList<>();
    private final DraftShape shape;

    DraftRule(Guess guess, ValueWords words) {
        this.guess = guess;
        this.words = words;
        shape = new DraftShape(guess, lines, this::ask);
    }

    /** Returns whether a column can do with one text for all rows where no column of a file says it. */
    static boolean hasDefault(Column column) {
        return DEFAULTS.containsKey(column);
    }

    /** Returns what a person must still say, one sentence each. */
    List<String> questions() {
        return List.copyOf(questions);
    }

    /**
     * Returns the lines of the rule.
     *
     * @param pattern of the files' names
     * @param place the files and sheets that it is for
     * @param firstDay first day that stands in the shop's files
     */
    List<String> lines(String pattern, RulePlace place, LocalDate firstDay) {
        lines.add("[[files]]");
        lines.add("name = " + TomlText.quoted(pattern));
        lines.add("table = " + TomlText.quoted(guess.table().title()) + "  # one row is "
                + guess.table().oneRow());
        lines.addAll(place.sheets(pattern));
        place.effective(pattern, firstDay).forEach(this::effective);
        shape.fillDown();
        UnitOfHours.of(guess).ifPresent(this::hours);
        dates(place.written());
        SpanOfEntries.of(guess).ifPresent(this::span);
        columns();
        missing(place);
        derived();
        sections(place, firstDay);
        guess.matches().stream().filter(Match::isSure).forEach(this::words);
        boolean isUsable = stillMissing().isEmpty() || guess.table().need() == Need.REQUIRED;
        return isUsable ? List.copyOf(lines) : leftOut();
    }

    /** A table that a night can do without is not read where it lacks what its rows need: it would stop the run. */
    private List<String> leftOut() {
        List<String> said = new ArrayList<>();
        said.add("# Left out, since its rows lack what is asked below; take the # away where it is answered.");
        lines.forEach(line -> said.add(line.startsWith("#") ? line : "# " + line));
        return said;
    }

    private void effective(LocalDate day) {
        ask(
                "from which day does this price list hold?",
                "it holds for all that stands in the files, as drafted, or from another day");
        lines.add("effective = \"" + day + "\"");
    }

    /** Returns needed columns that neither the file nor a default says. */
    private List<Column> stillMissing() {
        return guess.missing().stream()
                .filter(column -> DEFAULTS.get(column) == null && copied(column).isEmpty())
                .toList();
    }

    /** A price list with one name a repair has no other. */
    private Optional<Match> copied(Column column) {
        Column other = column == BookColumn.TITLE ? BookColumn.REPAIR_TYPE : BookColumn.TITLE;
        return column == BookColumn.TITLE || column == BookColumn.REPAIR_TYPE
                ? guess.matches().stream()
                        .filter(match -> match.column() == other && match.isSure())
                        .findFirst()
                : Optional.empty();
    }

    private void sections(RulePlace place, LocalDate firstDay) {
        List<Column> told = guess.missing().stream()
                .filter(column ->
                        DEFAULTS.get(column) != null && place.named(column).isEmpty())
                .toList();
        if (!told.isEmpty()) {
            lines.add("[files.constants]");
            told.forEach(column -> lines.add(column.header() + " = "
                    + TomlText.quoted(DEFAULTS.get(column).isEmpty() ? firstDay.toString() : DEFAULTS.get(column))));
        }
        shape.sections();
    }

    private void hours(UnitOfHours unit) {
        lines.add(
                "hours = " + TomlText.quoted(Words.of(unit.unit())) + "  # " + unit.percent() + " %: " + unit.reason());
        unit.asked()
                .ifPresent(readings -> ask(
                        "what stands behind the sign of its hours? " + readings + ".",
                        "hours = \"hours\"  # in place of the line above, where it is hundredths"));
    }

    /** Entries of more than a day that are no few are sums over longer. */
    private void span(SpanOfEntries entries) {
        String span = Words.of(entries.span());
        entries.asked()
                .ifPresent(many ->
                        ask(many + ": is an entry the sum of a " + span + "?", "if not: take the next two lines out"));
        lines.add("[files.entries]");
        lines.add("span = " + TomlText.quoted(span) + "  # " + entries.reason());
    }

    private void dates(WrittenOrder written) {
        if (written.isOpen() && written.isAsked()) {
            ask("which comes first in its dates, day or month?", "dates = \"day-month-year\"  # or month-day-year");
        } else if (written.isOpen()) {
            lines.add("dates = " + TomlText.quoted(Words.of(written.order()))
                    + "  # some of these files alone leave it open, the others tell");
        }
    }

    private void ask(String question, String line) {
        questions.add(guess.file().shown() + ": " + question);
        lines.add("# ASKED: " + question);
        lines.add("# " + line);
    }

    private void columns() {
        lines.add("[files.columns]");
        for (Match match : guess.matches()) {
            String line = match.column().header() + " = "
                    + TomlText.quoted(match.source().header()) + "  # " + match.percent() + " %: " + match.reason();
            lines.add(match.isSure() ? line : "# " + line);
        }
        List<ColumnProfile> unused = guess.unused();
        if (!unused.isEmpty()) {
            lines.add("# not read: "
                    + unused.stream()
                            .map(source -> TomlText.quoted(source.header()))
                            .collect(Collectors.joining(", ")));
        }
    }

    private void missing(RulePlace place) {
        for (Column column : guess.missing()) {
            Optional<Match> copied = copied(column);
            if (place.named(column).isPresent()) {
                lines.add(column.header() + " = "
                        + TomlText.quoted(place.named(column).get()) + "  # no column says "
                        + column.cell().meaning() + "; the sheets or headings name them");
            } else if (copied.isPresent()) {
                lines.add(column.header() + " = "
                        + TomlText.quoted(copied.get().source().header()) + "  # no other column says "
                        + column.cell().meaning());
            } else {
                String question = "which column says " + column.cell().meaning() + "?" + candidates(column);
                ask(
                        question,
                        column.header() + " = \"its header\""
                                + (DEFAULTS.get(column) == null
                                        ? "  # or, where one answer holds for all rows, in [files.constants]"
                                        : "  # then without the constant below"));
            }
        }
        boolean timed =
                guess.matches().stream().anyMatch(match -> match.isSure() && match.column() == LineColumn.QUOTED_HOURS);
        if (guess.table() == Table.QUOTED_LINES && !timed) {
            askForUnread(LineColumn.QUOTED_HOURS, "which column says hours quoted?");
        }
        if (guess.table() == Table.TIME_LOG && !hasHours()) {
            ask("which column says how long, or when it began and ended?", "hours = \"its header\"");
        }
    }

    /** Says what is worked out where no column tells it. */
    private void derived() {
        for (Column column : guess.derived()) {
            lines.add("# no column says " + column.cell().meaning() + ": "
                    + switch (column.header()) {
                        case "line" -> "lines are numbered within the ticket";
                        case "opened" -> "the day of the first quote counts, else of the first work";
                        default -> "all count as one class";
                    });
        }
        boolean ends = guess.matches().stream()
                .filter(Match::isSure)
                .anyMatch(match -> match.column() == TicketColumn.CLOSED
                        || match.column() == TicketColumn.FINISHED
                        || match.column() == TicketColumn.STATUS);
        if (guess.table() == Table.TICKETS && !ends) {
            askForUnread(TicketColumn.CLOSED, "which column says when a ticket was closed?");
            lines.add(
                    "# no column says when a ticket was finished: it counts as finished after a long silence in the time log");
        }
    }

    /** Tells the columns not read that could be meant by what stands in them; by place, since a header may be anything. */
    private String candidates(Column column) {
        List<String> near = guess.unused().stream()
                .filter(source -> source.filled() > 0 && !Made.isMade(source.header()) && source.fits(column) >= FITS)
                .map(source -> "column " + (1 + guess.file().columns().indexOf(source)))
                .limit(MOST_CANDIDATES)
                .toList();
        return near.isEmpty() ? "" : " It may be " + String.join(" or ", near) + " from the left.";
    }

    /** Asks for a column that a file may do without, where one that is not read could be meant. */
    private void askForUnread(Column column, String question) {
        String candidates = candidates(column);
        if (!candidates.isEmpty()) {
            ask(question + candidates, column.header() + " = \"its header\"");
        }
    }

    private boolean hasHours() {
        List<String> found = guess.matches().stream()
                .filter(Match::isSure)
                .map(match -> match.column().header())
                .toList();
        return found.contains("hours") || found.containsAll(List.of("start", "end"));
    }

    private void words(Match match) {
        SortedMap<String, Optional<String>> told = words.of(match);
        if (told.isEmpty()
                || told.size() > MOST_QUESTIONS && told.values().stream().allMatch(Optional::isEmpty)) {
            return;
        }
        Column column = match.column();
        lines.add("[files.values." + column.header() + "]");
        String choice = "one of " + String.join(", ", column.cell().words());
        for (Map.Entry<String, Optional<String>> word : told.entrySet()) {
            if (word.getValue().isPresent()) {
                lines.add(TomlText.quoted(word.getKey()) + " = "
                        + TomlText.quoted(word.getValue().get()));
            } else {
                long rows = match.source().texts().get(word.getKey());
                ask(
                        "what does " + TomlText.quoted(word.getKey()) + " in "
                                + TomlText.quoted(match.source().header()) + " mean (" + rows
                                + (rows == 1 ? " row)?" : " rows)?"),
                        TomlText.quoted(word.getKey()) + " = \"" + choice + "\"");
            }
        }
    }
}
