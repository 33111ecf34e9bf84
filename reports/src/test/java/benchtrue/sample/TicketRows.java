package benchtrue.sample;

import java.io.Closeable;
import java.io.IOException;

/** Writes {@code tickets}. */
final class TicketRows implements Closeable {
    private static final String HEADER =
            "ticket,opened,promised,closed,status,instrument_class,built_year,traits,quoted_by,rework_of,finished";

    private final World world;
    private final Overlap exports;
    private final Row row = new Row();

    TicketRows(World world, Tally tally) throws IOException {
        this.world = world;
        this.exports = new Overlap(world, "tickets", HEADER, tally);
    }

    void take(Worked worked) throws IOException {
        int opened = worked.visit().opened();
        if (exports.inOlder(opened)) {
            exports.write(opened, row(worked, History.OLDER_EXPORT), row(worked, History.AS_OF));
        } else {
            exports.write(row(worked, History.AS_OF));
        }
    }

    /** Writes a row whose key or date is not what it should be. */
    void writeFaulty(String ticket, String opened) throws IOException {
        row.text(ticket).text(opened).blanks(2).text("open").text("flat-top").blanks(5);
        exports.write(row.end());
    }

    private String row(Worked worked, int exported) {
        Visit visit = worked.visit();
        boolean closed = worked.closed() <= exported;
        row.text(visit.ticket()).anyDay(visit.opened());
        promised(worked);
        row.day(closed ? worked.closed() : Bench.NEVER)
                .text(status(visit, closed))
                .text(InstrumentClass.ALL[visit.instrument()].name());
        if (visit.builtYear() == 0) {
            row.blank();
        } else {
            row.number(visit.builtYear());
        }
        row.text(Trait.words(visit.traits())).text(Staff.WRITERS.get(visit.writer()));
        row.text(visit.back().is() ? Visit.ticket(visit.back().ticket()) : "");
        row.day(worked.finished() <= exported ? worked.finished() : Bench.NEVER);
        return row.end();
    }

    private String status(Visit visit, boolean closed) {
        if (visit.fate() == Fate.VOID) {
            return "void";
        }
        boolean leftEmpty = world.options().untidy() && visit.index() % 29 == 11;
        return leftEmpty ? "" : closed ? "closed" : "open";
    }

    private void promised(Worked worked) {
        Visit visit = worked.visit();
        long quoted = visit.lines().stream().mapToLong(Line::quotedSeconds).sum();
        int days = 14 + (int) (quoted / 3_600) * 2;
        if (visit.index() % 7 == 3) {
            row.blank();
        } else {
            row.anyDay(visit.opened() + days);
        }
    }

    @Override
    public void close() throws IOException {
        exports.close();
    }
}
