package benchtrue.sample;

import java.util.List;

/**
 * What a trait does.
 *
 * @param trait its word
 * @param factor what it multiplies hours by
 * @param families the families it does so for
 */
public record TraitTruth(String trait, double factor, List<String> families) {
    public TraitTruth {
        families = List.copyOf(families);
    }
}
