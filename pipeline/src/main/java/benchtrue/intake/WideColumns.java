package benchtrue.intake;

import benchtrue.intake.columns.Made;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.intake.columns.WideNames;
import benchtrue.intake.dialects.TotalWords;
import benchtrue.intake.dialects.WideHeader;
import benchtrue.settings.DateOrder;
import benchtrue.settings.UnpivotHeader;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The columns of a file that hold hours a cell, one a day or a person, as far as their headers and cells tell.
 *
 * @param header what their headers say
 * @param columns the columns
 * @param anchor the column, or the place, with the date from which the headers count
 * @param rest the file's other columns, with one for the headers and one for the cells
 */
public record WideColumns(
        UnpivotHeader header, List<ColumnProfile> columns, Optional<Anchor> anchor, FileProfile rest) {
    private static final double MOST = 0.8;
    private static final int FEWEST_DAYS = 4;
    private static final int FEWEST_DATES = 3;
    private static final int FEWEST_OF_MONTH = 20;
    private static final List<String> ENDS = List.of("end", "bis", "fin", "until", "last", "letzter", "tot", "al");
    private static final List<String> YEARS = List.of("jahr", "year", "annee", "ano", "anno", "jaar", "ar");
    private static final List<String> WEEKS =
            List.of("kw", "week", "woche", "cw", "wk", "semaine", "semana", "settimana");

    public WideColumns {
        columns = List.copyOf(columns);
    }

    /**
     * From where the headers count.
     *
     * @param name of the column, or what it is made from
     * @param key {@code after} or {@code before}
     * @param reason for a person
     */
    public record Anchor(String name, String key, String reason) {}

    /**
     * Looks for them.
     *
     * @param people names of technicians that other files know
     * @param familiar whether a header names a column of some table
     */
    public static Optional<WideColumns> of(FileProfile file, Set<String> people, Predicate<String> familiar) {
        for (UnpivotHeader kind : List.of(UnpivotHeader.DATE, UnpivotHeader.WEEKDAY, UnpivotHeader.DAY)) {
            List<ColumnProfile> columns = file.columns().stream()
                    .filter(column -> WideNames.isOf(kind, column.header()) && holdsHours(column))
                    .toList();
            if (columns.size() >= fewest(kind)) {
                return Optional.of(wide(file, kind, columns));
            }
        }
        List<ColumnProfile> named = file.columns().stream()
                .filter(column -> people.contains(column.header()) && holdsHours(column))
                .toList();
        List<ColumnProfile> columns = named.size() > 1 ? named : sparse(file, familiar);
        return columns.size() > 1 ? Optional.of(wide(file, UnpivotHeader.TEXT, columns)) : Optional.empty();
    }

    private static int fewest(UnpivotHeader kind) {
        return switch (kind) {
            case DAY -> FEWEST_OF_MONTH;
            case WEEKDAY -> FEWEST_DAYS;
            default -> FEWEST_DATES;
        };
    }

    private static boolean holdsHours(ColumnProfile column) {
        return column.filled() == 0
                || column.without(text -> text.matches("[-\u2013/ ]+")).fits(TimeColumn.HOURS) >= MOST;
    }

    /** Where every row has hours in one of several columns of which nobody knows the names, these are people. */
    private static List<ColumnProfile> sparse(FileProfile file, Predicate<String> familiar) {
        List<ColumnProfile> columns = file.columns().stream()
                .filter(column -> !familiar.test(column.header())
                        && !TotalWords.isPhrase(column.header())
                        && column.header().matches("\\p{L}[\\p{L}.' -]*")
                        && column.filled() > 0
                        && column.filled() < MOST * file.rows()
                        && holdsHours(column))
                .toList();
        long filled = columns.stream().mapToLong(ColumnProfile::filled).sum();
        boolean oneEach = filled >= MOST * file.rows() && filled <= 2 * file.rows();
        boolean dated = file.columns().stream().anyMatch(column -> column.fits(TimeColumn.WORK_DATE) >= MOST);
        return oneEach && dated ? columns : List.of();
    }

    private static WideColumns wide(FileProfile file, UnpivotHeader kind, List<ColumnProfile> columns) {
        List<ColumnProfile> rest = new ArrayList<>(file.columns());
        rest.removeAll(columns);
        Optional<Anchor> anchor = kind == UnpivotHeader.TEXT || dated(kind, columns)
                ? Optional.empty()
                : anchor(file, kind, rest, columns);
        ColumnProfile cells = columns.stream().reduce(ColumnProfile::with).orElseThrow();
        rest.add(new ColumnProfile(Made.COLUMN, Optional.empty(), cells.filled(), ColumnProfile.names(columns)));
        rest.add(new ColumnProfile(Made.CELL, Optional.empty(), cells.filled(), cells.texts()));
        return new WideColumns(
                kind,
                columns,
                anchor,
                new FileProfile(
                        file.name(),
                        file.table(),
                        rest,
                        file.rows(),
                        file.refusal(),
                        file.sheet(),
                        file.title(),
                        file.headings()));
    }

    private static boolean dated(UnpivotHeader kind, List<ColumnProfile> columns) {
        return kind == UnpivotHeader.DATE
                && columns.stream().allMatch(column -> day(column.header()).isPresent());
    }

    /** Returns whether a text without a year names a month. */
    public static boolean isMonth(String text) {
        return day(text + " 2000").isPresent();
    }

    private static Optional<LocalDate> day(String text) {
        return WideHeader.anchor(text, () -> DateOrder.DAY_MONTH_YEAR)
                .or(() -> WideHeader.anchor(text, () -> DateOrder.MONTH_DAY_YEAR));
    }

    /** Returns the weekdays of a column's dates, in the order of day and month in which they are the fewest. */
    private static List<DayOfWeek> weekdays(ColumnProfile column) {
        return Stream.of(DateOrder.DAY_MONTH_YEAR, DateOrder.MONTH_DAY_YEAR)
                .map(order -> column.texts().keySet().stream()
                        .map(text -> WideHeader.anchor(text, () -> order))
                        .flatMap(Optional::stream)
                        .map(LocalDate::getDayOfWeek)
                        .distinct()
                        .toList())
                .filter(days -> !days.isEmpty())
                .min(Comparator.comparingInt(List::size))
                .orElse(List.of());
    }

    private static Optional<Anchor> anchor(
            FileProfile file, UnpivotHeader kind, List<ColumnProfile> rest, List<ColumnProfile> columns) {
        for (ColumnProfile column : rest) {
            if (column.filled() > 0
                    && column.texts().keySet().stream()
                                    .filter(text -> day(text).isPresent())
                                    .count()
                            >= MOST * column.texts().size()) {
                return Optional.of(counted(kind, column, columns));
            }
        }
        Optional<String> year = rest.stream()
                .map(ColumnProfile::header)
                .filter(name -> says(name, YEARS))
                .findFirst();
        Optional<String> week = rest.stream()
                .map(ColumnProfile::header)
                .filter(name -> says(name, WEEKS))
                .findFirst();
        Optional<String> month = rest.stream()
                .map(ColumnProfile::header)
                .filter(name -> says(name, List.of("monat", "month", "mois", "mes", "mese", "maand")))
                .findFirst();
        String sheetOrFile = file.sheet().flatMap(WideColumns::year).isPresent() ? Made.SHEET : Made.FILE;
        String from = year.map(name -> "{" + name + "}").orElse("{" + sheetOrFile + "}");
        if (kind != UnpivotHeader.DAY && week.isPresent()) {
            return Optional.of(new Anchor(from + " KW {" + week.get() + "}", "after", "year and week"));
        }
        if (kind == UnpivotHeader.DAY && month.isPresent()) {
            boolean named = rest.stream()
                    .filter(column -> column.header().equals(month.get()))
                    .anyMatch(column -> column.texts().keySet().stream().anyMatch(text -> text.matches("\\d+")));
            return Optional.of(new Anchor(
                    named ? from + "-{" + month.get() + "}" : from + " {" + month.get() + "}",
                    "after",
                    "year and month"));
        }
        return placed(file);
    }

    private static Optional<String> year(String text) {
        return text.matches(".*(?<!\\d)20\\d\\d(?!\\d).*") ? Optional.of(text) : Optional.empty();
    }

    /** The sheet, the title or the file may name the week or the month. */
    private static Optional<Anchor> placed(FileProfile file) {
        String name = file.name().substring(file.name().indexOf('/') + 1).replaceAll("\\.[^.]*$", "");
        if (file.sheet().flatMap(WideColumns::day).isPresent()) {
            return Optional.of(new Anchor(Made.SHEET, "after", "the sheet's name"));
        }
        if (day(file.title()).isPresent()) {
            return Optional.of(new Anchor(Made.TITLE, "after", "what stands above the columns"));
        }
        if (day(name).isPresent()) {
            return Optional.of(new Anchor(Made.FILE, "after", "the file's name"));
        }
        return file.sheet().isPresent() && day(file.sheet().get() + " " + name).isPresent()
                ? Optional.of(new Anchor(
                        "{" + Made.SHEET + "} {" + Made.FILE + "}", "after", "the sheet's and the file's names"))
                : Optional.empty();
    }

    private static boolean says(String name, List<String> words) {
        return words.contains(name.strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}].*", ""));
    }

    /** A week is named by its first day or its last: by the words of the header, else by which day all of them are. */
    private static Anchor counted(UnpivotHeader kind, ColumnProfile column, List<ColumnProfile> columns) {
        String plain = " " + column.header().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]+", " ") + " ";
        boolean ends = ENDS.stream().anyMatch(word -> plain.contains(" " + word));
        if (kind == UnpivotHeader.WEEKDAY) {
            List<DayOfWeek> days = weekdays(column);
            DayOfWeek first = WideNames.weekday(columns.get(0).header()).orElseThrow();
            if (days.size() == 1 && (ends || days.get(0) != first && days.get(0).compareTo(DayOfWeek.FRIDAY) >= 0)) {
                return new Anchor(
                        column.header(),
                        "before",
                        "all its days are a " + days.get(0).toString().toLowerCase(Locale.ROOT));
            }
        }
        return new Anchor(
                column.header(), kind == UnpivotHeader.WEEKDAY && ends ? "before" : "after", "it holds dates");
    }
}
