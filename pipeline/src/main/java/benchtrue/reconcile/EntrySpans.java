package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.settings.EntrySpan;
import benchtrue.settings.FileRule;
import benchtrue.settings.Settings;
import benchtrue.shop.Notice;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Which files of the time log hold sums over weeks or months, and over which days each entry is spread. */
final class EntrySpans {
    private final TableRows rows;
    private final EntrySpan[] ofFile;

    EntrySpans(TableRows rows, Settings settings) {
        this.rows = rows;
        ofFile = rows.files().stream()
                .map(file -> span(file.name().substring(file.name().indexOf('/') + 1), settings.files()))
                .toArray(EntrySpan[]::new);
    }

    private static EntrySpan span(String file, List<FileRule> rules) {
        return rules.stream()
                .filter(rule -> rule.table().equals(Table.TIME_LOG.title()) && rule.fits(file))
                .flatMap(rule -> rule.span().stream())
                .findFirst()
                .orElse(EntrySpan.DAY);
    }

    private EntrySpan span(int row) {
        return ofFile.length == 0 ? EntrySpan.DAY : ofFile[rows.file(row)];
    }

    /** Returns the most seconds that an entry can have. */
    long most(int row) {
        return span(row).days() * EntryHours.DAY;
    }

    /**
     * Returns the days over which an entry is spread, first first: the working days of its week or month up to the as-of date, all
     * of its days where they do not hold it, and its own day alone where no others are there.
     */
    int[] days(int row, long seconds, int asOf) {
        int own = rows.day(TimeColumn.WORK_DATE, row);
        if (span(row) == EntrySpan.DAY) {
            return new int[] {own};
        }
        LocalDate day = LocalDate.ofEpochDay(own);
        LocalDate first =
                span(row) == EntrySpan.WEEK ? day.minusDays(day.getDayOfWeek().ordinal()) : day.withDayOfMonth(1);
        LocalDate end = span(row) == EntrySpan.WEEK ? first.plusDays(7) : first.plusMonths(1);
        int[] all = IntStream.range(0, (int) ChronoUnit.DAYS.between(first, end))
                .map(ahead -> (int) first.toEpochDay() + ahead)
                .filter(one -> one <= asOf)
                .toArray();
        int[] working = Arrays.stream(all)
                .filter(one -> LocalDate.ofEpochDay(one).getDayOfWeek().compareTo(DayOfWeek.FRIDAY) <= 0)
                .toArray();
        if (working.length > 0 && Math.abs(seconds) <= working.length * EntryHours.DAY) {
            return working;
        }
        return all.length > 0 ? all : new int[] {own};
    }

    /** Returns what to tell of entries that were spread. */
    List<Notice> notices(long spread) {
        return spread == 0
                ? List.of()
                : List.of(new Notice(
                        "entries-are-sums",
                        "Entries that are sums over a week or a month, as shop.toml says: each is spread evenly over its working"
                                + " days, so that the day of its work is not known.",
                        spread,
                        List.of()));
    }
}
