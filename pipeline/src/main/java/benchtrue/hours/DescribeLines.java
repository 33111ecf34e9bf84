package benchtrue.hours;

import benchtrue.hours.EntryPlaces.Place;
import benchtrue.hours.JobLines.LineColumns;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.TimeEntries;
import java.util.Arrays;

/** Says of each line how its hours are known and what a reader should know about them. */
final class DescribeLines {
    private DescribeLines() {}

    static LineColumns describe(
            Ledger ledger,
            LineFacts facts,
            Returns returns,
            PlacedTime placed,
            long[] splitSeconds,
            double[] expectedHours,
            TraceRework rework) {
        int size = splitSeconds.length;
        boolean[] judged = judged(facts, placed);
        byte[] evidence = new byte[size];
        byte[] marks = new byte[size];
        for (int line = 0; line < size; line++) {
            boolean neverLogged = facts.ordinary[line] && !judged[line];
            evidence[line] = (byte) evidence(facts, placed, splitSeconds, line).ordinal();
            marks[line] = (byte) (bit(LineMark.QUOTE_FROM_BOOK, facts.quoteFromBook[line])
                    | bit(LineMark.REWORK_SHARED, rework.shared[line])
                    | bit(LineMark.REWORK_WITHOUT_REASON, rework.withoutReason[line])
                    | bit(LineMark.NEVER_LOGGED, neverLogged)
                    | bit(LineMark.PUTS_RIGHT, returns.kind(line) == ReturnKind.FAILURE)
                    | bit(LineMark.SETTLES, returns.kind(line) == ReturnKind.SETTLING));
        }
        return new LineColumns(
                facts.state,
                placed.labelledSeconds,
                splitSeconds,
                rework.reworkSeconds,
                rework.settlingSeconds,
                facts.bookSecondsThen,
                facts.todayHours,
                MainTechnicians.find(ledger, facts, placed, splitSeconds),
                judged,
                evidence,
                marks,
                expectedHours);
    }

    /** Returns by line whether it is an ordinary closed job on a ticket with bench time. */
    static boolean[] judged(LineFacts facts, PlacedTime placed) {
        boolean[] judged = facts.ordinary.clone();
        for (int line = 0; line < judged.length; line++) {
            judged[line] &= placed.logged(facts, facts.ticket[line]);
        }
        return judged;
    }

    static int bit(LineMark mark, boolean set) {
        return set ? 1 << mark.ordinal() : 0;
    }

    private static SplitEvidence evidence(LineFacts facts, PlacedTime placed, long[] splitSeconds, int line) {
        if (placed.labelledSeconds[line] + splitSeconds[line] == 0) {
            return SplitEvidence.NONE;
        }
        if (splitSeconds[line] == 0 || alone(facts, placed, line)) {
            return SplitEvidence.LOGGED;
        }
        return placed.labelledSeconds[line] == 0 ? SplitEvidence.SPLIT : SplitEvidence.PARTLY_SPLIT;
    }

    /** The only line that its ticket's time can go to. */
    private static boolean alone(LineFacts facts, PlacedTime placed, int line) {
        int ticket = facts.ticket[line];
        int takers = 0;
        for (int other = facts.starts[ticket]; other < facts.starts[ticket + 1]; other++) {
            takers += facts.takesHours[other] ? 1 : 0;
        }
        return takers == 1 && facts.takesHours[line] && placed.dealtSeconds[line] == 0;
    }

    /** Who spent most of each line's seconds; a tie goes to the earlier name. */
    static final class MainTechnicians {
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
            EntriesOfLines.visit(
                    find.time, facts.starts, (from, to, line) -> find.main[line] = find.main(from, to, line));
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
            boolean better = best < 0
                    || score[technician] > score[best]
                    || (score[technician] == score[best] && technician < best);
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
}
