package benchtrue.intake;

import benchtrue.settings.DecimalSign;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Opens a text file of any encoding and layout.
 *
 * @param encoding of its letters
 * @param layout of its cells
 */
record TextFile(Encoding encoding, Layout layout) implements Source {
    @Override
    public Records open(InputStream bytes, String file) throws IOException {
        bytes.skipNBytes(encoding.mark());
        InputStream text = encoding.charset().equals(StandardCharsets.UTF_8)
                ? bytes
                : new Utf8Stream(bytes, encoding.charset(), file);
        return new CsvRecords(behindPreamble(text), file, layout.delimiter(), layout.quote(), layout.headerLine());
    }

    /** In the data contract's own layout a point stands before decimals; elsewhere three figures behind it may be a thousand. */
    @Override
    public DecimalSign decimals(NumberText.Sign sign, Evidence evidence) {
        if (evidence.decimals() != null) {
            return evidence.decimals();
        }
        boolean open =
                sign == NumberText.Sign.OPEN_COMMA || sign == NumberText.Sign.OPEN_POINT && layout.delimiter() != ',';
        return open ? null : Evidence.asItTells(sign);
    }

    @Override
    public List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        reasons.add("encoding " + encoding.charset().name() + " (" + encoding.reason() + ")");
        reasons.addAll(layout.reasons());
        return reasons;
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

    /** Text of another encoding as UTF-8, a block at a time. Letters that can't be read are refused by the decoder. */
    static final class Utf8Stream extends InputStream {
        private final Reader letters;
        private final CharsetEncoder encoder =
                StandardCharsets.UTF_8.newEncoder().onMalformedInput(CodingErrorAction.REPLACE);
        private final CharBuffer chars = CharBuffer.allocate(1 << 14).flip();
        private final ByteBuffer bytes = ByteBuffer.allocate(1 << 16).flip();
        private final Charset charset;
        private final String file;
        private boolean ended;
        private int line = 1;

        /**
         * Takes text in another encoding. Reading refuses bytes that are no letters of it.
         *
         * @param file its name for messages
         */
        Utf8Stream(InputStream in, Charset charset, String file) {
            this.charset = charset;
            this.file = file;
            letters = new InputStreamReader(
                    in,
                    charset.newDecoder()
                            .onMalformedInput(CodingErrorAction.REPORT)
                            .onUnmappableCharacter(CodingErrorAction.REPORT));
        }

        @Override
        public int read() throws IOException {
            return fill() ? bytes.get() & 0xFF : -1;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            if (length == 0) {
                return 0;
            }
            if (!fill()) {
                return -1;
            }
            int got = Math.min(length, bytes.remaining());
            bytes.get(into, offset, got);
            return got;
        }

        private boolean fill() throws IOException {
            while (!bytes.hasRemaining() && !ended) {
                chars.compact();
                int from = chars.position();
                ended = readMore() < 0;
                chars.flip();
                countLines(from);
                bytes.clear();
                encoder.encode(chars, bytes, ended);
                bytes.flip();
            }
            return bytes.hasRemaining();
        }

        private int readMore() throws IOException {
            try {
                return letters.read(chars);
            } catch (CharacterCodingException broken) {
                throw new Refusal(
                        ExitCode.UNUSABLE_FILE,
                        file + ", line " + line + " or soon behind it: found bytes that are no letters of "
                                + charset.name()
                                + ", expected text in one encoding. Export it again as UTF-8, or name its encoding in"
                                + " shop.toml.",
                        broken);
            }
        }

        private void countLines(int from) {
            for (int i = from; i < chars.limit(); i++) {
                line += chars.get(i) == '\n' ? 1 : 0;
            }
        }
    }
}
