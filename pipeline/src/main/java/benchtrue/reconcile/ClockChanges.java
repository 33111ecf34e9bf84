package benchtrue.reconcile;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.zone.ZoneRules;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Turns readings of the shop's clocks into moments, so that a stretch over a change between winter and summer time counts
 * the seconds that passed. Of an hour that comes twice the first counts; one that is left out is read as the hour after it.
 */
final class ClockChanges {
    private static final long DAY = 86_400;
    private final ZoneRules rules;
    private final Map<Integer, Offset> known = new ConcurrentHashMap<>();

    /** How far a day's clocks stand from UTC in seconds, at its beginning and at its end. */
    private record Offset(int beginning, int end) {}

    ClockChanges(ZoneId zone) {
        rules = zone.getRules();
    }

    /**
     * Returns the moment of a reading in seconds since 1970-01-01 UTC.
     *
     * @param day days since 1970-01-01
     * @param second of that day, 86,400 or more on the next
     */
    long moment(int day, long second) {
        if (rules.isFixedOffset()) {
            return day * DAY + second;
        }
        int of = day + (int) (second / DAY);
        Offset offset = known.computeIfAbsent(of, fresh -> new Offset(offset(fresh, 0), offset(fresh, DAY)));
        int at = offset.beginning == offset.end ? offset.beginning : offset(of, second % DAY);
        return day * DAY + second - at;
    }

    private int offset(int day, long second) {
        LocalDateTime time = LocalDate.ofEpochDay(day).atStartOfDay().plusSeconds(second);
        return rules.getOffset(time).getTotalSeconds();
    }
}
