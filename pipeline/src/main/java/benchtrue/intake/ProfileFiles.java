package benchtrue.intake;

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
import benchtrue.intake.dialects.StackedTables;
import benchtrue.intake.dialects.TextFile;
import benchtrue.intake.files.DigestedFile;
import benchtrue.intake.files.Encoding;
import benchtrue.intake.files.KnownKinds;
import benchtrue.intake.files.Records;
import benchtrue.intake.files.TextLayout;
import benchtrue.intake.files.Workbook;
import benchtrue.settings.FileRule;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
                for (Optional<String> sheet : sheets(path, folder + "/" + file)) {
                    profiles.addAll(profiles(known, folder, path, sheet, familiar));
                }
            }
        }
        return profiles;
    }

    /** Returns the visible sheets of a workbook that has several; one without a name for any other file. */
    private static List<Optional<String>> sheets(Path path, String name) {
        if (!name.toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            return List.of(Optional.empty());
        }
        try (Workbook workbook = Workbook.open(path, name)) {
            List<Optional<String>> visible = workbook.sheets().stream()
                    .filter(sheet -> sheet.visibility() == Workbook.Visibility.VISIBLE)
                    .map(sheet -> Optional.of(sheet.name()))
                    .toList();
            return visible.size() > 1 ? visible : List.of(Optional.empty());
        } catch (Refusal | IOException toldWhenItIsRead) {
            return List.of(Optional.empty());
        }
    }

    /** Returns a profile for each rule that reads a file or sheet; one where none does. */
    private static List<FileProfile> profiles(
            Rules known, String folder, Path path, Optional<String> sheet, ToIntFunction<List<String>> familiar) {
        String file = path.getFileName().toString();
        List<MappedTable> rules = known.of(folder, file).stream()
                .filter(rule -> sheet.isEmpty()
                        || rule.mapping().rule().orElseThrow().shape().sheets().isEmpty()
                        || rule.mapping().rule().orElseThrow().shape().sheets().stream()
                                .anyMatch(pattern -> FileRule.fits(pattern, sheet.get())))
                .toList();
        List<FileProfile> profiles = new ArrayList<>();
        for (MappedTable rule : rules) {
            profiles.addAll(profile(
                    new ExportFile(path, folder + "/" + file, sheet, rule.table(), 0, rule.mapping(), List.of()),
                    Optional.of(rule.table()),
                    familiar));
        }
        if (rules.isEmpty()) {
            Optional<Table> table =
                    folder.equals("exports") ? Inbox.table(file.toLowerCase(Locale.ROOT)) : Optional.empty();
            profiles.addAll(profile(
                    new ExportFile(path, folder + "/" + file, sheet, null, 0, Mapping.NONE, List.of()),
                    table,
                    familiar));
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

    private static List<FileProfile> profile(
            ExportFile file, Optional<Table> table, ToIntFunction<List<String>> familiar) {
        try (DigestedFile bytes = new DigestedFile(file.path(), file.name())) {
            Source source = source(file, familiar);
            try (Records records = source.openWide(bytes, file.name())) {
                return read(file, table, records, source.title(), familiar);
            }
        } catch (Refusal refusal) {
            return List.of(unread(file, refusal.getMessage()));
        } catch (IOException failed) {
            throw new Refusal(
                    ExitCode.READ_FAILED,
                    file.name() + ": reading failed part-way: " + failed.getMessage() + ".",
                    failed);
        }
    }

    private static FileProfile unread(ExportFile file, String why) {
        return new FileProfile(
                file.file(), Optional.empty(), List.of(), 0, Optional.of(why), file.sheet(), "", List.of());
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
        TextLayout layout = StackedTables.first(LayoutDetector.of(lines, file.rule(), familiar), lines, familiar);
        return new TextFile(
                encoding, layout, String.join(" ", lines.subList(0, Math.min(lines.size(), layout.headerLine() - 1))));
    }

    /** Returns a profile for each table that stands in the rows, one below the other; one where it is known which. */
    private static List<FileProfile> read(
            ExportFile file, Optional<Table> table, Records records, String title, ToIntFunction<List<String>> familiar)
            throws IOException {
        if (!records.next()) {
            return List.of(unread(file, file.name() + ": is empty"));
        }
        List<ProfiledRows> tables = new ArrayList<>(List.of(new ProfiledRows(texts(records), title)));
        for (int rows = 0; rows < MOST_ROWS && records.next(); rows++) {
            List<String> row = texts(records);
            ProfiledRows last = tables.get(tables.size() - 1);
            if (table.isEmpty() && StackedTables.isHeader(row, familiar) && !row.equals(last.headers())) {
                tables.add(new ProfiledRows(row, ""));
            } else {
                last.take(row);
            }
        }
        return tables.stream().map(rows -> rows.profile(file, table)).toList();
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
