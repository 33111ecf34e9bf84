package benchtrue.shop;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One version of the price book.
 *
 * @param effective first day it is in force
 * @param types its repair types by key
 */
public record PriceBook(int effective, Map<String, RepairType> types) {
    public PriceBook {
        types = java.util.Collections.unmodifiableMap(new TreeMap<>(types));
    }

    /** Returns a repair type of this version. */
    public Optional<RepairType> type(String repairType) {
        return Optional.ofNullable(types.get(repairType));
    }
}
