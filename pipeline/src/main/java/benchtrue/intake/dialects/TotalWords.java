package benchtrue.intake.dialects;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Words with which a row says that it adds up others. */
public final class TotalWords {
    private static final Set<String> WORDS = Set.of(
            "total",
            "totals",
            "grand total",
            "subtotal",
            "sub total",
            "sum",
            "sums",
            "summe",
            "summen",
            "zwischensumme",
            "gesamt",
            "gesamtsumme",
            "insgesamt",
            "somme",
            "sous total",
            "total general",
            "total g\u00e9n\u00e9ral",
            "totale",
            "subtotale",
            "totaal",
            "subtotaal",
            "somma",
            "suma",
            "soma",
            "summa",
            "delsumma",
            "totalt",
            "i alt",
            "yhteens\u00e4",
            "celkem",
            "razem",
            "\u00f6sszesen",
            "\u0438\u0442\u043e\u0433\u043e",
            "\u5408\u8a08",
            "\u5408\u8ba1");

    private static final Pattern BEGINS = Pattern.compile(
            "(?:(?:grand|sub|sous|zwischen)[ -]?)?(?:total|totale|totaal|summe|somme|somma|suma|summa|subtotal|gesamt)\\b.*|"
                    + ".*[\\p{L}\\d)] (?:total|totale|totaal|summe|gesamt|subtotal|sum)");
    private static final Pattern BEHIND = Pattern.compile("[:=.\\u03A3]+$");
    private static final int LONGEST = 40;

    private TotalWords() {}

    /** Returns whether a cell says nothing but that its row is a total. */
    static boolean isWord(String cell) {
        return WORDS.contains(plain(cell));
    }

    /** Returns whether a cell says of what its row is a total, such as {@code Total March}. */
    public static boolean isPhrase(String cell) {
        String plain = plain(cell);
        return plain.length() <= LONGEST
                && (WORDS.contains(plain) || BEGINS.matcher(plain).matches());
    }

    private static String plain(String cell) {
        if (cell.chars().noneMatch(Character::isLetter)) {
            return ""; // A number or a day, as most cells are.
        }
        String words = cell.strip().toLowerCase(Locale.ROOT);
        return BEHIND.matcher(words).replaceAll("").replace('-', ' ').strip();
    }
}
