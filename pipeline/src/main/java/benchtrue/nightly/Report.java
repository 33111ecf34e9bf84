package benchtrue.nightly;

import java.io.IOException;
import java.nio.file.Path;

/** Something a person opens, written into the folder that is not published yet. */
public interface Report {
    /** Writes the report's files into a folder. */
    void write(Review review, Path folder) throws IOException;
}
