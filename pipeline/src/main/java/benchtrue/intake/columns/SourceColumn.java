package benchtrue.intake.columns;

/** A column of a set-aside file that says where a row came from. */
public enum SourceColumn implements Column {
    SOURCE_FILE(Cell.maybe(Kind.TEXT, "the file the row stood in")),
    SOURCE_LINE(Cell.maybe(Kind.COUNT, "the line it stood on")),
    SOURCE_DIGEST(Cell.maybe(Kind.TEXT, "digest of what stood there")),
    REASONS(Cell.maybe(Kind.PASSED, "why it was set aside"));

    private final Cell cell;

    SourceColumn(Cell cell) {
        this.cell = cell;
    }

    @Override
    public Cell cell() {
        return cell;
    }
}
