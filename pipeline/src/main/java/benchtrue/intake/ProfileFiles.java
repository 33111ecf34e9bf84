package benchtrue.intake;

import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.ColumnNames;
import benchtrue.intake.columns.Dictionary;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.MappedTable;
import benchtrue.intake.columns.Mapping;
import benchtrue.intake.columns.Table;
import benchtrue.intake.dialects.DialectDetector;
import benchtrue.intake.dialects.LayoutDetector;
import benchtrue.intake.dialects.PlainFileProbe;
import benchtrue.intake.dialects.SheetDetector;
import benchtrue.intake.dialects.Source;
import benchtrue.intake.dialects.TextFile;
import benchtrue.intake.files.DigestedFile;
import benchtrue.intake.files.Encoding;
import benchtrue.intake.files.KnownKinds;
import benchtrue.intake.files.Records;
import benchtrue.settings.FileRule;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;

/** Looks into every file of the inbox and of the price book, known or not. */
public final class ProfileFiles {
    /** Rows of one file that are looked at. */
    private static final int MOST_ROWS = 200_000;

    /**
     * Returns what stands in each file, in order of their names.
     *
     * @param shop the shop's folder with {@code exports/}
     * @param settings with the owner's rules for files
     * @param familiar counts the names of a header that look like columns
     * @throws Refusal where the folder or its inbox is missing
     */
    public List<FileProfile> profile(Path shop, Settings settings, ToIntFunction<List<String>> familiar) {
        Rules known = new Rules(settings);
        List<FileProfile> profiles = new ArrayList<>();
        for (String folder : List.of("exports", "price-book")) {
            for (Path path : list(shop.resolve(folder))) {
                String file = path.getFileName().toString();
                ExportFile export = new ExportFile(
                        path,
                        folder + "/" + file,
                        Optional.empty(),
                        null,
                        0,
                        known.of(folder, file).stream()
                                .findFirst()
                                .map(MappedTable::mapping)
                                .orElse(Mapping.NONE),
                        List.of());
                profiles.add(profile(export, table(known, folder, file), familiar));
            }
        }
        return profiles;
    }

    private static List<Path> list(Path folder) {
        if (!Files.isDirectory(folder)) {
            if (folder.endsWith("price-book")) {
                return List.of();
            }
            throw new Refusal(
                    ExitCode.MISSING,
                    folder
                            + ": found no such folder, expected the files that the shop's systems exported. Make it and put"
                            + " them there.");
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Inbox::isVisible)
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList();
        } catch (IOException failed) {
            throw new Refusal(ExitCode.READ_FAILED, folder + ": can't be listed: " + failed.getMessage(), failed);
        }
    }

    private static Optional<Table> table(Rules rules, String folder, String file) {
        Optional<Table> ruled = rules.of(folder, file).stream().findFirst().map(MappedTable::table);
        return ruled.isPresent() || !folder.equals("exports") ? ruled : Inbox.table(file.toLowerCase(Locale.ROOT));
    }

    private static FileProfile profile(ExportFile file, Optional<Table> table, ToIntFunction<List<String>> familiar) {
        try (DigestedFile bytes = new DigestedFile(file.path(), file.name());
                Records records = source(file, familiar).open(bytes, file.name())) {
            return read(file, table, records);
        } catch (Refusal refusal) {
            return new FileProfile(file.name(), Optional.empty(), List.of(), 0, Optional.of(refusal.getMessage()));
        } catch (IOException failed) {
            throw new Refusal(
                    ExitCode.READ_FAILED,
                    file.name() + ": reading failed part-way: " + failed.getMessage() + ".",
                    failed);
        }
    }

    /** Returns how to open a file of which no table is known, by the header that looks most like one. */
    private static Source source(ExportFile file, ToIntFunction<List<String>> familiar) throws IOException {
        if (file.isSheet()) {
            return SheetDetector.unknown(file, familiar);
        }
        byte[] beginning = PlainFileProbe.beginning(file.path());
        KnownKinds.requireTable(beginning, 0, beginning.length, file.name());
        Encoding encoding = Encoding.of(file.path(), file.rule().flatMap(FileRule::encoding));
        List<String> lines = DialectDetector.lines(beginning, encoding, Files.size(file.path()));
        return new TextFile(encoding, LayoutDetector.of(lines, file.rule(), familiar), "");
    }

    private static FileProfile read(ExportFile file, Optional<Table> table, Records records) throws IOException {
        if (!records.next()) {
            return new FileProfile(
                    file.name(), Optional.empty(), List.of(), 0, Optional.of(file.name() + ": is empty"));
        }
        List<String> headers = texts(records);
        List<Map<String, Long>> counts = new ArrayList<>();
        headers.forEach(header -> counts.add(new LinkedHashMap<>()));
        long[] filled = new long[headers.size()];
        int rows = 0;
        for (; rows < MOST_ROWS && records.next(); rows++) {
            List<String> row = texts(records);
            for (int cell = 0; cell < Math.min(row.size(), filled.length); cell++) {
                if (!row.get(cell).isEmpty()) {
                    filled[cell]++;
                    count(counts.get(cell), row.get(cell));
                }
            }
        }
        Optional<Table> known = table.or(
                        () -> file.name().startsWith("price-book/") ? Optional.of(Table.PRICE_BOOK) : table)
                .filter(found -> new ColumnNames(found, file.mapping()).complete(headers));
        List<ColumnProfile> columns = new ArrayList<>();
        for (int cell = 0; cell < filled.length; cell++) {
            String header = headers.get(cell);
            Optional<Column> column = known.map(found -> new ColumnNames(found, file.mapping()).column(header));
            columns.add(new ColumnProfile(header, column, filled[cell], counts.get(cell)));
        }
        return new FileProfile(file.name(), known, columns, rows, Optional.empty());
    }

    private static void count(Map<String, Long> counts, String text) {
        if (counts.size() < ColumnProfile.MOST_TEXTS || counts.containsKey(text)) {
            counts.merge(text, 1L, Long::sum);
        }
    }

    private static List<String> texts(Records record) {
        List<String> texts = new ArrayList<>(record.size());
        for (int cell = 0; cell < record.size(); cell++) {
            int length = Math.min(record.end(cell) - record.start(cell), Dictionary.LONGEST);
            texts.add(new String(record.bytes(), record.start(cell), length, StandardCharsets.UTF_8).strip());
        }
        return texts;
    }
}
