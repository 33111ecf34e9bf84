package benchtrue.reconcile;

import benchtrue.intake.TextColumn;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.Longs;
import benchtrue.statistics.Quantile;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What quotes and time log tell of tickets: when each was first quoted, first and last worked on, and how long work pauses. */
final class TicketDays {
    /** Nearly all pauses are no longer than this share of them. */
    private static final double NEARLY_ALL = 0.99;

    /** Of fewer pauses the longest tells too little. */
    private static final int FEWEST_PAUSES = 30;

    /** An instrument may rest for weeks; common practice, no source: a neglected one a couple of months. */
    private static final int LEAST_SILENCE = 28;

    private static final int USUAL_REST = 60;

    private final TreeMap<String, Days> days = new TreeMap<>();
    private final int asOf;
    private int lastDay = Absent.DAY;
    private int pauses;
    private int silence;

    /** The days of one ticket, each absent where nothing tells it. */
    static final class Days {
        private int quoted = Absent.DAY;
        private int worked = Absent.DAY;
        private int last = Absent.DAY;
        private boolean onQuote;

        /** Returns the first day quoted, else the first day worked. */
        int opened() {
            return Absent.firstOf(quoted, worked);
        }

        /** Returns the last day worked. */
        int last() {
            return last;
        }

        /** Returns whether a quote names the ticket. */
        boolean onQuote() {
            return onQuote;
        }
    }

    /**
     * Takes what counts up to a day.
     *
     * @param silence days without work after which a ticket counts as finished, or absent: then told from the pauses
     */
    TicketDays(RowDispositions quotes, RowDispositions time, int asOf, int silence) {
        this.asOf = asOf;
        takeQuotes(quotes);
        takeWork(time);
        this.silence = Absent.firstOf(silence, this.silence);
    }

    private void takeQuotes(RowDispositions quotes) {
        for (int row = 0; row < quotes.size(); row++) {
            String key = quotes.rows().text(LineColumn.TICKET, row);
            if (quotes.inQuestion(row) && !key.isEmpty()) {
                Days found = days.computeIfAbsent(key, fresh -> new Days());
                int day = quotes.rows().day(LineColumn.QUOTED_ON, row);
                found.onQuote = true;
                if (Absent.has(day) && day <= asOf) {
                    found.quoted = Absent.has(found.quoted) ? Math.min(found.quoted, day) : day;
                }
            }
        }
    }

    private void takeWork(RowDispositions time) {
        TextColumn tickets = time.rows().column(TimeColumn.TICKET);
        Longs worked = new Longs();
        int count = 0;
        for (int row = 0; row < time.size(); row++) {
            int day = time.rows().day(TimeColumn.WORK_DATE, row);
            int code = time.rows().code(TimeColumn.TICKET, row);
            if (time.inQuestion(row) && code != 0 && Absent.has(day) && day <= asOf) {
                worked.add((long) code << 32 | day + (1L << 31));
                count++;
            }
        }
        for (int code = 1; code < tickets.distinct(); code++) {
            keys(tickets.text(code)).forEach(key -> days.computeIfAbsent(key, fresh -> new Days()));
        }
        long[] sorted = worked.toArray();
        Arrays.sort(sorted);
        double[] gaps = new double[count];
        for (int i = 0; i < count; i++) {
            int day = (int) ((sorted[i] & 0xFFFFFFFFL) - (1L << 31));
            int code = (int) (sorted[i] >> 32);
            boolean same = i > 0 && (int) (sorted[i - 1] >> 32) == code;
            if (same && sorted[i] > sorted[i - 1]) {
                gaps[pauses++] = sorted[i] - sorted[i - 1];
            }
            keys(tickets.text(code)).forEach(key -> take(key, day));
        }
        silence = silence(Quantile.sorted(Arrays.copyOf(gaps, pauses)));
    }

    private static Stream<String> keys(String text) {
        return Stream.of(text.split(";")).map(String::strip).filter(key -> !key.isEmpty());
    }

    private void take(String key, int day) {
        Days found = days.get(key);
        found.worked = Absent.has(found.worked) ? Math.min(found.worked, day) : day;
        found.last = Absent.has(found.last) ? Math.max(found.last, day) : day;
        lastDay = Absent.has(lastDay) ? Math.max(lastDay, day) : day;
    }

    private static int silence(double[] gaps) {
        int most = gaps.length == 0 ? 0 : (int) StrictMath.ceil(Quantile.of(gaps, NEARLY_ALL));
        return Math.max(most, gaps.length < FEWEST_PAUSES ? USUAL_REST : LEAST_SILENCE) + 1;
    }

    /** Returns the tickets that quotes and time log name, by key. */
    Map<String, Days> all() {
        return days;
    }

    /** Returns the day on which a ticket was opened; where nothing tells it, the last day of the log, else the as-of date. */
    int opened(String key) {
        int opened = Optional.ofNullable(days.get(key)).map(Days::opened).orElse(Absent.DAY);
        return Absent.firstOf(opened, Absent.firstOf(lastDay, asOf));
    }

    /** Returns the last day worked, or absent. */
    int last(String key) {
        return Optional.ofNullable(days.get(key)).map(Days::last).orElse(Absent.DAY);
    }

    /** Returns the day on which a ticket counts as done because nobody worked on it since, or absent. */
    int doneBySilence(String key) {
        int last = last(key);
        return Absent.has(last) && last + silence <= asOf ? last + silence : Absent.DAY;
    }

    /** Returns days without work after which a ticket counts as finished. */
    int silence() {
        return silence;
    }

    /** Returns how many pauses were seen. */
    int pauses() {
        return pauses;
    }
}
