package benchtrue.intake.files;

import benchtrue.settings.FileRule;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Delimited text (RFC 4180) by Commons CSV. Strict where leniency loses rows: a quote that never closes, text after a closing
 * quote, bytes that are no text and endless records are refused with their line.
 */
public final class CsvRecords extends EncodedRecords {
    /** Most cells of a record. */
    static final int MOST_CELLS = 1_000;

    /** Bytes that tell the kind of a file. */
    private static final int MAGIC = 8;

    private static final byte[] UTF_8_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final String file;
    private final int linesAbove;
    private final CheckedText text;
    private final CSVParser parser;
    private final Iterator<CSVRecord> records;
    private int line;

    private CsvRecords(String file, int linesAbove, CheckedText text, CSVParser parser) {
        this.file = file;
        this.linesAbove = linesAbove;
        this.text = text;
        this.parser = parser;
        records = parser.iterator();
    }

    /** Opens the data contract's own text: UTF-8 with or without a mark, commas. */
    public static CsvRecords open(InputStream bytes, String file) throws IOException {
        return open(bytes, file, StandardCharsets.UTF_8, new TextLayout(',', '"', 1, List.of()));
    }

    /**
     * Opens text behind its mark.
     *
     * @param encoding of its letters
     * @param layout of its cells; lines above the header are read past
     */
    public static CsvRecords open(InputStream bytes, String file, Charset encoding, TextLayout layout)
            throws IOException {
        boolean utf8 = encoding.equals(StandardCharsets.UTF_8);
        byte[] start = bytes.readNBytes(MAGIC);
        int mark = utf8 && Arrays.mismatch(start, UTF_8_MARK) >= UTF_8_MARK.length ? UTF_8_MARK.length : 0;
        if (utf8) {
            KnownKinds.requireTable(start, mark, start.length, file);
        }
        InputStream whole = new SequenceInputStream(new ByteArrayInputStream(start, mark, start.length - mark), bytes);
        CheckedText text = new CheckedText(whole, encoding, file);
        BufferedReader lines = new BufferedReader(text);
        int above = 0;
        while (above < layout.headerLine() - 1 && lines.readLine() != null) {
            above++;
        }
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(layout.delimiter())
                .setQuote(layout.quote() == FileRule.NO_QUOTE ? null : layout.quote())
                .get();
        return new CsvRecords(file, layout.headerLine() - 1, text, CSVParser.parse(lines, format));
    }

    @Override
    public boolean next() throws IOException {
        while (true) {
            line = linesAbove + (int) parser.getCurrentLineNumber() + 1;
            text.beginRecord(line);
            CSVRecord record = read();
            if (record == null) {
                return false;
            }
            if (record.size() > MOST_CELLS) {
                throw refused(
                        "more than " + MOST_CELLS + " cells in the row", "a table with a header of known columns");
            }
            clear();
            record.forEach(this::add);
            if (end(size() - 1) > 0) {
                return true;
            }
        }
    }

    private CSVRecord read() throws IOException {
        try {
            return records.hasNext() ? records.next() : null;
        } catch (UncheckedIOException failed) {
            if (failed.getCause() instanceof CSVException broken) {
                throw broken.getMessage().contains("EOF")
                        ? refused(
                                "a quoted text that opens in this row and never closes",
                                "a closing \" (a \" inside a text is doubled)")
                        : refused(
                                "text that goes on after a closing quote",
                                "a delimiter or the end of the row (a \" inside a text is doubled)");
            }
            throw failed.getCause();
        }
    }

    private Refusal refused(String found, String expected) {
        return new Refusal(
                ExitCode.UNUSABLE_FILE, file + ", line " + line + ": found " + found + ", expected " + expected + ".");
    }

    @Override
    public int line() {
        return line;
    }
}
