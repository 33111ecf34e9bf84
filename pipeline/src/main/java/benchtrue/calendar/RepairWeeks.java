package benchtrue.calendar;

import benchtrue.shop.WaitReason;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How long visits with one repair as their largest, or of one kind, take from the day they come in to the day they are ready,
 * in calendar days of the last three years.
 *
 * @param repairType code of the repair type, {@link benchtrue.shop.Absent#INDEX} for the whole family
 * @param family its family
 * @param visits visits that came in
 * @param open those not ready yet, counted as far as they have come
 * @param middle days within which half were ready; NaN where that is not reached
 * @param most days within which four in five were ready
 * @param withdrawn share that ended without the work, told apart
 * @param queue average days until work began, waiting for other reasons left out; of visits that are ready
 * @param bench average days from then on
 * @param waits average days that they waited, by reason
 * @param promise days to promise today for such a repair alone, kept four times in five; absent where too little is known, and for some of its
 *     visits
 * @param group which of its visits, where a class of instrument or a season differs beyond chance; empty for all
 */
public record RepairWeeks(
        int repairType,
        String family,
        int visits,
        int open,
        double middle,
        double most,
        double withdrawn,
        double queue,
        double bench,
        Map<WaitReason, Double> waits,
        int promise,
        String group) {
    public RepairWeeks {
        Map<WaitReason, Double> copy = new EnumMap<>(WaitReason.class);
        copy.putAll(waits);
        waits = Collections.unmodifiableMap(copy);
    }
}
