package benchtrue.nightly;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads RFC 8259 text that {@link Json} wrote: objects to maps, arrays to lists, whole numbers to longs, other numbers to
 * doubles. Text of any other origin is refused where it goes beyond that, never guessed at.
 */
final class JsonReader {
    private static final int DEEPEST = 20;
    private final String text;
    private int at;

    private JsonReader(String text) {
        this.text = text;
    }

    static Object read(String text) throws IOException {
        JsonReader reader = new JsonReader(text);
        Object value = reader.value(0);
        reader.blank();
        if (reader.at < text.length()) {
            throw reader.unexpected();
        }
        return value;
    }

    private Object value(int depth) throws IOException {
        if (depth > DEEPEST) {
            throw unexpected();
        }
        return switch (peek()) {
            case '{' -> object(depth);
            case '[' -> array(depth);
            case '"' -> string();
            case 't' -> word("true", true);
            case 'f' -> word("false", false);
            default -> number();
        };
    }

    private Map<String, Object> object(int depth) throws IOException {
        Map<String, Object> object = new LinkedHashMap<>();
        take('{');
        while (peek() != '}') {
            String key = string();
            peek();
            take(':');
            object.put(key, value(depth + 1));
            comma('}');
        }
        take('}');
        return object;
    }

    private List<Object> array(int depth) throws IOException {
        List<Object> array = new ArrayList<>();
        take('[');
        while (peek() != ']') {
            array.add(value(depth + 1));
            comma(']');
        }
        take(']');
        return array;
    }

    private void comma(char close) throws IOException {
        if (peek() != close) {
            take(',');
            if (peek() == close) {
                throw unexpected();
            }
        }
    }

    private String string() throws IOException {
        StringBuilder string = new StringBuilder();
        peek();
        take('"');
        while (current() != '"') {
            char c = text.charAt(at++);
            string.append(c == '\\' ? escaped() : c);
        }
        take('"');
        return string.toString();
    }

    private char escaped() throws IOException {
        char c = current();
        at++;
        if (c == '"' || c == '\\') {
            return c;
        }
        if (c != 'u' || at + 4 > text.length()) {
            throw unexpected();
        }
        try {
            char unit = (char) Integer.parseInt(text.substring(at, at + 4), 16);
            at += 4;
            return unit;
        } catch (NumberFormatException e) {
            throw unexpected();
        }
    }

    private Object word(String word, Object value) throws IOException {
        if (!text.startsWith(word, at)) {
            throw unexpected();
        }
        at += word.length();
        return value;
    }

    private Object number() throws IOException {
        int from = at;
        while (at < text.length() && "+-.eE0123456789".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        String number = text.substring(from, at);
        try {
            return number.matches("-?[0-9]+") ? (Object) Long.valueOf(number) : (Object) Double.valueOf(number);
        } catch (NumberFormatException e) {
            throw unexpected();
        }
    }

    private char peek() throws IOException {
        blank();
        return current();
    }

    private void blank() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private char current() throws IOException {
        if (at >= text.length()) {
            throw unexpected();
        }
        return text.charAt(at);
    }

    private void take(char expected) throws IOException {
        if (current() != expected) {
            throw unexpected();
        }
        at++;
    }

    private IOException unexpected() {
        return new IOException("not as it was written, at character " + (at + 1));
    }
}
