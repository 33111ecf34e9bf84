package benchtrue.sample;

/**
 * Work that is found on the bench.
 *
 * @param repairType accepted work on this type
 * @param finds shows that this type is needed too
 * @param chance with this probability, where the ticket does not quote it already and has fewer than six lines
 */
public record FoundTruth(String repairType, String finds, double chance) {}
