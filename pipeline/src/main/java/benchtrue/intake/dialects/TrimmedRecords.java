package benchtrue.intake.dialects;

import benchtrue.intake.files.Records;
import java.io.IOException;

/** Records without what only looks like the table: the empty cell behind the last delimiter, rows that repeat or name others. */
final class TrimmedRecords implements Records {
    private final Records records;
    private final int surplus;
    private final RowForms forms;
    private long read;

    /**
     * Takes what to leave out.
     *
     * @param surplus empty cells at the end of every row but the header
     * @param forms which rows repeat or name others
     */
    TrimmedRecords(Records records, int surplus, RowForms forms) {
        this.records = records;
        this.surplus = surplus;
        this.forms = forms;
    }

    @Override
    public boolean next() throws IOException {
        read++;
        while (records.next() && !forms.isBehind(records.line())) {
            if (!forms.leftOut().containsKey(records.line())) {
                return true;
            }
        }
        return false;
    }

    @Override
    public int line() {
        return records.line();
    }

    @Override
    public int size() {
        return read == 1 ? records.size() : records.size() - surplus;
    }

    @Override
    public byte[] bytes() {
        return records.bytes();
    }

    @Override
    public int start(int cell) {
        return records.start(cell);
    }

    @Override
    public int end(int cell) {
        return records.end(cell);
    }

    @Override
    public String column() {
        return records.column();
    }

    @Override
    public void close() throws IOException {
        records.close();
    }
}
