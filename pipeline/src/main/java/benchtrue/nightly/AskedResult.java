package benchtrue.nightly;

import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A published result that can be asked: its fact table is as the run wrote it.
 *
 * @param asOf its as-of date, in days since 1970-01-01
 * @param lines its fact table
 * @param rows how many lines that has
 * @param people whether names stand in it and may be shown
 */
public record AskedResult(int asOf, Path lines, long rows, Disclosure people) {
    /**
     * Opens the result of a day, else the newest.
     *
     * @throws Refusal where there is none, or where its fact table or record is not as it was written
     */
    public static AskedResult open(Path shop, Settings settings, Optional<LocalDate> day) {
        try {
            TreeMap<LocalDate, Path> results = new PublishedResults(shop.resolve("out")).results();
            Map.Entry<LocalDate, Path> found = day.map(results::floorEntry)
                    .filter(entry -> entry.getKey().equals(day.get()))
                    .or(() -> day.isEmpty() ? Optional.ofNullable(results.lastEntry()) : Optional.empty())
                    .orElseThrow(() -> new Refusal(
                            ExitCode.MISSING,
                            shop + ": found no published result"
                                    + day.map(date -> " of " + date).orElse("")
                                    + (results.isEmpty() ? "" : ", only of " + results.keySet())
                                    + ". Run benchtrue nightly first."));
            return open(found.getKey(), found.getValue(), settings);
        } catch (IOException e) {
            throw new Refusal(ExitCode.UNUSABLE_FILE, shop + ": the result can't be read: " + e.getMessage() + ".", e);
        }
    }

    private static AskedResult open(LocalDate day, Path folder, Settings settings) throws IOException {
        Path lines = folder.resolve(WriteTables.LINES);
        JsonObject record = Json.read(Files.readString(folder.resolve(RunRecord.FILE), StandardCharsets.UTF_8));
        if (!VerifyResult.outputs(record).contains(FileDigest.of(folder, lines))) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    lines + " is not as the run wrote it. Run the night again, or ask an earlier result with --as-of.");
        }
        boolean named = Boolean.parseBoolean(record.written("settings").get("show_people"));
        long rows = Long.parseLong(record.written("counts").get("quoted_lines"));
        return new AskedResult((int) day.toEpochDay(), lines, rows, named ? settings.people() : Disclosure.HIDDEN);
    }
}
