package benchtrue.intake.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.util.XMLHelper;

/**
 * Opens the XML of a workbook's part as text. The JDK's own reader of bytes writes of letters that are none to the screen,
 * past every listener, before it gives up.
 */
final class PartText {
    private static final int MARK = 3;

    private PartText() {}

    /** Returns a reader of a part that is UTF-8, or UTF-16 with its mark, as the format of workbooks has it. */
    static XMLStreamReader open(InputStream part) throws XMLStreamException {
        try {
            PushbackInputStream bytes = new PushbackInputStream(part, MARK);
            byte[] mark = bytes.readNBytes(MARK);
            boolean isUtf8Mark = startsWith(mark, 0xEF, 0xBB, 0xBF);
            if (!isUtf8Mark) {
                bytes.unread(mark);
            }
            boolean isUtf16 = startsWith(mark, 0xFE, 0xFF) || startsWith(mark, 0xFF, 0xFE);
            Charset letters = isUtf16 ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
            return XMLHelper.newXMLInputFactory()
                    .createXMLStreamReader(new InputStreamReader(bytes, letters.newDecoder()));
        } catch (IOException damaged) {
            throw new XMLStreamException(damaged);
        }
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        for (int i = 0; i < start.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }
}
