package benchtrue.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ShopFolder;
import benchtrue.intake.columns.PaidColumn;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.intake.columns.WaitColumn;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks as exports. */
class SheetTest {
    @TempDir
    Path folder;

    private final XSSFWorkbook workbook = new XSSFWorkbook();

    private XSSFSheet sheet(String name, int headerRow, String... names) {
        XSSFSheet sheet = workbook.createSheet(name);
        row(sheet, headerRow, (Object[]) names);
        return sheet;
    }

    /** Writes a row, from 1; text as text, numbers as numbers. */
    private static XSSFRow row(XSSFSheet sheet, int row, Object... cells) {
        XSSFRow there = sheet.createRow(row - 1);
        for (int cell = 0; cell < cells.length; cell++) {
            if (cells[cell] instanceof Number number) {
                there.createCell(cell).setCellValue(number.doubleValue());
            } else if (cells[cell] != null) {
                there.createCell(cell).setCellValue((String) cells[cell]);
            }
        }
        return there;
    }

    private void format(XSSFRow row, int cell, String format) {
        CellStyle style = workbook.createCellStyle();
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        row.getCell(cell).setCellStyle(style);
    }

    private byte[] bytes() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        workbook.write(bytes);
        return bytes.toByteArray();
    }

    private Exports read(String table) throws IOException {
        return read(table, bytes());
    }

    private Exports read(String table, byte[] bytes) {
        return new ShopFolder(folder).bytes("exports/" + table + ".xlsx", bytes).exports();
    }

    private void refused(String table, byte[] bytes, String... words) {
        assertThatThrownBy(() -> read(table, bytes))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.UNUSABLE_FILE))
                .hasMessageContaining("exports/" + table + ".xlsx")
                .hasMessageContainingAll(words);
    }

    private static int day(String date) {
        return (int) LocalDate.parse(date).toEpochDay();
    }

    @Test
    void datesTimesAndDurationsAreReadByTheirFormats() throws IOException {
        XSSFSheet sheet = sheet("log", 1, "entry", "technician", "work_date", "hours", "start", "end");
        XSSFRow row = row(sheet, 2, 1023, "Ada", 46090, 1.0 + 12.5 / 24, null, null);
        format(row, 2, "dd/mm/yyyy");
        format(row, 3, "[h]:mm");
        row = row(sheet, 3, "E2", "Ada", 46090.25, null, 0.5, 46090 + 14.0 / 24);
        format(row, 2, "yyyy-mm-dd hh:mm");
        format(row, 4, "h:mm AM/PM");
        format(row, 5, "h:mm");
        row(sheet, 4, "E3", "Ada", "9.3.2026", 6.6, null, null);
        row(sheet, 5, "E4", "Ada", 46090, "1,25", null, null);
        TableRows rows = read("time-log-a").rows(Table.TIME_LOG);
        assertThat(rows.text(TimeColumn.ENTRY, 0)).isEqualTo("1023");
        for (int i = 0; i < 4; i++) {
            assertThat(rows.day(TimeColumn.WORK_DATE, i)).isEqualTo(day("2026-03-09"));
            assertThat(rows.line(i)).isEqualTo(i + 2);
        }
        assertThat(rows.value(TimeColumn.HOURS, 0)).isEqualTo(36 * 3_600 + 1_800);
        assertThat(rows.value(TimeColumn.START, 1)).isEqualTo(12 * 3_600);
        assertThat(rows.value(TimeColumn.END, 1)).isEqualTo(14 * 3_600);
        assertThat(rows.value(TimeColumn.HOURS, 2)).isEqualTo(23_760);
        assertThat(rows.value(TimeColumn.HOURS, 3)).isEqualTo(4_500);
    }

    @Test
    void datesOfAWorkbookThatCountsFrom1904AreReadAsItShowsThem() throws IOException {
        workbook.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
        XSSFSheet sheet = sheet("waits", 1, "ticket", "from", "to", "reason");
        XSSFRow row = row(sheet, 2, "T1", 44561, 44561, "parts");
        format(row, 1, "dd/mm/yyyy");
        TableRows rows = read("waits").rows(Table.WAITS);
        assertThat(rows.day(WaitColumn.FROM, 0)).isEqualTo(day("2026-01-01"));
        assertThat(rows.day(WaitColumn.TO, 0)).isEqualTo(day("2026-01-01"));
    }

    @Test
    void theDayThatNeverWasIsNoDate() throws IOException {
        XSSFRow row = row(sheet("waits", 1, "ticket", "from", "reason"), 2, "T1", 60, "parts");
        format(row, 1, "dd/mm/yyyy");
        assertThat(read("waits").rows(Table.WAITS).readable(0)).isFalse();
    }

    @Test
    void formulasGiveTheValueThatIsStoredWithThem() throws IOException {
        XSSFSheet sheet = sheet("hours", 1, "technician", "month", "hours");
        row(sheet, 2, "Ada", "2026-03", null);
        sheet.getRow(1).createCell(2).setCellFormula("100+51.5");
        workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
        TableRows rows = read("paid-hours").rows(Table.PAID_HOURS);
        assertThat(rows.value(PaidColumn.HOURS, 0)).isEqualTo(545_400);
    }

    @Test
    void mergedTitlesHiddenSheetsAndNotesBesideTheTableAreReadPast() throws IOException {
        workbook.setSheetVisibility(
                workbook.getSheetIndex(sheet("last year", 1, "technician", "month", "hours")),
                org.apache.poi.ss.usermodel.SheetVisibility.HIDDEN);
        workbook.createSheet("notes").createRow(0).createCell(0).setCellValue("ask Bo");
        XSSFSheet sheet = sheet("March", 4, "technician", "month", "hours");
        row(sheet, 1, "Paid hours");
        sheet.addMergedRegion(new CellRangeAddress(0, 1, 0, 2));
        row(sheet, 6, "Ada", "2026-03", 120, null, "on leave from the 20th");
        row(sheet, 7, "Bo", "2026-03", 100.25);
        row(sheet, 8, "Total", null, 220.25);
        Exports exports = read("paid-hours");
        TableRows rows = exports.rows(Table.PAID_HOURS);
        assertThat(rows.size()).isEqualTo(2);
        assertThat(rows.line(0)).isEqualTo(6);
        assertThat(exports.notices())
                .filteredOn(notice -> notice.code().equals("hidden-sheet"))
                .singleElement()
                .satisfies(notice ->
                        assertThat(notice.examples()).containsExactly("exports/paid-hours.xlsx: sheet \"last year\""));
        assertThat(rows.files().get(0).told())
                .startsWith(
                        "sheet \"March\" (the only one with the columns)",
                        "column names in row 4 (the rows before hold none)");
    }

    @Test
    void twoSheetsThatCouldBeMeantAreRefusedWithTheKeyThatSettlesIt() throws IOException {
        sheet("March", 1, "technician", "month", "hours");
        sheet("April", 1, "technician", "month", "hours");
        refused("paid-hours", bytes(), "\"March\", \"April\"", "sheet = \"March\"");
    }

    @Test
    void aWorkbookWithAPasswordIsRefusedPlainly() throws Exception {
        sheet("waits", 1, "ticket", "from", "reason");
        ByteArrayOutputStream locked = new ByteArrayOutputStream();
        try (POIFSFileSystem files = new POIFSFileSystem()) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword("secret");
            try (java.io.OutputStream out = encryptor.getDataStream(files)) {
                out.write(bytes());
            }
            files.writeFilesystem(locked);
        }
        refused("waits", locked.toByteArray(), "with a password");
    }

    @Test
    void aWorkbookOfTheOldKindIsRefusedPlainly() throws IOException {
        ByteArrayOutputStream old = new ByteArrayOutputStream();
        try (POIFSFileSystem files = new POIFSFileSystem()) {
            files.createDocument(new ByteArrayInputStream(new byte[100]), "Workbook");
            files.writeFilesystem(old);
        }
        refused("waits", old.toByteArray(), "old kind (.xls)");
    }

    @Test
    void textUnderAWorkbooksNameIsRefusedPlainly() {
        refused("waits", "ticket,from,reason\n".getBytes(StandardCharsets.UTF_8), "let its name end in .csv");
        refused("waits", new byte[0], "an empty file");
        refused("waits", "PK\u0003\u0004 and no more".getBytes(StandardCharsets.UTF_8), "damaged");
    }

    private byte[] with(String part, byte[] content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes()));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                out.write(entry.getName().equals(part) ? content : in.readAllBytes());
            }
        }
        return bytes.toByteArray();
    }

    @Test
    void aWorkbookThatUnpacksWithoutEndIsRefused() throws IOException {
        sheet("waits", 1, "ticket", "from", "reason");
        byte[] bomb =
                ("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData><row r=\"1\">"
                                + " ".repeat(100_000_000))
                        .getBytes(StandardCharsets.UTF_8);
        refused("waits", with("xl/worksheets/sheet1.xml", bomb), "unpacks to far more than its size");
        refused("waits", with("xl/sharedStrings.xml", bomb), "unpacks to far more than its size");
    }

    @Test
    void xmlWithNestedEntitiesIsNotExpanded() throws IOException {
        sheet("waits", 1, "ticket", "from", "reason");
        StringBuilder bomb = new StringBuilder("<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a0 \"aaaaaaaaaa\">");
        for (int i = 1; i < 12; i++) {
            bomb.append("<!ENTITY a")
                    .append(i)
                    .append(" \"")
                    .append(("&a" + (i - 1) + ";").repeat(10))
                    .append("\">");
        }
        bomb.append(
                "]><worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData><row r=\"1\">"
                        + "<c r=\"A1\" t=\"str\"><v>&a11;</v></c></row></sheetData></worksheet>");
        byte[] bytes = bomb.toString().getBytes(StandardCharsets.UTF_8);
        refused("waits", with("xl/worksheets/sheet1.xml", bytes), "damaged");
        refused("waits", with("xl/sharedStrings.xml", bytes), "damaged");
        refused("waits", with("xl/workbook.xml", bytes), "damaged");
    }

    @Test
    void aSheetThatAsksForAnotherFileIsRefusedAndNothingIsRead() throws IOException {
        sheet("waits", 1, "ticket", "from", "reason");
        Path secret = Files.writeString(folder.resolve("secret.txt"), "till code 1234");
        byte[] asking = ("<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY secret SYSTEM \"" + secret.toUri()
                        + "\">]><worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>"
                        + "<row r=\"1\"><c r=\"A1\" t=\"str\"><v>&secret;</v></c></row></sheetData></worksheet>")
                .getBytes(StandardCharsets.UTF_8);
        for (String part : List.of("xl/worksheets/sheet1.xml", "xl/sharedStrings.xml", "xl/workbook.xml")) {
            assertThatThrownBy(() -> read("waits", with(part, asking)))
                    .as(part)
                    .isInstanceOf(Refusal.class)
                    .hasMessageContainingAll("exports/waits.xlsx", "damaged")
                    .hasMessageNotContaining("till code");
        }
    }

    /** A library that writes on its own where it finds no letters would put its words between those for the owner. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "[Content_Types].xml",
                "_rels/.rels",
                "xl/workbook.xml",
                "xl/_rels/workbook.xml.rels",
                "xl/styles.xml",
                "xl/sharedStrings.xml",
                "xl/worksheets/sheet1.xml"
            })
    void aDamagedPartIsToldByTheRefusalAlone(String part) throws IOException {
        sheet("waits", 1, "ticket", "from", "reason");
        for (String damaged : List.of("<a>\u00ff\u00ff</a>", "<a><b></a>", "<a", "\u00fe\u00ff\u00d8")) {
            byte[] bytes = with(part, damaged.getBytes(StandardCharsets.ISO_8859_1));
            PrintStream screen = System.err;
            ByteArrayOutputStream said = new ByteArrayOutputStream();
            System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
            try {
                refused("waits", bytes, "exports/waits.xlsx");
            } finally {
                System.setErr(screen);
            }
            assertThat(said.toString(StandardCharsets.UTF_8)).as(damaged).doesNotContain("[Fatal Error]");
        }
    }

    @Test
    void aSheetWithAMarkOrInUtf16IsReadAsTheFormatHasIt() throws IOException {
        sheet("waits", 1, "ticket", "from", "reason");
        String xml = "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>"
                + line(1, "ticket", "from", "reason") + line(2, "T\u00fc1", "2026-03-09", "parts")
                + "</sheetData></worksheet>";
        for (Charset letters : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16BE, StandardCharsets.UTF_16LE)) {
            TableRows rows = read("waits", with("xl/worksheets/sheet1.xml", ("\uFEFF" + xml).getBytes(letters)))
                    .rows(Table.WAITS);
            assertThat(rows.text(WaitColumn.TICKET, 0)).as(letters.name()).isEqualTo("T\u00fc1");
        }
    }

    private static String line(int row, String... cells) {
        return "<row r=\"" + row + "\"><c t=\"str\"><v>" + String.join("</v></c><c t=\"str\"><v>", cells)
                + "</v></c></row>";
    }
}
