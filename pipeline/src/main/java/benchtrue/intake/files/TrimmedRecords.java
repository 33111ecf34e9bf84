package benchtrue.intake.files;

import java.io.IOException;

/** Records without what only looks like the table: the empty cell behind the last delimiter, the totals row. */
public final class TrimmedRecords implements Records {
    private final Records records;
    private final int surplus;
    private final int totalsLine;
    private long read;

    /**
     * Takes what to leave out.
     *
     * @param surplus empty cells at the end of every row but the header
     * @param totalsLine line of the totals row, or -1
     */
    public TrimmedRecords(Records records, int surplus, int totalsLine) {
        this.records = records;
        this.surplus = surplus;
        this.totalsLine = totalsLine;
    }

    @Override
    public boolean next() throws IOException {
        read++;
        return records.next() && records.line() != totalsLine;
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
    public void close() throws IOException {
        records.close();
    }
}
