package benchtrue.sample;

import benchtrue.format.Words;
import benchtrue.shop.TimeKind;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;

/**
 * Writes {@code time-log}: one file in a tidy shop, one a year in an untidy shop. There the oldest file has no key
 * column, and every later one repeats the last days of the year before, some of them corrected.
 */
final class TimeRows implements Closeable {
    private static final String HEADER =
            "entry,ticket,line,repair_type,technician,work_date,hours,start,end,kind,entered_at,note";
    private static final int REPEATED_FROM_DAY = 18;
    private static final int CORRECTED_EVERY = 9;
    private static final int CORRECTION = 1_800;
    private static final int OPENS = 9 * 3_600;
    private static final String[] NOTES = {
        "board cupped, took longer", "customer called, \"no rush\"", "waited for the clamp", "string through, tight"
    };
    private static final int NOTE_EVERY = 41;

    private final World world;
    private final Tally tally;
    private final CsvFile[] years;
    private final int firstYear;
    private final Row row = new Row();

    private long entries;

    TimeRows(World world, Tally tally) throws IOException {
        this.world = world;
        this.tally = tally;
        this.firstYear = year(world.history().start());
        Path exports = world.options().folder().resolve("exports");
        if (!world.options().untidy()) {
            years = new CsvFile[] {new CsvFile(exports.resolve("time-log.csv"), HEADER)};
            return;
        }
        years = new CsvFile[year(History.AS_OF) - firstYear + 1];
        for (int i = 0; i < years.length; i++) {
            String header = i == 0 ? HEADER.substring("entry,".length()) : HEADER;
            years[i] = new CsvFile(exports.resolve("time-log-" + (firstYear + i) + ".csv"), header);
        }
    }

    private static int year(int day) {
        return LocalDate.ofEpochDay(day).getYear();
    }

    void write(Session session) throws IOException {
        long entry = ++entries;
        if (!world.options().untidy()) {
            years[0].write(row(entry, session, session.seconds()));
            return;
        }
        LocalDate date = LocalDate.ofEpochDay(session.day());
        int place = date.getYear() - firstYear;
        boolean repeated = place > 0
                && place + 1 < years.length
                && date.getMonth() == Month.DECEMBER
                && date.getDayOfMonth() >= REPEATED_FROM_DAY;
        if (repeated) {
            repeat(entry, session, place);
        } else {
            years[place].write(row(place == 0 ? 0 : entry, session, session.seconds()));
        }
    }

    private void repeat(long entry, Session session, int place) throws IOException {
        LogStyle style = world.staff().technicians().get(session.technician()).style();
        boolean corrected = entry % CORRECTED_EVERY == 0 && style == LogStyle.DECIMAL;
        long first = session.seconds() + (corrected ? CORRECTION : 0);
        years[place].write(row(entry, session, first));
        years[place + 1].write(row(entry, session, session.seconds()));
        tally.add((corrected ? "superseded " : "repeated ") + "time-log");
    }

    /** Returns a row; without its key where {@code entry} is 0. */
    private String row(long entry, Session session, long seconds) {
        Technician technician = world.staff().technicians().get(session.technician());
        if (entry > 0) {
            row.text("E" + entry);
        }
        row.text(session.tickets());
        if (session.line() == 0) {
            row.blank();
        } else {
            row.number(session.line());
        }
        row.text(session.type() == Catalogue.ONE_OFF ? "" : world.catalogue().key(session.type()))
                .text(technician.name())
                .day(session.day());
        time(technician.style(), session, seconds);
        row.text(session.kind() == TimeKind.BENCH ? "" : Words.of(session.kind()));
        boolean noted = world.options().untidy() && entries % NOTE_EVERY == 0;
        row.blank().text(noted ? NOTES[(int) (entries / NOTE_EVERY % NOTES.length)] : "");
        return row.end();
    }

    private void time(LogStyle style, Session session, long seconds) {
        switch (style) {
            case DECIMAL -> row.hours(seconds).blanks(2);
            case HOURS_AND_MINUTES ->
                row.text(clock(seconds).replaceFirst("^0", "")).blanks(2);
            case CLOCK ->
                row.blank()
                        .text(clock(OPENS + session.fromSeconds()))
                        .text(clock(OPENS + session.fromSeconds() + seconds));
        }
    }

    private static String clock(long seconds) {
        long minutes = seconds / 60;
        long rest = minutes % 60;
        return (minutes / 60 < 10 ? "0" : "") + minutes / 60 + (rest < 10 ? ":0" : ":") + rest;
    }

    /** One entry, cell by cell, as a person might have typed it. */
    record Typed(String ticket, String line, String technician, String date, String hours, String start, String end) {
        static Typed of(String ticket, String technician, int day, String hours) {
            return new Typed(ticket, "", technician, LocalDate.ofEpochDay(day).toString(), hours, "", "");
        }

        Typed onLine(String other) {
            return new Typed(ticket, other, technician, date, hours, start, end);
        }

        Typed dated(String other) {
            return new Typed(ticket, line, technician, other, hours, start, end);
        }

        Typed from(String begin, String finish) {
            return new Typed(ticket, line, technician, date, "", begin, finish);
        }
    }

    /** Writes one typed entry into the file of a day's year. */
    void write(Typed typed, int day) throws IOException {
        int place = year(day) - firstYear;
        ++entries;
        if (place > 0) {
            row.text("E" + entries);
        }
        row.text(typed.ticket()).text(typed.line()).blank().text(typed.technician());
        row.text(typed.date()).text(typed.hours()).text(typed.start()).text(typed.end());
        years[place].write(row.blanks(3).end());
    }

    @Override
    public void close() throws IOException {
        for (CsvFile year : years) {
            year.close();
        }
    }
}
