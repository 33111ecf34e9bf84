package benchtrue.sample;

import benchtrue.format.Words;
import java.io.Closeable;
import java.io.IOException;

/** Writes {@code waits}. */
final class WaitRows implements Closeable {
    private final CsvFile file;
    private final Row row = new Row();

    WaitRows(World world) throws IOException {
        this.file = new CsvFile(world.options().folder().resolve("exports/waits.csv"), "ticket,from,to,reason");
    }

    void take(Worked worked) throws IOException {
        for (Pause pause : worked.pauses()) {
            write(worked.visit().ticket(), pause);
        }
    }

    void write(String ticket, Pause pause) throws IOException {
        row.text(ticket).day(pause.from()).day(pause.to());
        file.write(row.text(Words.of(pause.reason())).end());
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
