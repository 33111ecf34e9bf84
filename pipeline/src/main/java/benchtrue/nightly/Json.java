package benchtrue.nightly;

import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * Writes values as RFC 8259 text, two spaces a level, in the order they are given: maps, lists, text, whole numbers,
 * doubles and booleans.
 */
public final class Json {
    private final StringBuilder out = new StringBuilder();

    private Json() {}

    /**
     * Returns the text of an object.
     *
     * @throws IllegalArgumentException where it holds anything else
     */
    public static String text(Map<String, ?> value) {
        Json json = new Json();
        json.value(value, 0);
        return json.out.append('\n').toString();
    }

    private void value(Object value, int depth) {
        if (value instanceof Map<?, ?> map) {
            object(map, depth);
        } else if (value instanceof List<?> list) {
            array(list, depth);
        } else if (value instanceof Long
                || value instanceof Integer
                || value instanceof Boolean
                || value instanceof Double d && Double.isFinite(d)) {
            out.append(value);
        } else if (value instanceof String string) {
            quoted(string);
        } else {
            throw new IllegalArgumentException("no JSON for " + value);
        }
    }

    private void object(Map<?, ?> map, int depth) {
        out.append('{');
        for (Iterator<? extends Map.Entry<?, ?>> i = map.entrySet().iterator(); i.hasNext(); ) {
            Map.Entry<?, ?> entry = i.next();
            line(depth + 1);
            quoted((String) entry.getKey());
            out.append(": ");
            value(entry.getValue(), depth + 1);
            out.append(i.hasNext() ? "," : "");
        }
        close('}', map.isEmpty(), depth);
    }

    private void array(List<?> list, int depth) {
        out.append('[');
        for (Iterator<?> i = list.iterator(); i.hasNext(); ) {
            line(depth + 1);
            value(i.next(), depth + 1);
            out.append(i.hasNext() ? "," : "");
        }
        close(']', list.isEmpty(), depth);
    }

    private void close(char bracket, boolean empty, int depth) {
        if (!empty) {
            line(depth);
        }
        out.append(bracket);
    }

    private void line(int depth) {
        out.append('\n').append("  ".repeat(depth));
    }

    private void quoted(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                out.append("\\u00").append(Character.forDigit(c >> 4, 16)).append(Character.forDigit(c & 15, 16));
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }
}
