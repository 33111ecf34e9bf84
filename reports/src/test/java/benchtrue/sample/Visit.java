package benchtrue.sample;

import java.util.List;

/**
 * One visit of one instrument as it is booked in.
 *
 * @param index place in the history
 * @param opened day it came in
 * @param instrument its class
 * @param traits its traits, one bit each
 * @param builtYear year built, 0 where nobody knows
 * @param writer who wrote the quote
 * @param lines what was quoted, found work last
 * @param fate what becomes of it
 * @param back why it is back, or {@link ComeBack#NONE}
 * @param fault what is wrong with its records
 */
record Visit(
        int index,
        int opened,
        int instrument,
        int traits,
        int builtYear,
        int writer,
        List<Line> lines,
        Fate fate,
        ComeBack back,
        Fault fault) {
    Visit {
        lines = List.copyOf(lines);
    }

    /** Returns the ticket's key in the exports. */
    String ticket() {
        return ticket(index);
    }

    static String ticket(int index) {
        return "B-" + (1_001 + index);
    }

    Visit with(List<Line> others, Fate otherFate) {
        return new Visit(index, opened, instrument, traits, builtYear, writer, others, otherFate, back, fault);
    }
}
