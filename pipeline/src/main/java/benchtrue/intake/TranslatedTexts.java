package benchtrue.intake;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The contract's text for each text of a column of keys, names or words; each distinct text is looked up once. */
final class TranslatedTexts {
    private final Map<String, String> words;
    private final Kind kind;
    private final Dictionary texts = new Dictionary();
    private final List<byte[]> translated = new ArrayList<>();

    TranslatedTexts(Kind kind, Map<String, String> words) {
        this.kind = kind;
        this.words = words;
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

    private String translate(String text) {
        if (kind == Kind.TEXT) {
            return words.getOrDefault(Mapping.plain(text), text);
        }
        List<String> parts = new ArrayList<>();
        for (String part : text.split(";")) {
            parts.add(words.getOrDefault(Mapping.plain(part), part));
        }
        return String.join(";", parts);
    }
}
