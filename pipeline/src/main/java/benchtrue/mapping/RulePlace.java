package benchtrue.mapping;

import benchtrue.format.TomlText;
import benchtrue.intake.FileProfile;
import benchtrue.intake.WideColumns;
import benchtrue.intake.columns.BookColumn;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Made;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TimeColumn;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which files and sheets a drafted rule is for. */
final class RulePlace {
    private static final Pattern YEAR = Pattern.compile("(?<!\\d)(20\\d\\d)(?!\\d)");
    private static final int MANY = 3;
    private static final int MOST_NAMES = 30;

    private final Guess guess;
    private final List<FileProfile> alike;
    private final List<FileProfile> files;

    /**
     * Takes what there is.
     *
     * @param alike files and sheets of the rule
     * @param files all files and sheets
     */
    RulePlace(Guess guess, List<FileProfile> alike, List<FileProfile> files) {
        this.guess = guess;
        this.alike = alike;
        this.files = files;
    }

    /** Returns patterns of the files' names, of which each needs a rule. */
    List<String> patterns() {
        List<String> names = alike.stream().map(FileProfile::file).distinct().toList();
        List<String> others = files.stream()
                .map(FileProfile::file)
                .filter(name -> !names.contains(name))
                .toList();
        return isListedBook() ? names : FilePattern.of(names, others);
    }

    /** Returns how the files write their dates. */
    WrittenOrder written() {
        return new WrittenOrder(guess, alike);
    }

    private boolean isListedBook() {
        return guess.table() == Table.PRICE_BOOK && alike.get(0).name().startsWith("exports/");
    }

    /** Returns the lines that name the sheets, none where the files have one. */
    List<String> sheets(String pattern) {
        List<String> mine = alike.stream()
                .filter(file ->
                        FilePattern.fits(pattern, file.file()) && file.sheet().isPresent())
                .map(file -> file.sheet().get())
                .distinct()
                .toList();
        if (mine.isEmpty()) {
            return List.of();
        }
        String sheet = mine.size() == 1
                ? TomlText.quoted(mine.get(0))
                : mine.size() >= MANY
                        ? "\"*\"  # every sheet with these columns: " + String.join(", ", mine)
                        : "["
                                + String.join(
                                        ", ",
                                        mine.stream().map(TomlText::quoted).toList()) + "]";
        return List.of("sheet = " + sheet);
    }

    /** Returns where the technician or the family stands that no column says: a sheet or a heading for each. */
    Optional<String> named(Column column) {
        if (column != TimeColumn.TECHNICIAN && column != BookColumn.FAMILY) {
            return Optional.empty();
        }
        List<String> sheets =
                alike.stream().flatMap(file -> file.sheet().stream()).distinct().toList();
        boolean people =
                sheets.size() > 1 && sheets.stream().allMatch(name -> name.matches("[^\\d]+")) && !areMonths(sheets);
        if (people && column == TimeColumn.TECHNICIAN) {
            return Optional.of(Made.SHEET);
        }
        List<String> headings = alike.get(0).headings();
        boolean named = headings.size() > 1 && headings.size() <= MOST_NAMES && !areMonths(headings);
        return named ? Optional.of(Made.HEADING) : Optional.empty();
    }

    /** A name may begin like a month's, but not half of them. */
    private static boolean areMonths(List<String> texts) {
        return 2 * texts.stream().filter(WideColumns::isMonth).count() >= texts.size();
    }

    /**
     * Returns from which day a price list among the exports holds, to be asked; none for other tables.
     *
     * @param first first day that stands in the shop's files
     */
    List<LocalDate> effective(String pattern, LocalDate first) {
        List<LocalDate> days = new ArrayList<>();
        if (isListedBook()) {
            Matcher year = YEAR.matcher(pattern);
            days.add(year.find() ? LocalDate.of(Integer.parseInt(year.group(1)), 1, 1) : first);
        }
        return days;
    }
}
