package benchtrue.hours;

import benchtrue.hours.EntryPlaces.Place;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.TimeEntries;
import java.util.Arrays;

/** Who spent most of each line's seconds; a tie goes to the earlier name. */
final class MainTechnicians {
    private final TimeEntries time;
    private final LineFacts facts;
    private final PlacedTime placed;
    private final long[] splitSeconds;
    private final double[] score;
    private final int[] main;

    private MainTechnicians(Ledger ledger, LineFacts facts, PlacedTime placed, long[] splitSeconds) {
        time = ledger.time();
        this.facts = facts;
        this.placed = placed;
        this.splitSeconds = splitSeconds;
        score = new double[ledger.technicians().size()];
        main = new int[splitSeconds.length];
        Arrays.fill(main, Absent.INDEX);
    }

    /** Returns by line the technician with the most seconds on it, or {@link Absent#INDEX}. */
    static int[] find(Ledger ledger, LineFacts facts, PlacedTime placed, long[] splitSeconds) {
        MainTechnicians find = new MainTechnicians(ledger, facts, placed, splitSeconds);
        EntriesOfLines.visit(find.time, facts.starts, (from, to, line) -> find.main[line] = find.main(from, to, line));
        find.shared();
        return find.main;
    }

    private int main(int from, int to, int line) {
        double perWhole = splitSeconds[line] / (double) Math.max(1, placed.wholeSeconds[facts.ticket[line]]);
        int best = Absent.INDEX;
        for (int entry = from; entry < to; entry++) {
            int technician = time.technician(entry);
            if (placed.line[entry] == line) {
                score[technician] += time.seconds(entry);
            } else if (placed.place[entry] == Place.OVER_TICKET.ordinal()) {
                score[technician] += perWhole * time.seconds(entry);
            }
        }
        for (int entry = from; entry < to; entry++) {
            best = better(time.technician(entry), best);
        }
        for (int entry = from; entry < to; entry++) {
            score[time.technician(entry)] = 0;
        }
        return best;
    }

    private int better(int technician, int best) {
        if (score[technician] <= 0) {
            return best;
        }
        boolean better =
                best < 0 || score[technician] > score[best] || (score[technician] == score[best] && technician < best);
        return better ? technician : best;
    }

    /** A line worked on only in entries that several tickets share goes to whoever logged the first of them. */
    private void shared() {
        for (int entry : placed.sharedSeconds.keySet()) {
            for (int ticket : time.sharedTickets(entry)) {
                for (int line = facts.starts[ticket]; line < facts.starts[ticket + 1]; line++) {
                    if (main[line] < 0 && splitSeconds[line] > 0) {
                        main[line] = time.technician(entry);
                    }
                }
            }
        }
    }
}
