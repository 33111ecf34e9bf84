package benchtrue.revision;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import benchtrue.shop.Surcharge;
import benchtrue.shop.Ticket;
import java.util.List;
import java.util.Optional;

/**
 * What the newest version of the price book in force changed against the one before.
 *
 * @param from first day of the version before; of the first version, the beginning of time
 * @param effective first day of the newest version
 * @param earlier the version before
 * @param newest the newest version
 * @param before by repair-type code, the entry before, null where its hours and price stayed
 * @param since the entry since, likewise
 */
record ChangedTypes(
        int from, int effective, PriceBook earlier, PriceBook newest, RepairType[] before, RepairType[] since) {
    /** Returns the change; empty where only one version has been in force, or the newest changed nothing. */
    static Optional<ChangedTypes> of(Ledger ledger) {
        List<PriceBook> inForce = ledger.books().versions().stream()
                .filter(version -> version.effective() <= ledger.asOf())
                .toList();
        if (inForce.size() < 2) {
            return Optional.empty();
        }
        PriceBook newest = inForce.get(inForce.size() - 1);
        PriceBook earlier = inForce.get(inForce.size() - 2);
        int from = inForce.size() == 2 ? Absent.DAY : earlier.effective();
        int types = ledger.repairTypes().size();
        ChangedTypes changed = new ChangedTypes(
                from, newest.effective(), earlier, newest, new RepairType[types], new RepairType[types]);
        boolean any = false;
        for (int type = 0; type < types; type++) {
            any |= changed.take(type, earlier, newest, ledger.repairTypes().name(type));
        }
        return any ? Optional.of(changed) : Optional.empty();
    }

    private boolean take(int type, PriceBook earlier, PriceBook newest, String key) {
        Optional<RepairType> was = earlier.type(key);
        Optional<RepairType> is = newest.type(key);
        boolean differs = was.isPresent()
                && is.isPresent()
                && !(was.get().quotesAs(is.get()) && of(earlier, key).equals(of(newest, key)));
        if (differs) {
            before[type] = was.get();
            since[type] = is.get();
        }
        return differs;
    }

    private static List<Surcharge> of(PriceBook book, String key) {
        return book.surcharges().stream()
                .filter(line -> line.repairType().equals(key))
                .toList();
    }

    /** Returns the money that surcharges of the newest version ask for a visit's repair beyond those of the one before. */
    long surcharges(String key, Ticket ticket) {
        return labour(newest, key, ticket) - labour(earlier, key, ticket);
    }

    /** Returns whether a quote is priced by the newest version's surcharges rather than by those of the one before. */
    boolean follows(long labour, int type, String key, Ticket ticket) {
        long beside = labour - since[type].bookLabour();
        return Math.abs(beside - labour(newest, key, ticket)) <= Math.abs(beside - labour(earlier, key, ticket));
    }

    private static long labour(PriceBook book, String key, Ticket ticket) {
        return book.surcharges(key, ticket).stream()
                .mapToLong(Surcharge::labour)
                .sum();
    }

    boolean changed(int type) {
        return before[type] != null;
    }

    int count() {
        int count = 0;
        for (RepairType type : before) {
            count += type == null ? 0 : 1;
        }
        return count;
    }
}
