package benchtrue.hours;

import java.util.Map;

/**
 * Cancels a negative entry within its ticket where it landed elsewhere than the entry it takes back, so that no line and no
 * sum is left negative.
 */
final class CancelCorrections {
    private final LineFacts facts;
    private final PlacedTime placed;
    private long owed;

    CancelCorrections(LineFacts facts, PlacedTime placed) {
        this.facts = facts;
        this.placed = placed;
    }

    void cancel(int ticket) {
        owed = 0;
        collect(ticket);
        if (owed > 0) {
            payBack(ticket);
            placed.unmatchedSeconds -= owed;
        }
    }

    private void collect(int ticket) {
        collect(placed.wholeSeconds, ticket);
        collect(placed.withoutLineSeconds, ticket);
        for (int line = facts.starts[ticket]; line < facts.starts[ticket + 1]; line++) {
            collect(placed.labelledSeconds, line);
            collect(placed.dealtSeconds, line);
        }
        for (Map.Entry<Long, Long> row : unquoted(ticket).entrySet()) {
            owed += Math.max(0, -row.getValue());
            row.setValue(Math.max(0, row.getValue()));
        }
    }

    private void payBack(int ticket) {
        pay(placed.wholeSeconds, ticket);
        pay(placed.withoutLineSeconds, ticket);
        for (int line = facts.starts[ticket]; line < facts.starts[ticket + 1]; line++) {
            pay(placed.labelledSeconds, line);
            pay(placed.dealtSeconds, line);
        }
        for (Map.Entry<Long, Long> row : unquoted(ticket).entrySet()) {
            long paid = Math.min(owed, row.getValue());
            row.setValue(row.getValue() - paid);
            owed -= paid;
        }
    }

    private Map<Long, Long> unquoted(int ticket) {
        return placed.unquotedSeconds.subMap(PlacedTime.key(ticket, 0), PlacedTime.key(ticket + 1, 0));
    }

    private void collect(long[] seconds, int place) {
        owed += Math.max(0, -seconds[place]);
        seconds[place] = Math.max(0, seconds[place]);
    }

    private void pay(long[] seconds, int place) {
        long paid = Math.min(owed, seconds[place]);
        seconds[place] -= paid;
        owed -= paid;
    }
}
