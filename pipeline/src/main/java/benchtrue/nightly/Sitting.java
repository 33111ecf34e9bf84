package benchtrue.nightly;

import benchtrue.format.Words;
import benchtrue.revision.Decision;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the owner decided in one sitting, as {@code decisions/} keeps it.
 *
 * @param file its name
 * @param effective first day of the book that it was decided for
 * @param decidedOn day of the decision
 * @param draft digest of the draft
 * @param rows what was decided
 * @param surcharges how many lines with a condition were decided beside them
 */
record Sitting(String file, int effective, int decidedOn, String draft, List<Row> rows, int surcharges) {
    Sitting {
        rows = List.copyOf(rows);
    }

    /**
     * One decided row.
     *
     * @param repairType key of the repair
     * @param kept whether it stays as it is until a day
     * @param seconds hours decided
     * @param labour price decided
     * @param reason why, in the owner's words
     * @param until day until which it is kept, absent where it is not
     */
    record Row(String repairType, boolean kept, long seconds, long labour, String reason, int until) {
        /** Returns whether a book has this row as it was decided. */
        boolean standsIn(PriceBook book) {
            Optional<RepairType> type = book.type(repairType);
            return type.isPresent()
                    && type.get().bookSeconds() == seconds
                    && type.get().bookLabour() == labour;
        }
    }

    static Sitting read(String file, JsonObject record) throws IOException {
        List<Row> rows = new ArrayList<>();
        for (JsonObject row : record.objects("decisions")) {
            boolean kept = row.text("decision").equals(Words.of(Decision.Choice.KEEP));
            rows.add(new Row(
                    row.text("repair_type"),
                    kept,
                    Hours.seconds(new BigDecimal(row.text("hours"))),
                    Money.of(new BigDecimal(row.text("labour"))),
                    row.text("reason"),
                    kept ? day(row.text("until")) : Absent.DAY));
        }
        return new Sitting(
                file,
                day(record.text("effective")),
                day(record.text("decided_on")),
                record.text("draft_sha256"),
                rows,
                record.has("surcharges") ? record.objects("surcharges").size() : 0);
    }

    static int day(String date) {
        return (int) LocalDate.parse(date).toEpochDay();
    }
}
