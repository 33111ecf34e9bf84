package benchtrue.intake;

import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Dictionary;
import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.SourceColumn;
import benchtrue.intake.columns.Table;
import benchtrue.intake.dialects.Header;
import benchtrue.intake.files.Digests;
import benchtrue.intake.files.Records;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** Takes the records of a table's files one after the other. */
final class TableRowsBuilder {
    private final Table table;
    private final TextColumn[] columns;
    private final TextColumn[] sources = new TextColumn[SourceColumn.values().length];
    private final RowPlaces places = new RowPlaces();
    private final List<InputFile> files = new ArrayList<>();
    private TextColumn[] present = {};
    private int[] cells = {};
    private byte[][] constants = {};
    private TranslatedTexts[] translations = {};
    private int headerSize;
    private boolean numbered;
    private final LineNumbers numbers = new LineNumbers();

    TableRowsBuilder(Table table) {
        this.table = table;
        columns = new TextColumn[table.columns().size()];
    }

    int size() {
        return places.size();
    }

    /**
     * Begins a file whose header was understood.
     *
     * @param mapping constants and words of the file
     */
    void begin(Header header, Mapping mapping) {
        List<TextColumn> found = new ArrayList<>();
        List<Integer> at = new ArrayList<>();
        for (Column column : header.columns()) {
            if (column.cell().kind() != Kind.PASSED && !mapping.constants().containsKey(column)) {
                found.add(column(column));
                at.add(header.cell(column));
            }
        }
        numbers.begin();
        numbered = header.columns().contains(LineColumn.LINE)
                || mapping.constants().containsKey(LineColumn.LINE);
        if (table == Table.QUOTED_LINES) {
            column(LineColumn.LINE);
        }
        List<byte[]> texts = new ArrayList<>(Collections.nCopies(found.size(), null));
        for (Column column : table.columns()) {
            if (mapping.constants().containsKey(column)) {
                found.add(column(column));
                at.add(Header.NO_CELL);
                texts.add(mapping.constants().get(column).getBytes(StandardCharsets.UTF_8));
            }
        }
        for (TextColumn[] known : List.of(columns, sources)) {
            for (TextColumn column : known) {
                if (column != null && !found.contains(column)) {
                    found.add(column);
                    at.add(Header.NO_CELL);
                    texts.add(null);
                }
            }
        }
        present = found.toArray(TextColumn[]::new);
        cells = at.stream().mapToInt(Integer::intValue).toArray();
        constants = texts.toArray(byte[][]::new);
        translations =
                found.stream().map(column -> translation(column, mapping)).toArray(TranslatedTexts[]::new);
        headerSize = header.size();
    }

    private static TranslatedTexts translation(TextColumn column, Mapping mapping) {
        Map<String, String> words = mapping.words().get(column.column());
        Kind kind = column.column().cell().kind();
        boolean asWritten = words == null && !mapping.patterns().containsKey(column.column());
        return asWritten || !kind.isText() ? null : new TranslatedTexts(column.column(), mapping);
    }

    private TextColumn column(Column column) {
        TextColumn[] home = column instanceof SourceColumn ? sources : columns;
        if (home[column.ordinal()] == null) {
            home[column.ordinal()] = new TextColumn(column, size());
        }
        return home[column.ordinal()];
    }

    void add(Records record, CellFormat format, int formatNumber) {
        places.add(record.line(), record.column());
        if (record.size() != headerSize) {
            addRagged(record);
            return;
        }
        boolean usable = true;
        for (int i = 0; i < present.length; i++) {
            usable &= cells[i] == Header.NO_CELL
                    ? addConstant(i, format, formatNumber)
                    : add(i, record, format, formatNumber);
        }
        if (table == Table.QUOTED_LINES) {
            usable &= numberLine();
        }
        if (!usable) {
            places.markUnreadable();
        }
    }

    private boolean add(int i, Records record, CellFormat format, int formatNumber) {
        int start = record.start(cells[i]);
        int end = record.end(cells[i]);
        if (translations[i] == null) {
            return present[i].add(record.bytes(), start, end, format, formatNumber);
        }
        byte[] text = translations[i].of(record.bytes(), start, Math.min(end, start + Dictionary.KEPT));
        return present[i].add(text, 0, text.length, format, formatNumber);
    }

    /** Only files without any number have their lines numbered: between numbered ones an empty one may be anybody's. */
    private boolean numberLine() {
        TextColumn line = columns[LineColumn.LINE.ordinal()];
        int row = size() - 1;
        if (!numbered) {
            line.replaceEmpty(numbers.next(
                    columns[LineColumn.TICKET.ordinal()].code(row),
                    columns[LineColumn.REPAIR_TYPE.ordinal()].code(row)));
        }
        return line.code(row) != 0;
    }

    private boolean addConstant(int i, CellFormat format, int formatNumber) {
        byte[] text = constants[i];
        return text == null ? present[i].addEmpty() : present[i].add(text, 0, text.length, format, formatNumber);
    }

    /** Keeps nothing of a row whose cells may stand in the wrong columns: among them may be what is nobody's business. */
    private void addRagged(Records record) {
        for (TextColumn column : present) {
            column.addEmpty();
        }
        places.markRagged(record.size(), headerSize, Digests.ofRecord(record));
    }

    void end(InputFile file) {
        files.add(file);
    }

    TableRows build() {
        return new TableRows(table, columns, sources, places, files);
    }

    /** The contract's text for each text of a column of keys, names or words; each distinct text is looked up once. */
    static final class TranslatedTexts {
        private final Column column;
        private final Mapping mapping;
        private final Map<String, String> words;
        private final Dictionary texts = new Dictionary();
        private final List<byte[]> translated = new ArrayList<>();

        TranslatedTexts(Column column, Mapping mapping) {
            this.column = column;
            this.mapping = mapping;
            words = mapping.words().getOrDefault(column, Map.of());
            translated.add(new byte[0]);
        }

        /** Returns the UTF-8 bytes that stand for a cell's. */
        byte[] of(byte[] bytes, int start, int end) {
            int code = texts.code(bytes, start, end, 0);
            if (code == translated.size()) {
                translated.add(translate(texts.text(code)).getBytes(StandardCharsets.UTF_8));
            }
            return translated.get(code);
        }

        private String translate(String whole) {
            String text = mapping.part(column, whole);
            if (column.cell().kind() == Kind.TEXT) {
                return words.getOrDefault(Mapping.plain(text), text.strip());
            }
            List<String> parts = new ArrayList<>();
            for (String part : text.split(";")) {
                parts.add(words.getOrDefault(Mapping.plain(part), part));
            }
            return String.join(";", parts);
        }
    }
}
