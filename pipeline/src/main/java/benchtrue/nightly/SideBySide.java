package benchtrue.nightly;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Files written side by side, on all processors. */
final class SideBySide {
    private SideBySide() {}

    /** Writes files of its own, which no other writing touches. */
    interface Writing {
        void write() throws IOException;
    }

    /**
     * Runs all writings. Every one ends before a failure is told, so that nothing is written once the caller clears up; the
     * first in the given order is told, so that the owner reads the same words each time.
     */
    static void write(List<Writing> writings) throws IOException {
        List<Optional<Exception>> ends =
                writings.parallelStream().map(SideBySide::failure).toList();
        Optional<Exception> first = ends.stream().flatMap(Optional::stream).findFirst();
        if (first.isPresent()) {
            if (first.get() instanceof IOException failed) {
                throw failed;
            }
            throw (RuntimeException) first.get();
        }
    }

    private static Optional<Exception> failure(Writing writing) {
        try {
            writing.write();
            return Optional.empty();
        } catch (IOException | RuntimeException failed) {
            return Optional.of(failed);
        }
    }
}
