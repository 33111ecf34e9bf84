package benchtrue.intake;

import benchtrue.intake.columns.BookColumn;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.Mapping;
import benchtrue.shop.Absent;
import benchtrue.shop.RepairType;
import java.util.Arrays;
import java.util.List;

/** What a row of a version holds in each column of a file. */
final class BookCells {
    private BookCells() {}

    /** Returns the text of a column that holds text. */
    static String text(BookColumn column, RepairType type) {
        return switch (column) {
            case REPAIR_TYPE -> type.repairType();
            case TITLE -> type.title();
            case FAMILY -> type.family();
            case HAZARDS -> String.join(";", type.hazards());
            default -> throw new IllegalArgumentException(column.header());
        };
    }

    /** Returns the amount of a column that holds one, in the unit that it is read in; absent where there is none. */
    static long amount(BookColumn column, RepairType type) {
        return switch (column) {
            case BOOK_HOURS -> type.bookSeconds();
            case BOOK_LABOUR -> type.bookLabour();
            case LEAST_HOURS -> type.leastSeconds();
            case LEAST_LABOUR -> type.leastLabour();
            case FREE_WEEKS -> type.freeWeeks() > 0 ? type.freeWeeks() : Absent.AMOUNT;
            default -> throw new IllegalArgumentException(column.header());
        };
    }

    /** Returns whether a file's row says the same as a version's. */
    static boolean same(BookColumn column, TableRows rows, int row, RepairType type) {
        if (column.cell().kind().isText()) {
            return words(column, rows.text(column, row)).equals(words(column, text(column, type)));
        }
        long found = rows.value(column, row);
        return found == amount(column, type) || column == BookColumn.FREE_WEEKS && found == 0 && type.freeWeeks() == 0;
    }

    private static List<String> words(BookColumn column, String text) {
        return column.cell().kind() == Kind.WORDS
                ? Arrays.stream(text.split(";"))
                        .map(Mapping::plain)
                        .filter(word -> !word.isEmpty())
                        .distinct()
                        .sorted()
                        .toList()
                : List.of(text.strip());
    }
}
