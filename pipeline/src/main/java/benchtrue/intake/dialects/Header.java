package benchtrue.intake.dialects;

import benchtrue.format.Spelling;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Dictionary;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.columns.SourceColumn;
import benchtrue.intake.columns.Table;
import benchtrue.intake.files.Records;
import benchtrue.settings.Pair;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Which cell of a file's records holds which canonical column. Cells of other columns are never looked at. */
public final class Header {
    public static final int NO_CELL = -1;

    private final Map<Column, Integer> cells;
    private final List<String> strangers;
    private final int size;

    Header(Map<Column, Integer> cells, List<String> strangers, int size) {
        this.cells = cells;
        this.strangers = List.copyOf(strangers);
        this.size = size;
    }

    /**
     * Reads the record of column names.
     *
     * @param mapping which of the file's headers are which columns; none applies to a file of rows that come back
     * @throws Refusal where a needed or mapped column is missing or a column stands there twice
     */
    public static Header read(Records record, Table table, Mapping mapping, String file) {
        List<String> names = new ArrayList<>();
        for (int cell = 0; cell < record.size(); cell++) {
            names.add(name(record, cell));
        }
        return new ReadHeader(table, isSetAside(names) ? Mapping.NONE : mapping, file, record.line()).read(names);
    }

    private static boolean isSetAside(List<String> names) {
        return names.stream()
                .map(name -> name.toLowerCase(Locale.ROOT))
                .toList()
                .containsAll(List.of(
                        SourceColumn.SOURCE_FILE.header(),
                        SourceColumn.SOURCE_LINE.header(),
                        SourceColumn.SOURCE_DIGEST.header()));
    }

    private static String name(Records record, int cell) {
        int start = record.start(cell);
        int length = Math.min(record.end(cell) - start, Dictionary.LONGEST);
        return new String(record.bytes(), start, length, StandardCharsets.UTF_8).strip();
    }

    public List<Column> columns() {
        return List.copyOf(cells.keySet());
    }

    public int cell(Column column) {
        return cells.getOrDefault(column, NO_CELL);
    }

    public int size() {
        return size;
    }

    /** Returns whether the file says where its rows came from. */
    public boolean isSetAside() {
        return cells.containsKey(SourceColumn.SOURCE_FILE)
                && cells.containsKey(SourceColumn.SOURCE_LINE)
                && cells.containsKey(SourceColumn.SOURCE_DIGEST);
    }

    /** Returns the nearest canonical column of each column that looks like one misspelt. */
    public Map<String, String> misspelt(Table table) {
        List<String> open = new ArrayList<>();
        for (Column column : table.columns()) {
            if (!cells.containsKey(column)) {
                open.add(column.header());
            }
        }
        Map<String, String> misspelt = new LinkedHashMap<>();
        for (String stranger : strangers) {
            Optional<String> near = Spelling.mistyped(stranger, open);
            near.ifPresent(name -> misspelt.put(stranger, name));
        }
        return misspelt;
    }

    /** Finds the columns of a table among the names in a file's header. */
    static final class ReadHeader {
        private final Table table;
        private final Mapping mapping;
        private final String place;

        ReadHeader(Table table, Mapping mapping, String file, int line) {
            this.table = table;
            this.mapping = mapping;
            place = file + ", line " + line;
        }

        Header read(List<String> names) {
            Map<String, List<Column>> known = known();
            Map<Column, Integer> cells = new LinkedHashMap<>();
            List<String> strangers = new ArrayList<>();
            for (int cell = 0; cell < names.size(); cell++) {
                List<Column> columns = known.get(Mapping.plain(names.get(cell)));
                if (columns == null) {
                    strangers.add(names.get(cell));
                } else {
                    for (Column column : columns) {
                        if (cells.put(column, cell) != null) {
                            throw twice(names.get(cell), column);
                        }
                    }
                }
            }
            requireMapped(cells, names);
            requireNeeded(cells, strangers);
            return new Header(cells, strangers, names.size());
        }

        /** One column of a file may serve two of the contract: a time stamp tells day and time of day. */
        private Map<String, List<Column>> known() {
            Map<String, List<Column>> known = new LinkedHashMap<>();
            for (Column column : table.columns()) {
                Pair mapped = mapping.headers().get(column);
                if (!mapping.constants().containsKey(column)) {
                    String name = mapped == null ? column.header() : mapped.text();
                    known.computeIfAbsent(Mapping.plain(name), fresh -> new ArrayList<>())
                            .add(column);
                }
            }
            mapping.headers()
                    .values()
                    .forEach(pair -> known.get(Mapping.plain(pair.text()))
                            .removeIf(column -> !mapping.headers().containsKey(column)));
            for (SourceColumn column : SourceColumn.values()) {
                known.putIfAbsent(column.header(), List.of(column));
            }
            return known;
        }

        private Refusal twice(String name, Column column) {
            String shown = mapping.headers().containsKey(column) ? "\"" + Problem.shown(name) + "\"" : column.header();
            return new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    place + ", column " + shown
                            + ": found twice in the header, expected once. Take one out or rename it.");
        }

        private void requireMapped(Map<Column, Integer> cells, Collection<String> names) {
            for (Column column : table.columns()) {
                Pair mapped = mapping.headers().get(column);
                if (mapped != null && !cells.containsKey(column)) {
                    throw new Refusal(
                            ExitCode.UNUSABLE_FILE,
                            place + ": found no column \"" + Problem.shown(mapped.text()) + "\", expected it as "
                                    + column.header()
                                    + " by " + ReadSettings.FILE + " line " + mapped.line()
                                    + nearest(mapped.text(), names)
                                    + ". Correct the rule, or give files with other columns a rule of their own.");
                }
            }
        }

        private void requireNeeded(Map<Column, Integer> cells, List<String> strangers) {
            List<String> missing = new ArrayList<>();
            for (Column column : table.columns()) {
                boolean there = cells.containsKey(column) || mapping.constants().containsKey(column);
                if (!there && isNeeded(column, strangers)) {
                    missing.add(column.header() + nearest(column.header(), strangers));
                }
            }
            if (!missing.isEmpty()) {
                throw new Refusal(
                        ExitCode.UNUSABLE_FILE,
                        place + ": found a header with " + cells.size() + " of the " + table.title()
                                + " columns, expected also " + String.join(", ", missing)
                                + ". Rename the columns, or map them in shop.toml (benchtrue map drafts it).");
            }
        }

        /** What is worked out where nobody says it is not worked out where somebody misspelt its name. */
        private boolean isNeeded(Column column, List<String> strangers) {
            Need need = column.cell().need();
            boolean misspelt = mapping.rule().isEmpty()
                    && Spelling.mistyped(column.header(), strangers).isPresent();
            return need == Need.REQUIRED || need == Need.DERIVED && misspelt;
        }

        private static String nearest(String wanted, Collection<String> names) {
            return Spelling.mistyped(wanted, names)
                    .map(near -> " (the nearest there is \"" + Problem.shown(near) + "\")")
                    .orElse("");
        }
    }
}
