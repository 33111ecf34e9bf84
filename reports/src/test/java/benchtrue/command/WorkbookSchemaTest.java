package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.XMLConstants;
import javax.xml.transform.Source;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.Validator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.ErrorHandler;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Every part of a night's workbooks, held by the JDK's validator against the published schemas of Open XML, transitional. */
class WorkbookSchemaTest {
    private static final String SCHEMAS = "/org/apache/poi/schemas/ooxml/src/";
    private static final Pattern PART = Pattern.compile(
            "xl/(workbook|styles|sharedStrings|(worksheets|tables|drawings|charts)/[a-zA-Z]+[0-9]+)\\.xml"
                    + "|docProps/app\\.xml");
    private static Schema schema;

    @BeforeAll
    static void theSchemas() throws SAXException {
        SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
        schema = factory.newSchema(Stream.of(
                        "shared-relationshipReference",
                        "shared-commonSimpleTypes",
                        "dml-main",
                        "dml-chartDrawing",
                        "dml-chart",
                        "dml-spreadsheetDrawing",
                        "sml",
                        "shared-documentPropertiesVariantTypes",
                        "shared-documentPropertiesExtended")
                .map(WorkbookSchemaTest::source)
                .toArray(Source[]::new));
    }

    private static Source source(String name) {
        URL file = WorkbookSchemaTest.class.getResource(SCHEMAS + name + ".xsd");
        assertThat(file).as(name + ".xsd, which the build unpacks").isNotNull();
        return new StreamSource(file.toString());
    }

    private static TreeMap<String, byte[]> parts(Path workbook) throws IOException {
        TreeMap<String, byte[]> parts = new TreeMap<>();
        try (InputStream bytes = Files.newInputStream(workbook);
                ZipInputStream zip = new ZipInputStream(bytes)) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                if (PART.matcher(part.getName()).matches()) {
                    parts.put(part.getName(), zip.readAllBytes());
                }
            }
        }
        return parts;
    }

    private static List<String> faults(String part, byte[] xml) throws IOException, SAXException {
        List<String> faults = new ArrayList<>();
        Validator validator = schema.newValidator();
        validator.setErrorHandler(new ErrorHandler() {
            @Override
            public void warning(SAXParseException fault) {
                error(fault);
            }

            @Override
            public void error(SAXParseException fault) {
                faults.add(part + ", line " + fault.getLineNumber() + ": " + fault.getMessage());
            }

            @Override
            public void fatalError(SAXParseException fault) {
                error(fault);
            }
        });
        validator.validate(new StreamSource(new ByteArrayInputStream(xml)));
        return faults;
    }

    @ParameterizedTest
    @ValueSource(strings = {"review.xlsx", "price-book-revision.xlsx", "breakdowns.xlsx", "price-list.xlsx"})
    void aWorkbookMeetsTheRulesOfOpenXml(String name) throws IOException, SAXException {
        TreeMap<String, byte[]> parts = parts(OneNight.onTheSample().results().resolve(name));
        assertThat(parts)
                .containsKeys("xl/workbook.xml", "xl/styles.xml", "xl/worksheets/sheet1.xml", "docProps/app.xml");
        List<String> faults = new ArrayList<>();
        for (var part : parts.entrySet()) {
            faults.addAll(faults(part.getKey(), part.getValue()));
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void aSizeThatIsNoneIsFound() throws IOException, SAXException {
        String font =
                "<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><fonts count=\"1\">"
                        + "<font><name val=\"Arial\"/><b/><sz val=\"ten\"/></font></fonts></styleSheet>";
        assertThat(faults("xl/styles.xml", font.getBytes(StandardCharsets.UTF_8)))
                .anyMatch(fault -> fault.contains("'ten'"));
    }
}
