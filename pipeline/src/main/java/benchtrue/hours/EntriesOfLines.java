package benchtrue.hours;

import benchtrue.shop.TimeEntries;

/** Goes through the lines of every ticket, each with the entries of its ticket, which stand together in the log. */
final class EntriesOfLines {
    private EntriesOfLines() {}

    /** Is told each line with the entries {@code from} up to and without {@code to}. */
    interface Visitor {
        void visit(int from, int to, int line);
    }

    /** Entries without a ticket, or that several share, belong to no line here. */
    static void visit(TimeEntries time, int[] lineStarts, Visitor visitor) {
        int from = 0;
        while (from < time.size()) {
            int ticket = time.ticket(from);
            int to = from + 1;
            while (to < time.size() && time.ticket(to) == ticket) {
                to++;
            }
            for (int line = ticket < 0 ? 0 : lineStarts[ticket]; ticket >= 0 && line < lineStarts[ticket + 1]; line++) {
                visitor.visit(from, to, line);
            }
            from = to;
        }
    }
}
