package benchtrue.intake;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes a workbook of one sheet by hand, faster than a library would. */
final class SheetWriter {
    private static final String MAIN = "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    private SheetWriter() {}

    /** A cell: text, or a number in format 0 general, 1 a date, 2 a time of day, 3 hours beyond 24. */
    record SheetCell(String text, int format) {
        static final int TEXT = -1;
    }

    static byte[] workbook(List<List<SheetCell>> rows) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            put(
                    zip,
                    "[Content_Types].xml",
                    "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                            + "<Default Extension=\"rels\""
                            + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                            + part("/xl/workbook.xml", "sheet.main") + part("/xl/worksheets/sheet1.xml", "worksheet")
                            + part("/xl/styles.xml", "styles") + "</Types>");
            put(zip, "_rels/.rels", relations(relation(1, "officeDocument", "xl/workbook.xml")));
            put(
                    zip,
                    "xl/workbook.xml",
                    "<workbook " + MAIN + " xmlns:r=\"" + OFFICE
                            + "\"><sheets><sheet name=\"export\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>");
            put(
                    zip,
                    "xl/_rels/workbook.xml.rels",
                    relations(relation(1, "worksheet", "worksheets/sheet1.xml") + relation(2, "styles", "styles.xml")));
            put(
                    zip,
                    "xl/styles.xml",
                    "<styleSheet " + MAIN
                            + "><numFmts count=\"1\"><numFmt numFmtId=\"164\" formatCode=\"[h]:mm\"/></numFmts><cellXfs>"
                            + "<xf numFmtId=\"0\"/><xf numFmtId=\"14\"/><xf numFmtId=\"20\"/><xf numFmtId=\"164\"/>"
                            + "</cellXfs></styleSheet>");
            put(zip, "xl/worksheets/sheet1.xml", sheet(rows));
        }
        return bytes.toByteArray();
    }

    private static String part(String name, String kind) {
        return "<Override PartName=\"" + name + "\" ContentType=\"" + TYPE + kind + "+xml\"/>";
    }

    private static String relations(String relations) {
        return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">" + relations
                + "</Relationships>";
    }

    private static String relation(int number, String kind, String target) {
        return "<Relationship Id=\"rId" + number + "\" Type=\"" + OFFICE + "/" + kind + "\" Target=\"" + target
                + "\"/>";
    }

    private static void put(ZipOutputStream zip, String name, String xml) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(xml.getBytes(StandardCharsets.UTF_8));
    }

    private static String sheet(List<List<SheetCell>> rows) {
        StringBuilder xml = new StringBuilder("<worksheet " + MAIN + "><sheetData>");
        for (int row = 0; row < rows.size(); row++) {
            xml.append("<row r=\"").append(row + 1).append("\">");
            for (int cell = 0; cell < rows.get(row).size(); cell++) {
                cell(xml, rows.get(row).get(cell), column(cell) + (row + 1));
            }
            xml.append("</row>");
        }
        return xml.append("</sheetData></worksheet>").toString();
    }

    private static void cell(StringBuilder xml, SheetCell cell, String place) {
        if (cell.text().isEmpty()) {
            return;
        }
        xml.append("<c r=\"").append(place).append('"');
        if (cell.format() == SheetCell.TEXT) {
            xml.append(" t=\"inlineStr\"><is><t>").append(escaped(cell.text())).append("</t></is></c>");
        } else {
            xml.append(" s=\"")
                    .append(cell.format())
                    .append("\"><v>")
                    .append(cell.text())
                    .append("</v></c>");
        }
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\r", "&#13;");
    }

    private static String column(int cell) {
        return cell < 26 ? String.valueOf((char) ('A' + cell)) : column(cell / 26 - 1) + column(cell % 26);
    }
}
