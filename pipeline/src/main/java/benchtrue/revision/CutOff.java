package benchtrue.revision;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * One cut-off of the back-test: what was known before it, tried on the jobs quoted in the quarter that it begins.
 *
 * @param day first day of the quarter
 * @param scores by method
 * @param railed the same with every method's hours within the guard rails and rounded; without {@link PastMethod#POLICY}
 */
public record CutOff(int day, Map<PastMethod, PastScore> scores, Map<PastMethod, PastScore> railed) {
    public CutOff {
        scores = Collections.unmodifiableMap(new EnumMap<>(scores));
        railed = Collections.unmodifiableMap(new EnumMap<>(railed));
    }
}
