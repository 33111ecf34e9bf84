package benchtrue.intake;

import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.Table;
import benchtrue.intake.dialects.CurrencyMarks;
import benchtrue.intake.dialects.Dialects;
import benchtrue.intake.dialects.LookAgain;
import benchtrue.intake.files.DigestedFile;
import benchtrue.settings.Settings;
import benchtrue.shop.Notice;
import benchtrue.shop.Refusal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads the inbox and the price book of a shop folder. */
public final class ReadExports {
    /**
     * Reads every file whose name begins with a table's name or that a rule fits. Tables are read side by side; the result does not depend
     * on it.
     *
     * @param shop the shop's folder with {@code exports/} and {@code price-book/}
     * @param settings the shop's settings
     * @throws benchtrue.shop.Refusal where a folder, a needed table or a needed column is missing, or a file is no table
     */
    public Exports read(Path shop, Settings settings) {
        Inbox inbox = Inbox.find(shop, settings);
        List<ReadTable> tables = Stream.of(Table.values())
                .parallel()
                .map(table -> read(table, inbox))
                .toList();
        requireRead(tables.stream().flatMap(table -> table.refusal().stream()).toList());
        CurrencyMarks.requireOne(
                settings.currency(), tables.stream().map(ReadTable::currencies).toList());
        Map<Table, TableRows> rows = new EnumMap<>(Table.class);
        List<InputFile> files = new ArrayList<>();
        List<Notice> notices = new ArrayList<>(inbox.notices());
        for (ReadTable read : tables) {
            TableRows found = read.rows();
            if (!found.files().isEmpty()) {
                rows.put(found.table(), found);
                files.addAll(found.files());
                notices.addAll(read.notices());
            }
        }
        expectOneContent(files);
        return new Exports(rows, files, notices);
    }

    /** A file of several tables is read once for each: rows of what it was before and of what it is now are no shop's. */
    static void expectOneContent(List<InputFile> files) {
        Map<String, String> digests = new HashMap<>();
        for (InputFile file : files) {
            String first = digests.putIfAbsent(file.file(), file.sha256());
            if (first != null && !first.equals(file.sha256())) {
                throw DigestedFile.changed(file.file());
            }
        }
    }

    /** Refuses all tables that can't be read at once, so that the owner mends them at once. */
    private static void requireRead(List<Refusal> refusals) {
        if (refusals.size() == 1) {
            throw refusals.get(0);
        }
        if (!refusals.isEmpty()) {
            throw new Refusal(
                    refusals.get(0).exitCode(),
                    refusals.stream().map(Refusal::getMessage).collect(Collectors.joining("\n")),
                    refusals.get(0));
        }
    }

    private static ReadTable read(Table table, Inbox inbox) {
        Dialects dialects = new Dialects();
        while (true) {
            ReadTable reader = new ReadTable(table, inbox.files(table), dialects);
            try {
                if (readsAll(reader, dialects)) {
                    return reader;
                }
            } catch (Refusal refusal) {
                reader.refuse(refusal);
                return reader;
            }
        }
    }

    /** Reads all files; returns false where one had to be looked at whole first. Each is looked at once at most. */
    private static boolean readsAll(ReadTable reader, Dialects dialects) {
        try {
            reader.read();
            return true;
        } catch (LookAgain needsMore) {
            dialects.lookAgain(reader.current());
            return false;
        }
    }
}
