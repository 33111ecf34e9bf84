package benchtrue.intake.files;

import benchtrue.intake.cells.DateSystem;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.model.SharedStrings;
import org.apache.poi.xssf.model.StylesTable;
import org.xml.sax.SAXException;

/**
 * An .xlsx file, opened for reading sheet after sheet without holding one in memory. The library's limits on how far a part
 * may unpack hold, and parts that are held in memory have limits of their own.
 */
public final class Workbook implements Closeable {
    /** Most bytes of the part with all distinct texts, and of the part with all formats. */
    private static final long MOST_TEXTS = 64L << 20;

    private static final long MOST_STYLES = 8L << 20;
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String STRICT_RELATIONS = "http://purl.oclc.org/ooxml/officeDocument/relationships";

    private final String file;
    private final OPCPackage parts;
    private final XSSFReader reader;
    private final List<Sheet> sheets = new ArrayList<>();
    private SharedStrings texts;
    private StylesTable styles;
    private DateSystem dates = DateSystem.FROM_1900;

    /** Whether a person who opens the workbook sees a sheet. */
    public enum Visibility {
        VISIBLE,
        HIDDEN
    }

    /** A sheet and the relation that leads to its part. */
    public record Sheet(String name, String relation, Visibility visibility) {}

    private Workbook(OPCPackage parts, String file) throws IOException, OpenXML4JException {
        this.parts = parts;
        this.file = file;
        reader = new XSSFReader(parts);
    }

    /**
     * Opens a file.
     *
     * @throws Refusal where it is no workbook of this kind, is damaged, or would unpack to more than it should
     */
    public static Workbook open(Path path, String file) throws IOException {
        requireKind(path, file);
        OPCPackage parts = null;
        try {
            parts = OPCPackage.open(path.toFile(), PackageAccess.READ);
            Workbook workbook = new Workbook(parts, file);
            workbook.readParts();
            return workbook;
        } catch (Refusal refusal) {
            parts.revert();
            throw refusal;
        } catch (IOException | OpenXML4JException | SAXException | XMLStreamException | RuntimeException damaged) {
            if (parts != null) {
                parts.revert();
            }
            throw damaged(file, 0, damaged);
        }
    }

    private static void requireKind(Path path, String file) throws IOException {
        byte[] start;
        try (InputStream in = Files.newInputStream(path)) {
            start = in.readNBytes(8);
        }
        String magic = new String(start, StandardCharsets.ISO_8859_1);
        if (magic.startsWith("PK\u0003\u0004")) {
            return;
        }
        if (magic.startsWith("\u00D0\u00CF\u0011\u00E0")) {
            throw refused(
                    file,
                    isEncrypted(path)
                            ? "found a workbook with a password, expected one without. Save it without a password"
                            : "found a workbook of the old kind (.xls), expected .xlsx. Save it as .xlsx or CSV");
        }
        throw refused(
                file,
                start.length == 0
                        ? "found an empty file, expected a workbook. Export it again, or take the file out"
                        : "found something that is no workbook, expected .xlsx. If it is text, let its name end in .csv");
    }

    private static boolean isEncrypted(Path path) {
        try (POIFSFileSystem old = new POIFSFileSystem(path.toFile(), true)) {
            return old.getRoot().hasEntryCaseInsensitive("EncryptedPackage");
        } catch (IOException | RuntimeException damaged) {
            return false;
        }
    }

    private static Refusal refused(String file, String what) {
        return new Refusal(ExitCode.UNUSABLE_FILE, file + ": " + what + ".");
    }

    /** Returns the refusal of a workbook that can't be read on. */
    public static Refusal damaged(String file, int row, Exception cause) {
        String place = row > 0 ? file + ", row " + row : file;
        for (Throwable why = cause; why != null; why = why.getCause()) {
            if (why.getMessage() != null && why.getMessage().contains("Zip bomb")) {
                return new Refusal(
                        ExitCode.UNUSABLE_FILE,
                        place + ": found a workbook that unpacks to far more than its size, expected one that a shop's"
                                + " system wrote. Look where the file comes from.",
                        cause);
            }
        }
        return new Refusal(
                ExitCode.UNUSABLE_FILE,
                place + ": found a workbook that is damaged or made by no spreadsheet program, expected one that opens."
                        + " Open it, save it again, or export it as CSV.",
                cause);
    }

    private void readParts() throws IOException, OpenXML4JException, SAXException, XMLStreamException {
        try (InputStream xml = reader.getWorkbookData()) {
            XMLStreamReader in = PartText.open(xml);
            while (in.hasNext()) {
                if (in.next() == XMLStreamConstants.START_ELEMENT) {
                    readElement(in);
                }
            }
        }
        try (InputStream xml = limited(reader.getSharedStringsData(), MOST_TEXTS, "texts")) {
            texts = xml == null ? null : new ReadOnlySharedStringsTable(xml, false);
        }
        try (InputStream xml = limited(reader.getStylesData(), MOST_STYLES, "formats")) {
            styles = xml == null ? null : new StylesTable(xml);
        }
    }

    private void readElement(XMLStreamReader in) {
        if (in.getLocalName().equals("workbookPr")) {
            String since1904 = in.getAttributeValue(null, "date1904");
            boolean is1904 = "1".equals(since1904) || "true".equals(since1904);
            dates = is1904 ? DateSystem.FROM_1904 : DateSystem.FROM_1900;
        } else if (in.getLocalName().equals("sheet")) {
            String relation = in.getAttributeValue(RELATIONS, "id");
            String state = in.getAttributeValue(null, "state");
            sheets.add(new Sheet(
                    String.valueOf(in.getAttributeValue(null, "name")),
                    relation != null ? relation : in.getAttributeValue(STRICT_RELATIONS, "id"),
                    state == null || state.equals("visible") ? Visibility.VISIBLE : Visibility.HIDDEN));
        }
    }

    private InputStream limited(InputStream part, long most, String what) {
        return part == null ? null : new LimitedPart(part, most, file, what);
    }

    public List<Sheet> sheets() {
        return List.copyOf(sheets);
    }

    public DateSystem dates() {
        return dates;
    }

    /** Opens a sheet at its first row. */
    public SheetRecords records(Sheet sheet) throws IOException {
        try {
            return new SheetRecords(
                    reader.getSheet(sheet.relation()), new SheetCells(texts, styles, dates), file, sheet.name());
        } catch (OpenXML4JException | XMLStreamException | RuntimeException damaged) {
            throw damaged(file, 0, damaged);
        }
    }

    @Override
    public void close() {
        parts.revert();
    }
}
