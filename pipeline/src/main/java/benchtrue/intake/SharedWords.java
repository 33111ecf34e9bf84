package benchtrue.intake;

import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.Table;
import benchtrue.settings.Pair;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.ValueMap;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What the owner's words mean in whichever file they stand; what a file's own rule says of a word goes before. */
final class SharedWords {
    private final List<ValueMap> words;

    /**
     * Takes the owner's words.
     *
     * @throws Refusal where no table has the column, or none knows a word
     */
    SharedWords(List<ValueMap> words) {
        this.words = words;
        words.forEach(SharedWords::check);
    }

    private static Stream<Column> columns(ValueMap map) {
        return Stream.of(Table.values())
                .flatMap(table -> table.columns().stream())
                .filter(column -> column.header().equals(map.column()));
    }

    private static void check(ValueMap map) {
        List<Column> columns = columns(map)
                .filter(column -> column.cell().kind() == Kind.WORD
                        || column.cell().kind().isText())
                .toList();
        if (columns.isEmpty()) {
            throw new Refusal(
                    ExitCode.SETTINGS,
                    ReadSettings.FILE + ", line " + map.line() + ": found [words." + map.column()
                            + "], expected the name of a column that holds words, such as [words.repair_type].");
        }
        for (Pair pair : map.words()) {
            if (columns.stream().noneMatch(column -> takes(column, pair))) {
                throw Rules.CheckRules.unknown(
                        pair.line(),
                        "word of " + map.column(),
                        pair.text(),
                        columns.stream()
                                .flatMap(column -> column.cell().words().stream())
                                .distinct()
                                .toList());
            }
        }
    }

    private static boolean takes(Column column, Pair pair) {
        return column.cell().kind().isText() || column.cell().words().contains(pair.text());
    }

    /** Returns a mapping of a table's files with the words that mean the same everywhere. */
    Mapping with(Table table, Mapping mapping) {
        Map<Column, Map<String, String>> all = new HashMap<>(mapping.words());
        for (ValueMap map : words) {
            for (Column column : columns(map).filter(table.columns()::contains).toList()) {
                List<Pair> taken =
                        map.words().stream().filter(pair -> takes(column, pair)).toList();
                Map<String, String> here =
                        new HashMap<>(Rules.CheckRules.words(column, new ValueMap(map.column(), taken, map.line())));
                here.putAll(mapping.words().getOrDefault(column, Map.of()));
                all.put(column, Map.copyOf(here));
            }
        }
        return all.equals(mapping.words())
                ? mapping
                : new Mapping(
                        mapping.rule(),
                        mapping.headers(),
                        all,
                        mapping.constants(),
                        mapping.patterns(),
                        mapping.hours());
    }
}
