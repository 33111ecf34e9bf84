package benchtrue.settings;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A question to the fact table as the owner writes it, in plain words; nothing of it has been understood yet. Empty text and
 * empty lists stand for what was left out.
 *
 * @param title what it is called
 * @param by names of what the jobs are grouped by
 * @param across which of them stands across
 * @param where conditions, all of which hold
 * @param from first day, or how far back
 * @param to last day
 * @param date which day of a job counts
 * @param show names of figures
 * @param sort what the rows are ordered by
 * @param top how many rows are shown, 0 for all
 * @param picture whether it is drawn
 * @param line of {@code shop.toml}; 0 where it comes from the command line
 */
public record AskedQuestion(
        String title,
        List<String> by,
        String across,
        List<String> where,
        String from,
        String to,
        String date,
        List<String> show,
        String sort,
        int top,
        Disclosure picture,
        int line) {
    public AskedQuestion {
        by = List.copyOf(by);
        where = List.copyOf(where);
        show = List.copyOf(show);
    }

    /** Returns what was written, by its key in {@code shop.toml}. */
    SortedMap<String, Object> byKey() {
        SortedMap<String, Object> values = new TreeMap<>();
        values.put(SettingsKey.BREAKDOWN_TITLE.within(), title);
        values.put(SettingsKey.BREAKDOWN_BY.within(), by);
        values.put(SettingsKey.BREAKDOWN_ACROSS.within(), across);
        values.put(SettingsKey.BREAKDOWN_WHERE.within(), where);
        values.put(SettingsKey.BREAKDOWN_FROM.within(), from);
        values.put(SettingsKey.BREAKDOWN_TO.within(), to);
        values.put(SettingsKey.BREAKDOWN_DATE.within(), date);
        values.put(SettingsKey.BREAKDOWN_SHOW.within(), show);
        values.put(SettingsKey.BREAKDOWN_SORT.within(), sort);
        values.put(SettingsKey.BREAKDOWN_TOP.within(), top);
        values.put(SettingsKey.BREAKDOWN_PICTURE.within(), picture == Disclosure.SHOWN);
        values.values().removeIf(value -> value.equals("") || value.equals(List.of()) || value.equals(0));
        return values;
    }
}
