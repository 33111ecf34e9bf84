package benchtrue.format;

/** Text as {@code shop.toml} holds it. */
public final class TomlText {
    private TomlText() {}

    /** Returns text as TOML writes it. */
    public static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (char letter : text.toCharArray()) {
            if (letter == '"' || letter == '\\') {
                quoted.append('\\').append(letter);
            } else if (letter < ' ' || letter == 0x7F) {
                quoted.append("\\u00")
                        .append(Character.forDigit(letter >> 4, 16))
                        .append(Character.forDigit(letter & 15, 16));
            } else {
                quoted.append(letter);
            }
        }
        return quoted.append('"').toString();
    }
}
