package benchtrue.intake;

import benchtrue.format.Spelling;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.MappedTable;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.Table;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Notice;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds the files of a shop folder and the table of each, older exports first. */
final class Inbox {
    private static final Comparator<ExportFile> OLDER_FIRST = Comparator.comparing(ExportFile::table)
            .thenComparingInt(ExportFile::day)
            .thenComparing(ExportFile::name, Inbox::numbersAsNumbers);

    /** Where price books stand, as their names begin. */
    static final String BOOKS = "price-book/";

    private static final Pattern DIGITS = Pattern.compile("\\d+");

    private final Path shop;
    private final List<ExportFile> files = new ArrayList<>();
    private final List<String> unread = new ArrayList<>();
    private final List<String> left = new ArrayList<>();

    private final Rules rules;

    private Inbox(Path shop, Rules rules) {
        this.shop = shop;
        this.rules = rules;
    }

    /**
     * Lists the files of a shop folder.
     *
     * @param settings with the owner's rules for files; one that fits decides what a file is
     */
    static Inbox find(Path shop, Settings settings) {
        if (!Files.isDirectory(shop)) {
            throw missing(shop + ": found no such folder, expected the shop's folder. Name it with --shop.");
        }
        Inbox inbox = new Inbox(shop, new Rules(settings));
        inbox.list("exports", "the files that the shop's systems exported").forEach(inbox::export);
        for (Table table : List.of(Table.PRICE_BOOK, Table.SURCHARGES)) {
            if (Files.isDirectory(shop.resolve(table.title()))) {
                inbox.visible(table.title()).forEach(path -> inbox.version(table, path));
            }
        }
        inbox.requireOneBookADay();
        inbox.requireNeeded();
        inbox.rules.requireUsed(inbox.unread);
        inbox.files.sort(OLDER_FIRST);
        return inbox;
    }

    List<ExportFile> files(Table table) {
        return files.stream().filter(file -> file.table() == table).toList();
    }

    List<Notice> notices() {
        List<Notice> notices = new ArrayList<>(rules.notices());
        if (!unread.isEmpty()) {
            notices.add(new Notice(
                    "unread-file",
                    "Not read, because the name begins with no table's name and no rule of shop.toml fits it: draft a rule"
                            + " with benchtrue map, rename the file, or take it out of the inbox.",
                    unread.size(),
                    unread.subList(0, Math.min(5, unread.size()))));
        }
        if (!left.isEmpty()) {
            notices.add(new Notice(
                    "unread-sheet",
                    "Sheets of a workbook that no rule of shop.toml reads: where one holds a table, draft a rule with"
                            + " benchtrue map.",
                    left.size(),
                    left.subList(0, Math.min(5, left.size()))));
        }
        return notices;
    }

    private List<Path> list(String folder, String expected) {
        Path there = shop.resolve(folder);
        if (!Files.isDirectory(there)) {
            throw missing(there + ": found no such folder, expected " + expected + ". Make it and put them there.");
        }
        List<Path> paths = visible(folder);
        if (paths.isEmpty()) {
            throw missing(there + ": found an empty folder, expected " + expected + ". Put them there.");
        }
        return paths;
    }

    private List<Path> visible(String folder) {
        Path there = shop.resolve(folder);
        try (Stream<Path> found = Files.list(there)) {
            return found.filter(Inbox::isVisible).sorted().toList();
        } catch (IOException | UncheckedIOException failed) {
            throw new Refusal(ExitCode.READ_FAILED, there + ": can't be listed: " + failed.getMessage(), failed);
        }
    }

    static boolean isVisible(Path path) {
        String name = path.getFileName().toString();
        return !name.startsWith(".") && !name.startsWith("~$");
    }

    private void export(Path path) {
        String file = path.getFileName().toString();
        String lower = file.toLowerCase(Locale.ROOT);
        List<MappedTable> found = rules.of("exports", file);
        if (found.isEmpty() && isTable(lower)) {
            found = table(lower).map(rules::plain).stream().toList();
        }
        if (found.isEmpty()) {
            unread.add("exports/" + file);
            return;
        }
        requireInside(path, "exports/" + file);
        FindSheets sheets = FindSheets.of(path, "exports/" + file, found);
        files.addAll(sheets.found());
        left.addAll(sheets.left());
    }

    private static boolean isTable(String file) {
        return file.endsWith(".csv") || file.endsWith(".tsv") || file.endsWith(".txt") || file.endsWith(".xlsx");
    }

    /** Returns the table with the longest name that a file's name begins with. */
    static Optional<Table> table(String file) {
        return Stream.of(Table.values())
                .filter(table -> file.startsWith(table.title()))
                .filter(table ->
                        !Character.isLetter(file.charAt(Math.min(table.title().length(), file.length() - 1))))
                .max(Comparator.comparingInt(table -> table.title().length()));
    }

    /** A book that the program wrote is read as it is, also where the name of a rule for others fits it. */
    private void version(Table table, Path path) {
        String file = path.getFileName().toString();
        String name = table.title() + "/" + file;
        List<MappedTable> fitting = rules.of(table.title(), file);
        Optional<MappedTable> rule = fitting.stream()
                .filter(found -> found.table() == table)
                .findFirst()
                .or(() -> fitting.stream().findFirst())
                .filter(found -> !(found.mapping().renames() && ForeignBook.OwnBook.is(path)));
        rule.filter(found -> found.table() != table).ifPresent(found -> {
            throw new Refusal(
                    ExitCode.SETTINGS,
                    name + ": found a rule of shop.toml that makes it "
                            + found.table().title() + ", expected " + table.title()
                            + ". Move the file to exports, or correct the rule.");
        });
        if (rule.isEmpty() && !isTable(file.toLowerCase(Locale.ROOT))) {
            unread.add(name);
            return;
        }
        requireInside(path, name);
        Mapping mapping = rule.orElse(rules.plain(table)).mapping();
        Optional<String> sheet =
                mapping.rule().flatMap(said -> said.shape().sheets().stream().findFirst());
        files.add(new ExportFile(path, name, sheet, table, effective(name, file), mapping, List.of()));
    }

    private static int effective(String name, String file) {
        int point = file.lastIndexOf('.');
        try {
            return (int)
                    LocalDate.parse(point < 0 ? file : file.substring(0, point)).toEpochDay();
        } catch (DateTimeParseException noDate) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    name + ": found a name that is no date, expected the day the version takes effect,"
                            + " such as 2026-01-01.csv. Rename the file.");
        }
    }

    private void requireInside(Path path, String name) {
        try {
            if (!path.toRealPath().startsWith(path.getParent().toRealPath())) {
                throw new Refusal(
                        ExitCode.UNUSABLE_FILE,
                        name
                                + ": found a link to a place outside the folder, expected a file. Copy the file itself there.");
            }
        } catch (IOException broken) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE, name + ": found a link that leads nowhere, expected a file.", broken);
        }
        if (!Files.isRegularFile(path)) {
            throw new Refusal(ExitCode.UNUSABLE_FILE, name + ": found something that is no file, expected a file.");
        }
    }

    private void requireOneBookADay() {
        Map<String, String> known = new HashMap<>();
        for (ExportFile file : files) {
            String earlier = file.table().versioned() && file.isBook()
                    ? known.put(file.table().title() + "/" + file.day(), file.name())
                    : null;
            if (earlier != null) {
                throw new Refusal(
                        ExitCode.UNUSABLE_FILE,
                        earlier + " and " + file.name() + ": found two price books for "
                                + LocalDate.ofEpochDay(file.day())
                                + ", expected one. Take the one that does not hold out of the folder.");
            }
        }
    }

    private void requireNeeded() {
        for (Table table : Table.values()) {
            if (files(table).isEmpty() && (table.need() == Need.REQUIRED || mayBeUnread(table))) {
                String folder = table == Table.PRICE_BOOK ? BOOKS : "exports";
                String near = Spelling.mistyped(table.title() + ".csv", unreadNames())
                        .map(name -> " The nearest name there is \"" + name + "\": rename it.")
                        .orElse(
                                unread.isEmpty()
                                        ? " Export it and put it there."
                                        : " Export it and put it there, or draft rules for the files that are there with"
                                                + " benchtrue map.");
                throw missing(shop.resolve(folder) + ": found no file of the table " + table.title()
                        + ", expected one whose name begins with it, such as " + example(table) + "." + near);
            }
        }
    }

    /** A price book that nobody reads, and tickets that nobody reads, are no shop without them. */
    private boolean mayBeUnread(Table table) {
        return table.need() == Need.DERIVED
                && unread.stream()
                        .anyMatch(name -> table == Table.PRICE_BOOK
                                ? name.startsWith(BOOKS)
                                : Spelling.mistyped(table.title() + ".csv", unreadNames())
                                        .isPresent());
    }

    private static String example(Table table) {
        return table == Table.PRICE_BOOK ? "2026-01-01.csv" : table.title() + "-2026-10.csv";
    }

    private List<String> unreadNames() {
        return unread.stream()
                .map(name -> name.substring(name.indexOf('/') + 1))
                .toList();
    }

    private static Refusal missing(String message) {
        return new Refusal(ExitCode.MISSING, message);
    }

    /** Compares names so that {@code log (10)} comes after {@code log (9)}. */
    private static int numbersAsNumbers(String left, String right) {
        return padded(left).compareTo(padded(right)) != 0
                ? padded(left).compareTo(padded(right))
                : left.compareTo(right);
    }

    private static String padded(String name) {
        return DIGITS.matcher(name)
                .replaceAll(digits -> "0".repeat(Math.max(0, 20 - digits.group().length())) + digits.group());
    }
}
