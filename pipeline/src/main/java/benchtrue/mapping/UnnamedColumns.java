package benchtrue.mapping;

import benchtrue.intake.ColumnProfile;
import benchtrue.intake.FileProfile;
import benchtrue.intake.columns.BookColumn;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.Made;
import benchtrue.intake.columns.TicketColumn;
import benchtrue.intake.columns.TimeColumn;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Columns that no name tells, found by what stands in them: where one column of a file alone can be it, it is taken, and where
 * several can, a person is asked.
 */
final class UnnamedColumns {
    private static final double CONFIDENCE = 0.55;
    private static final double READABLE = 0.95;
    private static final int FEWEST_ROWS = 8;
    private static final int MOST_PEOPLE = 30;
    private static final int ROWS_A_PERSON = 4;
    private static final double MOST_HOURS = 100;

    private final FileProfile file;
    private final List<Match> matches;

    /** Takes what names tell of a file. */
    UnnamedColumns(FileProfile file, List<Match> matches) {
        this.file = file;
        this.matches = new ArrayList<>(matches);
    }

    /** Returns the matches with what is found beside. */
    List<Match> found(List<Column> columns) {
        if (file.rows() >= FEWEST_ROWS) {
            find(columns, TimeColumn.WORK_DATE, source -> reads(source, TimeColumn.WORK_DATE));
            find(columns, TicketColumn.OPENED, source -> reads(source, TicketColumn.OPENED));
            boolean clocked = isTold(TimeColumn.START) && isTold(TimeColumn.END);
            if (!clocked) {
                find(columns, TimeColumn.HOURS, UnnamedColumns::areHours);
            }
            find(columns, LineColumn.QUOTED_HOURS, UnnamedColumns::areHours);
            find(columns, BookColumn.BOOK_HOURS, UnnamedColumns::areHours);
            find(columns, LineColumn.QUOTED_LABOUR, UnnamedColumns::areAmounts);
            find(columns, BookColumn.BOOK_LABOUR, UnnamedColumns::areAmounts);
            find(columns, TimeColumn.TECHNICIAN, this::arePeople);
            find(columns, LineColumn.REPAIR_TYPE, this::areRepairs);
        }
        return matches;
    }

    private boolean isTold(Column column) {
        return matches.stream().anyMatch(match -> match.column() == column);
    }

    private void find(List<Column> columns, Column column, Predicate<ColumnProfile> may) {
        if (!columns.contains(column) || isTold(column)) {
            return;
        }
        List<ColumnProfile> taken = matches.stream().map(Match::source).toList();
        List<ColumnProfile> candidates = file.columns().stream()
                .filter(source -> !taken.contains(source) && !Made.isMade(source.header()))
                .filter(source -> source.filled() > 0 && may.test(source))
                .toList();
        if (candidates.size() == 1) {
            matches.add(new Match(
                    column,
                    candidates.get(0),
                    CONFIDENCE,
                    "the header does not tell; no other column can be read as "
                            + column.cell().meaning()));
        }
    }

    private static boolean reads(ColumnProfile source, Column column) {
        return source.fits(column) >= READABLE;
    }

    /** Hours have parts or a unit, and a job takes less than some weeks of one bench. */
    private static boolean areHours(ColumnProfile source) {
        if (!reads(source, TimeColumn.HOURS) || !source.currencies().isEmpty()) {
            return false;
        }
        List<Double> hours = source.hours();
        boolean parts = hours.stream().anyMatch(hour -> hour != StrictMath.rint(hour));
        return parts && hours.get(hours.size() - 1) <= MOST_HOURS;
    }

    /** Amounts have a currency, or cents and more than a job's hours. */
    private static boolean areAmounts(ColumnProfile source) {
        List<Double> numbers = source.numbers();
        return reads(source, LineColumn.QUOTED_LABOUR)
                && (!source.currencies().isEmpty()
                        || !numbers.isEmpty()
                                && numbers.get(numbers.size() - 1) > MOST_HOURS
                                && source.texts().keySet().stream().anyMatch(text -> text.matches(".*[.,]\\d\\d\\D*")));
    }

    private static boolean areNames(ColumnProfile source) {
        return source.texts().keySet().stream().noneMatch(text -> text.chars().anyMatch(Character::isDigit));
    }

    private boolean arePeople(ColumnProfile source) {
        int people = source.texts().size();
        return areNames(source) && people <= MOST_PEOPLE && people * ROWS_A_PERSON <= source.filled() && isFull(source);
    }

    private boolean areRepairs(ColumnProfile source) {
        int repairs = source.texts().size();
        return repairs > 2
                && 2L * repairs <= source.filled()
                && isFull(source)
                && source.fits(TimeColumn.WORK_DATE) == 0
                && !areHours(source)
                && source.texts().keySet().stream().allMatch(text -> text.matches(".*\\p{L}{2}.*"));
    }

    private boolean isFull(ColumnProfile source) {
        return source.filled() >= READABLE * file.rows();
    }
}
