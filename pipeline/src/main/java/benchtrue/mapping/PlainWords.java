package benchtrue.mapping;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Words as they are compared: small letters without accents, and apart from what says nothing. */
final class PlainWords {
    private static final Set<String> SAY_NOTHING = Set.of(
            "nr", "no", "num", "numero", "nummer", "number", "id", "in", "of", "the", "der", "die", "das", "de", "del",
            "des", "di", "du", "d", "l", "la", "le", "il", "el", "eur", "usd", "gbp", "chf", "euro", "n", "van", "da",
            "do", "am");

    private PlainWords() {}

    /** Returns the words of a text, with one space between them. */
    static String plain(String text) {
        String apart = text.replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ")
                .replace("\u00DF", "ss")
                .replaceAll("(?<=\\p{L})\\.?[\u00BA\u00AA\u00B0]", "");
        return Normalizer.normalize(apart, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replace("\u00E6", "a")
                .replace("\u00F8", "o")
                .replaceAll("([ao])e", "$1")
                .replaceAll("(?<!q)ue(?=\\p{L})", "u")
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }

    /**
     * Returns how far a name says what a known one says.
     *
     * @param name plain
     * @param known plain
     * @return 1 for the same words, 0 for others
     */
    static double likeness(String name, String known) {
        if (name.equals(known) || name.replace(" ", "").equals(known.replace(" ", ""))) {
            return 1;
        }
        List<String> words = tellingWords(name);
        List<String> wanted = tellingWords(known);
        if (words.isEmpty() || wanted.isEmpty()) {
            return 0;
        }
        if (Set.copyOf(words).equals(Set.copyOf(wanted))) {
            return 0.95;
        }
        if (words.containsAll(wanted)) {
            return 0.5 + 0.3 * wanted.size() / words.size();
        }
        boolean compound = wanted.size() == 1
                && wanted.get(0).length() >= 4
                && words.stream().anyMatch(word -> word.startsWith(wanted.get(0)) || word.endsWith(wanted.get(0)));
        return compound ? 0.6 : 0;
    }

    /** Returns the words of a text that say something; all of them where none does. */
    static List<String> telling(String text) {
        List<String> words = tellingWords(plain(text));
        return words.isEmpty() && !text.isBlank() ? List.of(plain(text)) : words;
    }

    private static List<String> tellingWords(String plain) {
        return Arrays.stream(plain.split(" "))
                .filter(word -> !word.isEmpty() && !SAY_NOTHING.contains(word))
                .toList();
    }
}
