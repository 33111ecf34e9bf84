package benchtrue.nightly;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/**
 * {@code out/adopted}: what an adopted book leaves for people and for other systems, from the hour of its adoption until the
 * next night has it among its results. Only for the holder of the shop's lock.
 */
final class HandedOut {
    private static final String FOLDER = "adopted";

    private HandedOut() {}

    /** Writes reports in the place of what an earlier adoption left there; returns the folder. */
    static Path write(Review review, List<Report> reports, Path out) throws IOException {
        Path partial = out.resolve("." + FOLDER + RunFolder.PARTIAL);
        remove(partial);
        OwnerOnly.folder(partial);
        for (Report report : reports) {
            report.write(review, partial);
        }
        RunFolder.restrict(partial);
        clear(out);
        return Files.move(partial, out.resolve(FOLDER), StandardCopyOption.ATOMIC_MOVE);
    }

    static void clear(Path out) throws IOException {
        remove(out.resolve(FOLDER));
    }

    private static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            RunFolder.remove(folder);
        }
    }
}
