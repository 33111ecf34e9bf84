package benchtrue.settings;

import benchtrue.format.Words;
import java.util.LinkedHashMap;
import java.util.Map;

/** Every key of {@code [files.unpivot]}. */
enum UnpivotKey {
    COLUMNS,
    HEADER,
    AFTER,
    BEFORE;

    /** Returns the key within its section. */
    String path() {
        return Words.of(this);
    }

    /** Returns what is said of wide columns as the record of a run shows it. */
    static Map<String, Object> record(Unpivot unpivot) {
        Map<String, Object> record = new LinkedHashMap<>();
        record.put(COLUMNS.path(), unpivot.columns());
        record.put(HEADER.path(), Words.of(unpivot.header()));
        unpivot.after().ifPresent(column -> record.put(AFTER.path(), column));
        unpivot.before().ifPresent(column -> record.put(BEFORE.path(), column));
        return record;
    }
}
