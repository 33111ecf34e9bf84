package benchtrue.intake;

import java.io.IOException;

/** A sheet's rows, with the workbook they are read from. */
final class OpenSheet implements Records {
    private final Workbook workbook;
    private final SheetRecords rows;

    OpenSheet(Workbook workbook, Workbook.Sheet sheet, int headerRow) throws IOException {
        this.workbook = workbook;
        rows = workbook.records(sheet);
        rows.skipTo(headerRow);
    }

    @Override
    public boolean next() throws IOException {
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
