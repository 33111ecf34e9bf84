package benchtrue.hours;

import benchtrue.hours.EntryPlaces.Place;
import benchtrue.shop.TimeEntries;
import java.util.Arrays;

/**
 * Who worked on each line, as far as the log can say: those who named it, else those on the ticket as a whole. The two with
 * most seconds and the share of the first; the number of technicians stands for nobody.
 */
final class Workers {
    final int[] first;
    final int[] second;
    final float[] firstShare;
    private final int nobody;
    private final TimeEntries time;
    private final PlacedTime placed;
    private final double[] score;

    Workers(TimeEntries time, LineFacts facts, PlacedTime placed, int technicians) {
        this.time = time;
        this.placed = placed;
        nobody = technicians;
        int lines = facts.ticket.length;
        first = new int[lines];
        second = new int[lines];
        firstShare = new float[lines];
        score = new double[technicians];
        Arrays.fill(first, nobody);
        Arrays.fill(second, nobody);
        EntriesOfLines.visit(time, facts.starts, this::find);
        shared(facts);
    }

    private void find(int from, int to, int line) {
        boolean named = placed.labelledSeconds[line] > 0;
        for (int entry = from; entry < to; entry++) {
            boolean counts = named ? placed.line[entry] == line : placed.place[entry] == Place.OVER_TICKET.ordinal();
            score[time.technician(entry)] += counts ? time.seconds(entry) : 0;
        }
        first[line] = most(from, to, nobody);
        if (first[line] != nobody) {
            second[line] = most(from, to, first[line]);
            double other = second[line] == nobody ? 0 : score[second[line]];
            firstShare[line] = (float) (score[first[line]] / (score[first[line]] + other));
        }
        for (int entry = from; entry < to; entry++) {
            score[time.technician(entry)] = 0;
        }
    }

    private int most(int from, int to, int except) {
        int best = nobody;
        for (int entry = from; entry < to; entry++) {
            int technician = time.technician(entry);
            if (score[technician] > 0 && technician != except) {
                boolean better = best == nobody
                        || score[technician] > score[best]
                        || (score[technician] == score[best] && technician < best);
                best = better ? technician : best;
            }
        }
        return best;
    }

    /** A line worked on only in entries that several tickets share was done by whoever logged the first of them. */
    private void shared(LineFacts facts) {
        for (int entry : placed.sharedSeconds.keySet()) {
            for (int ticket : time.sharedTickets(entry)) {
                for (int line = facts.starts[ticket]; line < facts.starts[ticket + 1]; line++) {
                    if (first[line] == nobody && facts.accepted(line)) {
                        first[line] = time.technician(entry);
                        firstShare[line] = 1;
                    }
                }
            }
        }
    }
}
