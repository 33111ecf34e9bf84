package benchtrue.nightly;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * {@code out/.last/run.json}: how far the last run came and how it ended, so that the next one can say so. A run that was
 * killed leaves its stage without an end.
 */
final class LastRun {
    static final String FOLDER = ".last";
    private static final String FILE = "run.json";
    private final Path folder;

    LastRun(Path out) {
        this.folder = out.resolve(FOLDER);
    }

    /** Returns what the owner should know of the run before, in words; empty where it published or there was none. */
    Optional<String> told() {
        Path file = folder.resolve(FILE);
        if (Files.notExists(file)) {
            return Optional.empty();
        }
        try {
            JsonObject last = Json.read(Files.readString(file, StandardCharsets.UTF_8));
            String run = "The run before this one, to " + last.text("as_of") + ", ";
            if (!last.has("exit_code")) {
                return Optional.of(
                        run + "was stopped at \"" + last.text("stage") + "\"; the results are whole as they stand.");
            }
            return last.whole("exit_code") == ExitCode.PUBLISHED.number()
                    ? Optional.empty()
                    : Optional.of(run + "ended with " + last.whole("exit_code") + ": " + last.text("message"));
        } catch (IOException unreadable) {
            return Optional.of("How the run before this one ended can't be read: " + unreadable.getMessage() + ".");
        }
    }

    void begins(int asOf, String stage) throws IOException {
        write(asOf, Map.of("stage", stage));
    }

    void published(int asOf) throws IOException {
        write(asOf, Map.of("exit_code", ExitCode.PUBLISHED.number()));
    }

    /** Notes why a run ended; where even that can't be written, says so beside the reason itself. */
    void ended(int asOf, RuntimeException reason) {
        boolean refused = reason instanceof Refusal;
        ExitCode code = refused ? ((Refusal) reason).exitCode() : ExitCode.FAULT;
        String message = refused ? reason.getMessage() : "a fault of the program: " + reason;
        Map<String, Object> end = new LinkedHashMap<>();
        end.put("exit_code", code.number());
        end.put("message", message);
        try {
            write(asOf, end);
        } catch (IOException e) {
            reason.addSuppressed(e);
        }
    }

    private void write(int asOf, Map<String, ?> rest) throws IOException {
        Map<String, Object> note = new LinkedHashMap<>();
        note.put("as_of", LocalDate.ofEpochDay(asOf).toString());
        note.putAll(rest);
        WholeFile.write(folder.resolve(FILE), Json.text(note));
    }
}
