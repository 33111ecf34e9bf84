package benchtrue.reconcile;

import benchtrue.format.Words;
import benchtrue.shop.Notice;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Counts doubtful rows and keeps the first few of each kind as examples. */
final class Doubts {
    private static final int EXAMPLES = 5;
    private final Map<Doubt, Long> counts = new EnumMap<>(Doubt.class);
    private final Map<Doubt, List<String>> examples = new EnumMap<>(Doubt.class);

    void add(Doubt doubt, Supplier<String> example) {
        counts.merge(doubt, 1L, Long::sum);
        List<String> few = examples.computeIfAbsent(doubt, first -> new ArrayList<>());
        if (few.size() < EXAMPLES) {
            few.add(example.get());
        }
    }

    void addAll(Doubts others) {
        others.counts.forEach((doubt, count) -> counts.merge(doubt, count, Long::sum));
        others.examples.forEach((doubt, more) -> {
            List<String> few = examples.computeIfAbsent(doubt, first -> new ArrayList<>());
            few.addAll(more.subList(0, Math.min(more.size(), EXAMPLES - few.size())));
        });
    }

    List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        counts.forEach(
                (doubt, count) -> notices.add(new Notice(Words.of(doubt), doubt.words(), count, examples.get(doubt))));
        return notices;
    }
}
