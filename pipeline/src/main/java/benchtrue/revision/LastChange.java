package benchtrue.revision;

import java.util.Map;
import java.util.TreeMap;

/**
 * The last change of the price book and what became of it (methods, section 8).
 *
 * @param effective first day of the newest version in force
 * @param days days since, the as-of date counted
 * @param byType repair types whose hours or price changed, by code
 * @param together all of them together, at the mix of jobs as it was
 * @param sentence whether the change worked, for the owner
 */
public record LastChange(int effective, int days, Map<Integer, FollowUp> byType, FollowUp together, String sentence) {
    public LastChange {
        byType = java.util.Collections.unmodifiableMap(new TreeMap<>(byType));
    }
}
