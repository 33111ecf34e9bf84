package benchtrue.intake;

import benchtrue.format.Spelling;
import benchtrue.intake.cells.ReadCell;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.MappedTable;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.columns.Table;
import benchtrue.settings.FileRule;
import benchtrue.settings.HoursUnit;
import benchtrue.settings.Pair;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.settings.ValueMap;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Notice;
import benchtrue.shop.Refusal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The owner's rules for files, and which of them found any. */
final class Rules {
    private final List<MappedTable> rules;
    private final List<FileRule> unused;
    private final SharedWords words;

    Rules(Settings settings) {
        words = new SharedWords(settings.words());
        rules = settings.files().stream()
                .map(CheckRules::mapping)
                .map(rule -> new MappedTable(rule.table(), words.with(rule.table(), rule.mapping())))
                .toList();
        unused = new ArrayList<>(settings.files());
    }

    /** Returns how files of a table are translated that no rule fits. */
    MappedTable plain(Table table) {
        return new MappedTable(table, words.with(table, Mapping.NONE));
    }

    /**
     * Returns the rules that fit a file: one, or several of different tables or sheets.
     *
     * @param folder within the shop folder
     * @param file name without the folder
     * @throws Refusal where two rules say the same table of the same sheet
     */
    List<MappedTable> of(String folder, String file) {
        List<MappedTable> fitting =
                rules.stream().filter(rule -> rule(rule).fits(file)).toList();
        for (MappedTable one : fitting) {
            for (MappedTable other : fitting.subList(fitting.indexOf(one) + 1, fitting.size())) {
                requireApart(one, other, folder + "/" + file);
            }
        }
        fitting.forEach(found -> unused.remove(rule(found)));
        return fitting;
    }

    private static void requireApart(MappedTable one, MappedTable other, String file) {
        boolean sheets = !rule(one).shape().sheets().isEmpty()
                && !rule(other).shape().sheets().isEmpty();
        if (one.table() == other.table() && !sheets) {
            throw new Refusal(
                    ExitCode.SETTINGS,
                    ReadSettings.FILE + ", lines " + rule(one).line() + " and "
                            + rule(other).line() + ": found two rules for " + file
                            + ", expected one a table or sheet. Make the pattern of one narrower.");
        }
    }

    private static FileRule rule(MappedTable rule) {
        return rule.mapping().rule().orElseThrow();
    }

    /**
     * Looks for rules that fit no file beside files that nobody reads: more is left lying than the owner knows.
     *
     * @param unread files without a rule or a table's name
     * @throws Refusal naming both
     */
    void requireUsed(List<String> unread) {
        if (!unused.isEmpty() && !unread.isEmpty()) {
            FileRule rule = unused.get(0);
            throw new Refusal(
                    ExitCode.SETTINGS,
                    ReadSettings.FILE + ", line " + rule.line() + ": found a rule for \"" + rule.name()
                            + "\" that fits no file, and " + unread.get(0)
                            + ", which nobody reads. Correct the rule's name, or take the file or the rule out.");
        }
    }

    /** Returns what to say of rules that fit no file. */
    List<Notice> notices() {
        return unused.isEmpty()
                ? List.of()
                : List.of(new Notice(
                        "unused-rule",
                        "A rule of shop.toml fits no file: correct its pattern, or take it out.",
                        unused.size(),
                        unused.stream()
                                .map(rule -> "line " + rule.line() + ": " + rule.name())
                                .limit(5)
                                .toList()));
    }

    /** Turns the owner's rules for files into mappings; names that the data contract lacks are refused with their line. */
    static final class CheckRules {
        private final FileRule rule;
        private final Table table;

        private CheckRules(FileRule rule) {
            this.rule = rule;
            List<String> titles = Stream.of(Table.values()).map(Table::title).toList();
            table = Stream.of(Table.values())
                    .filter(known -> known.title().equals(rule.table()))
                    .findFirst()
                    .orElseThrow(() -> unknown(rule.line(), "table", rule.table(), titles));
        }

        static MappedTable mapping(FileRule rule) {
            CheckRules check = new CheckRules(rule);
            Mapping mapping = new Mapping(
                    Optional.of(rule),
                    check.headers(),
                    check.words(),
                    check.constants(),
                    check.patterns(),
                    rule.hours().orElse(HoursUnit.HOURS));
            return new MappedTable(check.table, mapping);
        }

        private Map<Column, Pair> headers() {
            Map<Column, Pair> headers = new HashMap<>();
            rule.columns().forEach(pair -> headers.put(column(pair.key(), pair.line()), pair));
            return headers;
        }

        private Map<Column, Pattern> patterns() {
            Map<Column, Pattern> patterns = new HashMap<>();
            rule.shape()
                    .patterns()
                    .forEach(pair -> patterns.put(column(pair.key(), pair.line()), Pattern.compile(pair.text())));
            return patterns;
        }

        private Map<Column, String> constants() {
            Map<Column, String> constants = new HashMap<>();
            for (Pair pair : rule.constants()) {
                Column column = column(pair.key(), pair.line());
                if (rule.columns().stream().anyMatch(mapped -> mapped.key().equals(pair.key()))) {
                    throw refused(
                            pair.line(),
                            "found " + pair.key() + " among the columns and the constants, expected it once");
                }
                Problem problem = ReadCell.read(column.cell(), pair.text()).problem();
                if (problem != Problem.NONE) {
                    throw refused(pair.line(), problem.words(column, pair.text()));
                }
                constants.put(column, pair.text().strip());
            }
            return constants;
        }

        private Map<Column, Map<String, String>> words() {
            Map<Column, Map<String, String>> words = new HashMap<>();
            for (ValueMap values : rule.values()) {
                Column column = column(values.column(), values.line());
                Kind kind = column.cell().kind();
                if (kind != Kind.WORD && !kind.isText()) {
                    throw refused(
                            values.line(),
                            "found words for " + column.header() + ", which holds " + kind.expected()
                                    + ", expected words only for columns that hold words");
                }
                words.put(column, words(column, values));
            }
            return words;
        }

        /** Returns the contract's word for each of the owner's, by {@link Mapping#plain}. */
        static Map<String, String> words(Column column, ValueMap values) {
            Map<String, String> words = new HashMap<>();
            for (Pair pair : values.words()) {
                if (column.cell().kind() == Kind.WORD && !column.cell().words().contains(pair.text())) {
                    throw unknown(
                            pair.line(),
                            "word of " + column.header(),
                            pair.text(),
                            column.cell().words());
                }
                String earlier = words.put(Mapping.plain(pair.key()), pair.text());
                if (earlier != null && !earlier.equals(pair.text())) {
                    throw refused(
                            pair.line(),
                            "found \"" + pair.key() + "\" for " + earlier + " and for " + pair.text()
                                    + ", expected one of them");
                }
            }
            return Map.copyOf(words);
        }

        private Column column(String name, int line) {
            return table.columns().stream()
                    .filter(column -> column.header().equals(name))
                    .findFirst()
                    .orElseThrow(() -> unknown(
                            line,
                            "column of " + table.title(),
                            name,
                            table.columns().stream().map(Column::header).toList()));
        }

        static Refusal unknown(int line, String what, String found, List<String> known) {
            String advice = Spelling.nearest(found, known)
                    .map(near -> "Did you mean \"" + near + "\"?")
                    .orElse("There are: " + String.join(", ", known) + ".");
            return new Refusal(
                    ExitCode.SETTINGS,
                    ReadSettings.FILE + ", line " + line + ": found \"" + Problem.shown(found) + "\", which is no "
                            + what + ". " + advice);
        }

        private static Refusal refused(int line, String what) {
            return new Refusal(ExitCode.SETTINGS, ReadSettings.FILE + ", line " + line + ": " + what + ".");
        }
    }
}
