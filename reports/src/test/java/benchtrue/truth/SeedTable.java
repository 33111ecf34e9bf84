package benchtrue.truth;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.LongFunction;
import java.util.stream.Collectors;

/**
 * Sums of figures over the shops of many seeds. Where the system property {@code truth.folder} names a folder, the figures of
 * each seed are kept there and not reckoned again, so that a long table can be made in parts and resumed; the properties
 * {@code truth.from} and {@code truth.seeds} set which seeds.
 */
final class SeedTable {
    private static final String FOLDER = System.getProperty("truth.folder", "");

    private final String name;
    private final long from;
    private final int seeds;

    private SeedTable(String name, long from, int seeds) {
        this.name = name;
        this.from = from;
        this.seeds = seeds;
    }

    /**
     * Returns a table.
     *
     * @param name of its file
     * @param from first seed, where no property says otherwise
     * @param seeds how many, likewise
     */
    static SeedTable of(String name, long from, int seeds) {
        return new SeedTable(name, Long.getLong("truth.from", from), Integer.getInteger("truth.seeds", seeds));
    }

    int seeds() {
        return seeds;
    }

    String range() {
        return "seeds " + from + " to " + (from + seeds - 1);
    }

    /** Returns the sums over the seeds of what each one gives. */
    double[] sums(LongFunction<double[]> figures) {
        Map<Long, double[]> kept = kept();
        double[] sums = new double[0];
        for (long seed = from; seed < from + seeds; seed++) {
            double[] row = kept.get(seed);
            if (row == null) {
                row = figures.apply(seed);
                keep(seed, row);
            }
            sums = Arrays.copyOf(sums, row.length);
            for (int i = 0; i < row.length; i++) {
                sums[i] += row[i];
            }
        }
        return sums;
    }

    private Path file() {
        return Path.of(FOLDER, name + ".csv");
    }

    private Map<Long, double[]> kept() {
        Map<Long, double[]> kept = new HashMap<>();
        if (FOLDER.isEmpty() || !Files.exists(file())) {
            return kept;
        }
        try {
            for (String line : Files.readAllLines(file())) {
                String[] cells = line.split(",");
                kept.put(
                        Long.valueOf(cells[0]),
                        Arrays.stream(cells)
                                .skip(1)
                                .mapToDouble(Double::parseDouble)
                                .toArray());
            }
            return kept;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void keep(long seed, double[] row) {
        if (FOLDER.isEmpty()) {
            return;
        }
        String cells = Arrays.stream(row).mapToObj(Double::toString).collect(Collectors.joining(","));
        try {
            Files.createDirectories(file().getParent());
            Files.writeString(file(), seed + "," + cells + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
