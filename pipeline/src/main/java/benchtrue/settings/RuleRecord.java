package benchtrue.settings;

import benchtrue.shop.Words;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** A rule for files as the record of a run shows it. */
final class RuleRecord {
    private final SortedMap<String, Object> values = new TreeMap<>();

    private RuleRecord() {}

    /** Returns what was set, by its key in {@code shop.toml}. */
    static Map<String, Object> of(FileRule rule) {
        RuleRecord record = new RuleRecord();
        record.put(FileKey.NAME, rule.name());
        record.put(FileKey.TABLE, rule.table());
        rule.encoding().ifPresent(charset -> record.put(FileKey.ENCODING, charset.name()));
        rule.delimiter().ifPresent(mark -> record.put(FileKey.DELIMITER, mark == '\t' ? "tab" : mark.toString()));
        rule.quote().ifPresent(mark -> record.put(FileKey.QUOTE, mark == FileRule.NO_QUOTE ? "none" : mark.toString()));
        rule.decimal().ifPresent(sign -> record.put(FileKey.DECIMAL, String.valueOf(sign.sign())));
        rule.dates().ifPresent(order -> record.put(FileKey.DATES, Words.of(order)));
        rule.headerLine().ifPresent(line -> record.put(FileKey.HEADER_LINE, line));
        rule.totalsRow().ifPresent(row -> record.put(FileKey.TOTALS_ROW, row == TotalsRow.PRESENT));
        rule.sheet().ifPresent(sheet -> record.put(FileKey.SHEET, sheet));
        rule.hours().ifPresent(unit -> record.put(FileKey.HOURS, Words.of(unit)));
        record.putPairs(FileKey.COLUMNS, rule.columns());
        record.putPairs(FileKey.CONSTANTS, rule.constants());
        if (!rule.values().isEmpty()) {
            SortedMap<String, Object> maps = new TreeMap<>();
            rule.values().forEach(map -> maps.put(map.column(), texts(map.words())));
            record.put(FileKey.VALUES, maps);
        }
        return record.values;
    }

    private void put(FileKey key, Object value) {
        values.put(key.path(), value);
    }

    private void putPairs(FileKey key, List<Pair> pairs) {
        if (!pairs.isEmpty()) {
            put(key, texts(pairs));
        }
    }

    private static SortedMap<String, Object> texts(List<Pair> pairs) {
        SortedMap<String, Object> texts = new TreeMap<>();
        pairs.forEach(pair -> texts.put(pair.key(), pair.text()));
        return texts;
    }
}
