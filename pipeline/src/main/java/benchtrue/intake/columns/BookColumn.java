package benchtrue.intake.columns;

/** A column of {@code price-book}. */
public enum BookColumn implements Column {
    REPAIR_TYPE(Cell.needed(Kind.TEXT, "the shop's own key of the repair type")),
    TITLE(Cell.needed(Kind.TEXT, "what the bench calls it")),
    FAMILY(Cell.needed(Kind.TEXT, "setup, fretwork, structural, finish, electronics, fitting, ...")),
    BOOK_HOURS(Cell.needed(Kind.HOURS, "standard hours")),
    BOOK_LABOUR(Cell.needed(Kind.MONEY, "standard labour price")),
    LEAST_HOURS(Cell.maybe(Kind.HOURS, "shortest safe hours: glue, cure and safety steps that may not be cut")),
    HAZARDS(Cell.maybe(Kind.WORDS, "what can hurt, such as solvent")),
    LEAST_LABOUR(Cell.maybe(Kind.MONEY, "minimum charge")),
    FREE_WEEKS(Cell.maybe(Kind.COUNT, "weeks of free adjustment after the job"));

    private final Cell cell;

    BookColumn(Cell cell) {
        this.cell = cell;
    }

    @Override
    public Cell cell() {
        return cell;
    }
}
