package benchtrue.workbook;

import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.Writer;
import org.apache.poi.xssf.streaming.SheetDataWriter;

/** Writes the rows of one sheet into the file where they wait for the workbook; the same bytes as POI's own, sooner. */
final class SteadyRows extends SheetDataWriter {
    SteadyRows() throws IOException {}

    /** POI calls it no longer meant for others, but has no other place where its writer can be chosen. */
    @Override
    @SuppressWarnings("deprecation")
    public Writer createWriter(File rows) throws IOException {
        return new RowsOut(new FileOutputStream(rows));
    }

    /** POI escapes letter by letter; few words have one to escape, and only formulas have many. */
    @Override
    protected void outputEscapedString(String text) throws IOException {
        if (isPrintable(text)) {
            _out.write(escaped(text));
        } else {
            super.outputEscapedString(text);
        }
    }

    private static boolean isPrintable(String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter < ' ' || letter > '~') {
                return false;
            }
        }
        return true;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
