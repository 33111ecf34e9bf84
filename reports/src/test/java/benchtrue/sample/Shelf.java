package benchtrue.sample;

import java.io.Closeable;
import java.io.IOException;

/**
 * The export files of the invented shop that grow with every visit.
 *
 * @param world the shop
 * @param tickets visits
 * @param lines quoted lines
 * @param time time log
 * @param parts parts
 * @param waits waiting
 */
record Shelf(World world, TicketRows tickets, LineRows lines, TimeRows time, PartRows parts, WaitRows waits)
        implements Closeable {
    static Shelf open(World world, Tally tally) throws IOException {
        return new Shelf(
                world,
                new TicketRows(world, tally),
                new LineRows(world, tally),
                new TimeRows(world, tally),
                new PartRows(world),
                new WaitRows(world));
    }

    String name(int technician) {
        return world.staff().technicians().get(technician).name();
    }

    void take(Worked worked) throws IOException {
        tickets.take(worked);
        lines.take(worked);
        for (Session session : worked.sessions()) {
            time.write(session);
        }
        parts.take(worked);
        waits.take(worked);
    }

    @Override
    public void close() throws IOException {
        try (tickets;
                lines;
                time;
                parts) {
            waits.close();
        }
    }
}
