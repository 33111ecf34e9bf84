package benchtrue.sample;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import java.util.function.Consumer;

/** A tidy shop's time log, written down otherwise than it was worked; the hours paid stay those that were worked. */
public final class RewrittenLog {
    private static final int LONGEST_MIX_UP = 3;

    private RewrittenLog() {}

    /** One entry, cell by cell. */
    public record Entry(String[] cells) {
        private static final int TICKET = 1;
        private static final int LINE = 2;
        private static final int TYPE = 3;
        private static final int TECHNICIAN = 4;
        private static final int DAY = 5;
        private static final int HOURS = 6;

        public String ticket() {
            return cells[TICKET];
        }

        String technician() {
            return cells[TECHNICIAN];
        }

        public LocalDate day() {
            return LocalDate.parse(cells[DAY]);
        }

        public double hours() {
            return Double.parseDouble(cells[HOURS]);
        }

        public void hours(BigDecimal other) {
            cells[HOURS] = other.toPlainString();
        }

        /** Names another ticket, and nothing of the ticket that it was for. */
        void ticket(String other) {
            cells[TICKET] = other;
            cells[LINE] = "";
            cells[TYPE] = "";
        }
    }

    /** Changes the entries of a shop's time log that state hours. */
    public static void rewrite(Path shop, Consumer<List<Entry>> change) throws IOException {
        Path log = shop.resolve("exports/time-log.csv");
        List<String> rows = Files.readAllLines(log, StandardCharsets.UTF_8);
        List<Entry> all =
                rows.stream().skip(1).map(row -> new Entry(row.split(",", -1))).toList();
        change.accept(all.stream()
                .filter(entry -> !entry.cells[Entry.HOURS].isEmpty())
                .toList());
        List<String> written = new ArrayList<>(rows.subList(0, 1));
        all.forEach(entry -> written.add(String.join(",", entry.cells)));
        Files.write(log, written, StandardCharsets.UTF_8);
    }

    /** Every entry by a factor of its own. */
    public static Consumer<List<Entry>> times(BiFunction<LocalDate, Double, Double> hours) {
        return entries -> entries.forEach(entry -> entry.hours(
                BigDecimal.valueOf(hours.apply(entry.day(), entry.hours())).setScale(3, RoundingMode.HALF_EVEN)));
    }

    /** Every entry as a multiple of a step, at least one. */
    public static Consumer<List<Entry>> rounded(String step, RoundingMode mode) {
        BigDecimal grid = new BigDecimal(step);
        return entries -> entries.forEach(entry -> {
            BigDecimal steps = BigDecimal.valueOf(entry.hours()).divide(grid, 0, mode);
            entry.hours(steps.max(BigDecimal.ONE).multiply(grid));
        });
    }

    /** Some entries on another ticket that the same technician worked on within a few days. */
    public static Consumer<List<Entry>> mixedUp(double share, long seed) {
        return entries -> {
            SplittableRandom random = new SplittableRandom(seed);
            Map<String, List<Entry>> byTechnician = new HashMap<>();
            entries.stream()
                    .filter(entry -> !entry.ticket().isEmpty())
                    .forEach(entry -> byTechnician
                            .computeIfAbsent(entry.technician(), key -> new ArrayList<>())
                            .add(entry));
            Map<Entry, String> wrong = new HashMap<>();
            entries.stream()
                    .filter(entry -> !entry.ticket().isEmpty() && random.nextDouble() < share)
                    .forEach(entry -> {
                        List<String> near = byTechnician.get(entry.technician()).stream()
                                .filter(other -> Math.abs(other.day().toEpochDay()
                                                - entry.day().toEpochDay())
                                        <= LONGEST_MIX_UP)
                                .map(Entry::ticket)
                                .filter(ticket -> !ticket.equals(entry.ticket()))
                                .distinct()
                                .toList();
                        if (!near.isEmpty()) {
                            wrong.put(entry, near.get(random.nextInt(near.size())));
                        }
                    });
            wrong.forEach(Entry::ticket);
        };
    }
}
