package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.BookColumn;
import benchtrue.intake.columns.InputFile;
import benchtrue.shop.Absent;
import benchtrue.shop.ExitCode;
import benchtrue.shop.PriceBook;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.Refusal;
import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Builds the versions of the price book. */
final class BuildBooks {
    private final RowDispositions table;
    private final TableRows rows;

    BuildBooks(RowDispositions table) {
        this.table = table;
        rows = table.rows();
    }

    PriceBooks build() {
        Map<Integer, Map<String, RepairType>> types = new HashMap<>();
        for (int row = 0; row < table.size(); row++) {
            InputFile version = rows.files().get(table.file(row));
            if (table.accepted(row) && !Absent.has(version.day())) {
                table.setAside(
                        row, BookColumn.REPAIR_TYPE, type(row).repairType(), "a row that came from a price book");
            }
            if (table.accepted(row)) {
                types.computeIfAbsent(version.day(), first -> new HashMap<>())
                        .put(type(row).repairType(), type(row));
            }
        }
        List<PriceBook> versions = new ArrayList<>();
        for (InputFile file : rows.files()) {
            if (Absent.has(file.day())) {
                versions.add(version(file, types.getOrDefault(file.day(), Map.of())));
            }
        }
        return new PriceBooks(versions);
    }

    private static PriceBook version(InputFile file, Map<String, RepairType> types) {
        if (types.isEmpty()) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file.name() + ": found no repair type that can be used, expected at least one. Correct the rows or"
                            + " take the file out.");
        }
        return new PriceBook(file.day(), types);
    }

    private RepairType type(int row) {
        int weeks = rows.day(BookColumn.FREE_WEEKS, row);
        return new RepairType(
                rows.text(BookColumn.REPAIR_TYPE, row),
                rows.text(BookColumn.TITLE, row),
                rows.text(BookColumn.FAMILY, row),
                rows.value(BookColumn.BOOK_HOURS, row),
                rows.value(BookColumn.BOOK_LABOUR, row),
                rows.value(BookColumn.LEAST_HOURS, row),
                Traits.of(rows.text(BookColumn.HAZARDS, row)),
                rows.value(BookColumn.LEAST_LABOUR, row),
                Absent.has(weeks) ? weeks : 0);
    }
}
