package benchtrue.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.PushbackInputStream;
import java.nio.charset.StandardCharsets;

/**
 * Opens a text file of any encoding and layout.
 *
 * @param encoding of its letters
 * @param layout of its cells
 */
record TextFile(Encoding encoding, Layout layout) {
    Records open(InputStream bytes, String file) throws IOException {
        bytes.skipNBytes(encoding.mark());
        InputStream text = encoding.charset().equals(StandardCharsets.UTF_8)
                ? bytes
                : new Utf8Stream(bytes, encoding.charset(), file);
        return new CsvRecords(behindPreamble(text), file, layout.delimiter(), layout.quote(), layout.headerLine());
    }

    private InputStream behindPreamble(InputStream text) throws IOException {
        if (layout.headerLine() == 1) {
            return text;
        }
        PushbackInputStream in = new PushbackInputStream(text, 1);
        int line = 1;
        while (line < layout.headerLine()) {
            int letter = in.read();
            if (letter < 0) {
                break;
            }
            if (letter == '\r') {
                int next = in.read();
                if (next >= 0 && next != '\n') {
                    in.unread(next);
                }
            }
            line += letter == '\n' || letter == '\r' ? 1 : 0;
        }
        return in;
    }
}
