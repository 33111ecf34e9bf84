package benchtrue.intake.files;

import benchtrue.intake.columns.Dictionary;
import benchtrue.intake.columns.Problem;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Rows of a sheet, one at a time. Every row behind the header has as many cells as the header: in a sheet nothing can slip
 * into another column, and what stands beside the table is no part of it.
 */
public final class SheetRecords extends EncodedRecords {
    /** Letters of a cell that are kept: enough to be too long for any column. */
    private static final int KEPT = 4 * Dictionary.KEPT;

    private final InputStream part;
    private final XMLStreamReader xml;
    private final SheetCells cells;
    private final String file;
    private final String sheet;
    private final StringBuilder stored = new StringBuilder();
    private String[] row = new String[16];
    private int used;
    private int width;
    private int line;
    private int peeked = -1;

    SheetRecords(InputStream part, SheetCells cells, String file, String sheet) throws XMLStreamException {
        this.part = part;
        this.cells = cells;
        this.file = file;
        this.sheet = sheet;
        xml = PartText.open(part);
    }

    /** Leaves out the rows above one and takes that one for the header. */
    public void skipTo(int headerRow) throws IOException {
        while (line < headerRow - 1 && nextRow(headerRow - 1)) {
            // a title, or what else stands above the table
        }
    }

    /** Lets the next row be as wide as it is: it may be the header. */
    public void forgetWidth() {
        width = 0;
    }

    @Override
    public boolean next() throws IOException {
        if (!nextRow(Integer.MAX_VALUE)) {
            return false;
        }
        if (width == 0) {
            width = used;
        }
        encode();
        return true;
    }

    /** Moves to the next row that holds anything, unless it lies behind {@code last}. */
    private boolean nextRow(int last) throws IOException {
        try {
            while (peeked >= 0 || startRow()) {
                if (peeked > last) {
                    return false;
                }
                line = peeked;
                peeked = -1;
                readRow();
                if (holdsAnything()) {
                    return true;
                }
            }
            return false;
        } catch (XMLStreamException | RuntimeException damaged) {
            throw damaged instanceof Refusal refusal ? refusal : Workbook.damaged(file, line + 1, damaged);
        }
    }

    private boolean startRow() throws XMLStreamException {
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("row")) {
                String number = xml.getAttributeValue(null, "r");
                peeked = number == null ? line + 1 : Integer.parseInt(number);
                return true;
            }
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("sheetData")) {
                return false;
            }
        }
        return false;
    }

    private void readRow() throws XMLStreamException {
        Arrays.fill(row, 0, used, null);
        used = 0;
        int column = 0;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("row")) {
                return;
            }
            if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("c")) {
                String place = xml.getAttributeValue(null, "r");
                column = place == null ? column : column(place);
                readCell(column++);
            }
        }
    }

    /** Returns the column of a place such as {@code BC12}, from 0. */
    private static int column(String place) {
        int column = 0;
        for (int i = 0; i < place.length() && column < 1 << 20; i++) {
            char letter = place.charAt(i);
            if (letter < 'A' || letter > 'Z') {
                break;
            }
            column = column * 26 + letter - 'A' + 1;
        }
        if (column == 0) {
            throw new IllegalArgumentException(place);
        }
        return column - 1;
    }

    private void readCell(int column) throws XMLStreamException {
        String type = xml.getAttributeValue(null, "t");
        String style = xml.getAttributeValue(null, "s");
        stored.setLength(0);
        String within = "";
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                within = within.equals("rPh") ? within : xml.getLocalName();
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                if (xml.getLocalName().equals("c")) {
                    break;
                }
                within = within.equals("rPh") && !xml.getLocalName().equals("rPh") ? within : "";
            } else if (event == XMLStreamConstants.CHARACTERS && (within.equals("v") || within.equals("t"))) {
                stored.append(
                        xml.getTextCharacters(),
                        xml.getTextStart(),
                        Math.min(xml.getTextLength(), KEPT - Math.min(KEPT, stored.length())));
            }
        }
        put(column, cells.text(type, style, stored.toString()));
    }

    private void put(int column, String text) {
        if (text.isEmpty() || width > 0 && column >= width) {
            return;
        }
        if (column >= CsvRecords.MOST_CELLS) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file + ", sheet " + Problem.shown(sheet) + ", row " + line + ": found more than "
                            + CsvRecords.MOST_CELLS + " cells, expected a table with a header of known columns.");
        }
        if (column >= row.length) {
            row = Arrays.copyOf(row, Math.max(column + 1, 2 * row.length));
        }
        row[column] = text.length() > KEPT ? text.substring(0, KEPT) : text;
        used = Math.max(used, column + 1);
    }

    private boolean holdsAnything() {
        return used > 0;
    }

    private void encode() {
        clear();
        for (int cell = 0; cell < width; cell++) {
            add(cell < used && row[cell] != null ? row[cell] : "");
        }
    }

    @Override
    public int line() {
        return line;
    }

    @Override
    public void close() throws IOException {
        part.close();
    }
}
