package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.BookColumn;
import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.SurchargeColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.ExitCode;
import benchtrue.shop.PriceBook;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.Refusal;
import benchtrue.shop.RepairType;
import benchtrue.shop.Surcharge;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Builds the versions of the price book. */
final class BuildBooks {
    private static final String SURCHARGES = "surcharges/";
    private final RowDispositions table;
    private final TableRows rows;
    private final RowDispositions surcharges;

    BuildBooks(RowDispositions table, RowDispositions surcharges) {
        this.table = table;
        this.surcharges = surcharges;
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
        TreeMap<Integer, List<Surcharge>> lines = surcharges(types);
        List<PriceBook> versions = new ArrayList<>();
        for (InputFile file : rows.files()) {
            if (Absent.has(file.day())) {
                Map.Entry<Integer, List<Surcharge>> last = lines.floorEntry(file.day());
                versions.add(version(
                        file, types.getOrDefault(file.day(), Map.of()), last == null ? List.of() : last.getValue()));
            }
        }
        return new PriceBooks(versions);
    }

    /** Returns the lines with conditions by the first day of their version, which holds until the next. */
    private TreeMap<Integer, List<Surcharge>> surcharges(Map<Integer, Map<String, RepairType>> types) {
        TreeMap<Integer, List<Surcharge>> versions = new TreeMap<>();
        TableRows from = surcharges.rows();
        for (InputFile file : from.files()) {
            if (file.name().startsWith(SURCHARGES) && types.containsKey(file.day())) {
                versions.put(file.day(), new ArrayList<>());
            }
        }
        for (int row = 0; row < surcharges.size(); row++) {
            InputFile file = from.files().get(surcharges.file(row));
            String type = from.text(SurchargeColumn.REPAIR_TYPE, row);
            boolean known = types.values().stream().anyMatch(book -> book.containsKey(type));
            if (surcharges.accepted(row) && !known) {
                surcharges.setAside(row, SurchargeColumn.REPAIR_TYPE, type, "a repair type of a price book");
            }
            if (surcharges.accepted(row) && !versions.containsKey(file.day())) {
                surcharges.setAside(
                        row, SurchargeColumn.REPAIR_TYPE, file.name(), "a price book of that day beside it");
            }
            if (surcharges.accepted(row)) {
                versions.get(file.day())
                        .add(new Surcharge(
                                type,
                                from.text(SurchargeColumn.WHEN, row),
                                from.value(SurchargeColumn.HOURS, row),
                                from.value(SurchargeColumn.PRICE, row),
                                from.text(SurchargeColumn.TITLE, row)));
            }
        }
        return versions;
    }

    private static PriceBook version(InputFile file, Map<String, RepairType> types, List<Surcharge> surcharges) {
        if (types.isEmpty()) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file.name() + ": found no repair type that can be used, expected at least one. Correct the rows or"
                            + " take the file out.");
        }
        return new PriceBook(file.day(), types, surcharges);
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
