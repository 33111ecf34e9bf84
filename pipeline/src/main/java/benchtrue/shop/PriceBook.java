package benchtrue.shop;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One version of the price book.
 *
 * @param effective first day it is in force
 * @param types its repair types by key
 * @param surcharges its lines with conditions, by repair type then condition
 */
public record PriceBook(int effective, Map<String, RepairType> types, List<Surcharge> surcharges) {
    private static final Comparator<Surcharge> ORDER =
            Comparator.comparing(Surcharge::repairType).thenComparing(Surcharge::when);

    /** Takes a version without lines that have conditions. */
    public PriceBook(int effective, Map<String, RepairType> types) {
        this(effective, types, List.of());
    }

    public PriceBook {
        types = java.util.Collections.unmodifiableMap(new TreeMap<>(types));
        surcharges = surcharges.stream().sorted(ORDER).toList();
    }

    /** Returns the surcharges on a repair of a visit's instrument. */
    public List<Surcharge> surcharges(String repairType, Ticket ticket) {
        return surcharges.stream()
                .filter(line -> line.repairType().equals(repairType))
                .filter(line -> line.holds(ticket.instrumentClass(), ticket.traits(), ticket.builtYear()))
                .toList();
    }

    /** Returns a repair type of this version. */
    public Optional<RepairType> type(String repairType) {
        return Optional.ofNullable(types.get(repairType));
    }
}
