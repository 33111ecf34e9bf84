package benchtrue;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.RepairType;
import java.math.BigDecimal;
import java.util.List;

/** A row of a price book at 100 an hour. */
final class TypeRow {
    private TypeRow() {}

    static RepairType of(String key, String title, double bookHours) {
        long seconds = Hours.seconds(BigDecimal.valueOf(bookHours));
        return new RepairType(
                key,
                title,
                "fretwork",
                seconds,
                Money.perHour(100 * Money.UNIT, seconds),
                Absent.AMOUNT,
                List.of(),
                Absent.AMOUNT,
                0);
    }
}
