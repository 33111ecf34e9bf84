package benchtrue.nightly;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** Announces each stage of a run and keeps how long it took. */
final class Stages {
    private final int of;
    private final Progress progress;
    private final Clock clock;
    private final Map<String, Duration> took = new LinkedHashMap<>();

    Stages(int of, Progress progress, Clock clock) {
        this.of = of;
        this.progress = progress;
        this.clock = clock;
    }

    <T> T run(String what, Supplier<T> stage) {
        progress.begins(took.size() + 1, of, what);
        Instant began = clock.instant();
        T result = stage.get();
        took.put(what, Duration.between(began, clock.instant()));
        return result;
    }

    /** Returns how long each stage took, in order. */
    Map<String, Duration> took() {
        return new LinkedHashMap<>(took);
    }
}
