package benchtrue.intake;

import benchtrue.intake.files.Records;
import benchtrue.intake.files.TextLayout;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the cells of one record stand in a file's text, so that one can be written anew and all others stay as they are.
 *
 * @param start of the record
 * @param cells start and end of each cell, its quotes included
 * @param end of the record, behind what ends its line
 */
record CellPlaces(int start, List<int[]> cells, int end) {
    /** Returns the places of a record's cells; empty where they are written in some way of their own. */
    static Optional<CellPlaces> of(String text, int start, Records record, TextLayout layout) {
        List<int[]> cells = new ArrayList<>();
        int at = start;
        for (int cell = 0; cell < record.size(); cell++) {
            int from = record.start(cell);
            String value = new String(record.bytes(), from, record.end(cell) - from, StandardCharsets.UTF_8);
            int end = end(text, at, value, layout);
            if (end < 0) {
                return Optional.empty();
            }
            cells.add(new int[] {at, end});
            at = skip(text, end, ' ');
            at += at < text.length() && text.charAt(at) == layout.delimiter() ? 1 : 0;
        }
        // What stands behind the last cell is nothing, or an empty cell more than the header has.
        int last = skip(text, skip(text, at, layout.delimiter()), ' ');
        return isEnd(text, last) ? Optional.of(new CellPlaces(start, cells, behind(text, last))) : Optional.empty();
    }

    private static int end(String text, int at, String value, TextLayout layout) {
        String quote = String.valueOf(layout.quote());
        String quoted = quote + value.replace(quote, quote + quote) + quote;
        if (text.startsWith(quoted, at) && isEnded(text, skip(text, at + quoted.length(), ' '), layout)) {
            return at + quoted.length();
        }
        int end = at + value.length();
        return text.startsWith(value, at) && isEnded(text, end, layout) ? end : -1;
    }

    private static boolean isEnded(String text, int at, TextLayout layout) {
        return isEnd(text, at) || text.charAt(at) == layout.delimiter();
    }

    private static boolean isEnd(String text, int at) {
        return at >= text.length() || text.charAt(at) == '\r' || text.charAt(at) == '\n';
    }

    private static int skip(String text, int from, char letter) {
        int at = from;
        while (at < text.length() && text.charAt(at) == letter) {
            at++;
        }
        return at;
    }

    private static int behind(String text, int end) {
        if (end >= text.length()) {
            return end;
        }
        return end + (text.startsWith("\r\n", end) ? 2 : 1);
    }

    /** Returns where each line of a text begins, whichever way lines end. */
    static int[] lines(String text) {
        List<Integer> starts = new ArrayList<>(List.of(0));
        for (int at = 0; at < text.length(); at++) {
            if (isEnd(text, at)) {
                at = behind(text, at) - 1;
                starts.add(at + 1);
            }
        }
        return starts.stream().mapToInt(Integer::intValue).toArray();
    }
}
