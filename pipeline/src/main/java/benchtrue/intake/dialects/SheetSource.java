package benchtrue.intake.dialects;

import benchtrue.intake.cells.DateSystem;
import benchtrue.intake.cells.NumberText;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.files.Records;
import benchtrue.intake.files.SheetRecords;
import benchtrue.intake.files.Workbook;
import benchtrue.settings.DecimalSign;
import benchtrue.shop.Notice;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;

/**
 * The sheet of a workbook that holds the table.
 *
 * @param path where the workbook lies
 * @param sheet its place among the workbook's sheets
 * @param headerRow row of the column names, from 1
 * @param title what stands above them
 * @param serials from which day dates count
 * @param reasons how that was told
 * @param hidden names of hidden sheets, which are not read
 */
record SheetSource(
        Path path,
        int sheet,
        int headerRow,
        String title,
        DateSystem serials,
        List<String> reasons,
        List<String> hidden,
        String file)
        implements Source {
    SheetSource {
        reasons = List.copyOf(reasons);
        hidden = List.copyOf(hidden);
    }

    @Override
    public Records open(InputStream bytes, String name) throws IOException {
        return open(name, Width.OF_THE_HEADER);
    }

    @Override
    public Records openWide(InputStream bytes, String name) throws IOException {
        return open(name, Width.OF_EACH_ROW);
    }

    private OpenSheet open(String name, Width width) throws IOException {
        Workbook workbook = Workbook.open(path, name);
        if (sheet >= workbook.sheets().size()) {
            workbook.close();
            throw Workbook.damaged(name, 0, new IOException("the sheet is gone"));
        }
        return new OpenSheet(workbook, workbook.sheets().get(sheet), headerRow, width);
    }

    /** A sheet's own numbers are plain; text in it may have a comma, and tells by itself unless three figures follow. */
    @Override
    public DecimalSign decimals(NumberText.Sign sign, DialectEvidence evidence) {
        return switch (sign) {
            case POINT, OPEN_POINT, SILENT -> DecimalSign.POINT;
            case COMMA -> DecimalSign.COMMA;
            case OPEN_COMMA -> evidence.count(DecimalSign.COMMA) > 0 ? DecimalSign.COMMA : null;
        };
    }

    @Override
    public List<Notice> notices() {
        return hidden.isEmpty()
                ? List.of()
                : List.of(new Notice(
                        "hidden-sheet",
                        "Hidden sheets of a workbook were not read: show them, or name one in shop.toml, if they should be.",
                        hidden.size(),
                        hidden.stream()
                                .limit(5)
                                .map(name -> file + ": sheet \"" + Problem.shown(name) + "\"")
                                .toList()));
    }

    /** How many cells a row has. */
    private enum Width {
        OF_THE_HEADER,
        OF_EACH_ROW
    }

    /** A sheet's rows, with the workbook they are read from. */
    static final class OpenSheet implements Records {
        private final Workbook workbook;
        private final SheetRecords rows;
        private final Width width;

        OpenSheet(Workbook workbook, Workbook.Sheet sheet, int headerRow, Width width) throws IOException {
            this.workbook = workbook;
            this.width = width;
            rows = workbook.records(sheet);
            rows.skipTo(headerRow);
        }

        @Override
        public boolean next() throws IOException {
            if (width == Width.OF_EACH_ROW) {
                rows.forgetWidth();
            }
            return rows.next();
        }

        @Override
        public int line() {
            return rows.line();
        }

        @Override
        public int size() {
            return rows.size();
        }

        @Override
        public byte[] bytes() {
            return rows.bytes();
        }

        @Override
        public int start(int cell) {
            return rows.start(cell);
        }

        @Override
        public int end(int cell) {
            return rows.end(cell);
        }

        @Override
        public void close() throws IOException {
            try (workbook) {
                rows.close();
            }
        }
    }
}
