package benchtrue.nightly;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;

/** Work on files of a run, side by side, on all processors. */
final class SideBySide {
    private SideBySide() {}

    /** Touches files of its own, which no other work touches. */
    interface Work {
        void run() throws IOException;
    }

    /**
     * Runs all; the one that takes longest should stand first. Every one ends before a failure is told, so that
     * nothing is written once the caller clears up; the first in the given order is told, so that the owner reads the same
     * words each time.
     */
    static void run(List<Work> all) throws IOException {
        List<ForkJoinTask<Optional<Exception>>> ends = new ArrayList<>();
        for (Work work : all) {
            ends.add(ForkJoinTask.adapt(() -> failure(work)));
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

    private static Optional<Exception> failure(Work work) {
        try {
            work.run();
            return Optional.empty();
        } catch (IOException | RuntimeException failed) {
            return Optional.of(failed);
        }
    }
}
