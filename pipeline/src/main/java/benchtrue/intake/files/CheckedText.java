package benchtrue.intake.files;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;

/**
 * A file's letters, with what a parser does not look after: bytes that are no letters of the encoding are refused with their
 * line, and a record may not grow without end.
 */
final class CheckedText extends Reader {
    /** Most letters of a record; what a parser reads ahead counts with it. */
    static final int LONGEST_RECORD = 1 << 20;

    private static final int AHEAD = 1 << 14;

    private final InputStream in;
    private final CharsetDecoder decoder;
    private final String file;
    private final ByteBuffer bytes = ByteBuffer.allocate(1 << 16).flip();
    private final CharBuffer letters = CharBuffer.allocate(AHEAD).flip();
    private boolean ended;
    private CoderResult broken;
    private int line = 1;
    private boolean afterReturn;
    private long handedOut;
    private long recordBegan;
    private int recordLine;

    CheckedText(InputStream in, Charset encoding, String file) {
        this.in = in;
        this.file = file;
        decoder = encoding.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }

    /** Says that what comes next belongs to a new record, which begins on a line. */
    void beginRecord(int at) {
        recordBegan = handedOut;
        recordLine = at;
    }

    @Override
    public int read(char[] into, int offset, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        if (!letters.hasRemaining() && !fill()) {
            return -1;
        }
        if (handedOut - recordBegan > LONGEST_RECORD) {
            throw refused(
                    recordLine,
                    "a row longer than " + LONGEST_RECORD + " letters",
                    "rows that end; look for a quote that never closes, or export the file again");
        }
        int got = Math.min(length, letters.remaining());
        letters.get(into, offset, got);
        countLines(into, offset, got);
        handedOut += got;
        return got;
    }

    private boolean fill() throws IOException {
        while (!letters.hasRemaining()) {
            if (broken != null) {
                throw refused(
                        line,
                        "bytes that are no letters of " + decoder.charset().name(),
                        "text in one encoding; export it again as UTF-8, or name its encoding in shop.toml");
            }
            if (ended) {
                return false;
            }
            readMore();
            letters.clear();
            CoderResult result = decoder.decode(bytes, letters, ended);
            broken = result.isError() ? result : null;
            letters.flip();
        }
        return true;
    }

    private void readMore() throws IOException {
        bytes.compact();
        int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
        // The last decoding must take all that is left at once.
        ended = read < 0 && bytes.position() <= AHEAD / 2;
        bytes.position(bytes.position() + Math.max(read, 0));
        bytes.flip();
    }

    private void countLines(char[] from, int offset, int length) {
        for (int i = offset; i < offset + length; i++) {
            char letter = from[i];
            line += letter == '\r' || letter == '\n' && !afterReturn ? 1 : 0;
            afterReturn = letter == '\r';
        }
    }

    private Refusal refused(int at, String found, String expected) {
        return new Refusal(
                ExitCode.UNUSABLE_FILE, file + ", line " + at + ": found " + found + ", expected " + expected + ".");
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
