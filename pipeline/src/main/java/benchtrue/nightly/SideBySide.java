package benchtrue.nightly;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;

/** Files written side by side, on all processors. */
final class SideBySide {
    private SideBySide() {}

    /** Writes files of its own, which no other writing touches. */
    interface Writing {
        void write() throws IOException;
    }

    /**
     * Runs all writings; the one that takes longest should stand first. Every one ends before a failure is told, so that
     * nothing is written once the caller clears up; the first in the given order is told, so that the owner reads the same
     * words each time.
     */
    static void write(List<Writing> writings) throws IOException {
        List<ForkJoinTask<Optional<Exception>>> ends = new ArrayList<>();
        for (Writing writing : writings) {
            ends.add(ForkJoinTask.adapt(() -> failure(writing)));
        }
        // Other threads take from the front; this one runs the first, then what they left, from the end.
        ends.stream().skip(1).forEach(ForkJoinTask::fork);
        ends.stream().limit(1).forEach(ForkJoinTask::invoke);
        for (int last = ends.size() - 1; last > 0; last--) {
            ends.get(last).join();
        }
        Optional<Exception> first =
                ends.stream().flatMap(end -> end.join().stream()).findFirst();
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
