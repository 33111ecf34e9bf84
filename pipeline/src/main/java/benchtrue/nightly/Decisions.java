package benchtrue.nightly;

import benchtrue.format.Words;
import benchtrue.revision.Decision;
import benchtrue.revision.Kept;
import benchtrue.shop.Absent;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What the owner decided up to a day, from {@code decisions/}. Decisions whose price book was never written do not count.
 *
 * @param kept repair types that are left as they are, each by its newest decision
 * @param lastDecided day of the newest decisions, {@link Absent#DAY} without any
 */
record Decisions(List<Kept> kept, int lastDecided) {
    static final String FOLDER = "decisions";

    private static final String ENDING = ".json";

    Decisions {
        kept = List.copyOf(kept);
    }

    /**
     * Reads the decisions of a shop.
     *
     * @param asOf decisions made later are left out
     * @throws Refusal naming the file, where one is not as it was written
     */
    static Decisions of(Path shop, int asOf) {
        Map<String, Kept> kept = new TreeMap<>();
        int last = Absent.DAY;
        for (Path file : files(shop)) {
            try {
                JsonObject record = Json.read(Files.readString(file, StandardCharsets.UTF_8));
                int decided = day(record.text("decided_on"));
                if (decided <= asOf && Files.exists(book(shop, file))) {
                    last = Math.max(last, decided);
                    add(record, kept);
                }
            } catch (IOException | DateTimeException e) {
                throw new Refusal(
                        ExitCode.UNUSABLE_FILE,
                        file + ": found something else than benchtrue adopt wrote (" + e.getMessage()
                                + "). Put the file back from a copy.",
                        e);
            }
        }
        return new Decisions(List.copyOf(kept.values()), last);
    }

    private static void add(JsonObject record, Map<String, Kept> kept) throws IOException {
        for (JsonObject row : record.objects("decisions")) {
            String repairType = row.text("repair_type");
            kept.remove(repairType);
            if (row.text("decision").equals(Words.of(Decision.Choice.KEEP))) {
                kept.put(repairType, new Kept(repairType, day(row.text("until")), row.text("reason")));
            }
        }
    }

    private static int day(String date) {
        return (int) LocalDate.parse(date).toEpochDay();
    }

    private static Path book(Path shop, Path decisions) {
        String name = decisions.getFileName().toString();
        return shop.resolve(AdoptDecisions.BOOKS).resolve(name.substring(0, name.length() - ENDING.length()) + ".csv");
    }

    /** Returns the files of decisions, the oldest first; none where the folder is missing. */
    static List<Path> files(Path shop) {
        Path folder = shop.resolve(FOLDER);
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> found = Files.list(folder)) {
            return found.filter(file -> file.getFileName().toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new Refusal(ExitCode.READ_FAILED, folder + ": reading failed part-way: " + e + ".", e);
        }
    }
}
