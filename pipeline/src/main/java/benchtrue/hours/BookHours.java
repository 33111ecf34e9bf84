package benchtrue.hours;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import benchtrue.shop.Surcharge;
import java.util.List;
import java.util.Optional;

/** The book's hours and family of each repair type, by code and version, looked up once. */
final class BookHours {
    private final int[] effective;
    private final long[][] seconds;
    private final String[] family;
    private final int today;
    private final Ledger ledger;

    BookHours(Ledger ledger) {
        this.ledger = ledger;
        List<PriceBook> versions = ledger.books().versions();
        effective = versions.stream().mapToInt(PriceBook::effective).toArray();
        int types = ledger.repairTypes().size();
        seconds = new long[effective.length][types];
        family = new String[types];
        for (int version = 0; version < effective.length; version++) {
            for (int type = 0; type < types; type++) {
                Optional<RepairType> row =
                        ledger.books().type(ledger.repairTypes().name(type), effective[version]);
                seconds[version][type] =
                        row.map(RepairType::bookSeconds).filter(s -> s > 0).orElse(Absent.AMOUNT);
                family[type] = row.map(RepairType::family).orElse("");
            }
        }
        today = version(ledger.asOf());
    }

    /** Returns how many repair types there are. */
    int types() {
        return family.length;
    }

    /** Returns the book's seconds of a type on a day, or absent for a type in no book. */
    long seconds(int type, int day) {
        return seconds[version(day)][type];
    }

    /** Returns the book's seconds of a type on the as-of date, or absent. */
    long secondsToday(int type) {
        return seconds[today][type];
    }

    /** Returns the book's seconds of a type on a ticket's instrument on a day, its surcharges included, or absent. */
    long seconds(int type, int ticket, int day) {
        long plain = seconds(type, day);
        return Absent.has(plain) ? plain + surcharges(type, ticket, version(day)) : plain;
    }

    /** Returns the same on the as-of date. */
    long secondsToday(int type, int ticket) {
        long plain = secondsToday(type);
        return Absent.has(plain) ? plain + surcharges(type, ticket, today) : plain;
    }

    private long surcharges(int type, int ticket, int version) {
        PriceBook book = ledger.books().versions().get(version);
        return book.surcharges().isEmpty()
                ? 0
                : book
                        .surcharges(
                                ledger.repairTypes().name(type),
                                ledger.tickets().get(ticket))
                        .stream()
                        .mapToLong(Surcharge::seconds)
                        .sum();
    }

    /** Returns a type's family in the newest book; empty for a type in no book. */
    String family(int type) {
        return family[type];
    }

    private int version(int day) {
        int version = 0;
        while (version + 1 < effective.length && effective[version + 1] <= day) {
            version++;
        }
        return version;
    }
}
