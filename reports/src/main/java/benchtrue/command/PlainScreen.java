package benchtrue.command;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/**
 * The screen for text that may hold what somebody else wrote: whatever would command a terminal (control characters of both
 * sets, marks that turn the direction of writing) becomes a question mark. Everything foreign is printed through it.
 */
final class PlainScreen extends FilterWriter {
    PlainScreen(Writer screen) {
        super(screen);
    }

    @Override
    public void write(int letter) throws IOException {
        out.write(plain((char) letter, '\0'));
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        char[] plain = new char[length];
        for (int i = 0; i < length; i++) {
            plain[i] = plain(text[from + i], i + 1 < length ? text[from + i + 1] : '\0');
        }
        out.write(plain);
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        write(text.toCharArray(), from, length);
    }

    private static char plain(char letter, char next) {
        boolean lineEnd = letter == '\n' || letter == '\t' || letter == '\r' && next == '\n';
        return lineEnd || !commands(letter) ? letter : '?';
    }

    private static boolean commands(char letter) {
        return Character.isISOControl(letter)
                || letter >= '\u202a' && letter <= '\u202e'
                || letter >= '\u2066' && letter <= '\u2069'
                || letter == '\u200e'
                || letter == '\u200f'
                || letter == '\u061c'
                || letter == '\u2028'
                || letter == '\u2029';
    }
}
