package benchtrue.nightly;

import benchtrue.intake.columns.InputFile;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.shop.Sha256;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Every file that a run read, in the order of their names.
 *
 * @param files their digests, of the bytes as they were read
 * @param told how each file that is not written as the data contract writes was read, and why
 */
record Inputs(List<FileDigest> files, SortedMap<String, List<String>> told) {
    private static final int DIGITS = 16;

    Inputs {
        files = files.stream().sorted(Comparator.comparing(FileDigest::file)).toList();
    }

    /** Returns the exports as they were digested while they were read, and the other files of the shop folder. */
    static Inputs of(Path shop, List<InputFile> exports) {
        List<FileDigest> files = new ArrayList<>();
        SortedMap<String, List<String>> told = new TreeMap<>();
        for (InputFile export : exports) {
            if (!export.told().isEmpty()) {
                told.merge(export.name(), export.told(), Inputs::together);
            }
            FileDigest digest = new FileDigest(export.file(), export.bytes(), export.sha256());
            if (!files.contains(digest)) {
                files.add(digest);
            }
        }
        Path settings = shop.resolve(ReadSettings.FILE);
        try {
            if (Files.exists(settings)) {
                files.add(FileDigest.of(shop, settings));
            }
            for (Path sealed : files(shop.resolve(Seals.FOLDER), ".csv")) {
                files.add(FileDigest.of(shop, sealed));
            }
            for (Path decided : files(shop.resolve(DecisionFiles.FOLDER), DecisionFiles.ENDING)) {
                files.add(FileDigest.of(shop, decided));
            }
        } catch (IOException e) {
            throw new Refusal(ExitCode.READ_FAILED, settings + ": reading failed part-way: " + e + ".", e);
        }
        return new Inputs(files, told);
    }

    /** Returns the files of a folder with an ending, by name; none where the folder is missing. */
    static List<Path> files(Path folder, String ending) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> found = Files.list(folder)) {
            return found.filter(file -> file.getFileName().toString().endsWith(ending))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new Refusal(ExitCode.READ_FAILED, folder + ": reading failed part-way: " + e + ".", e);
        }
    }

    private static List<String> together(List<String> one, List<String> other) {
        return Stream.concat(one.stream(), other.stream()).distinct().toList();
    }

    /** Returns sixteen hexadecimal digits that stand for all names and contents. */
    String digest() {
        MessageDigest all = Sha256.begin();
        for (FileDigest file : files) {
            all.update((file.sha256() + "  " + file.file() + "\n").getBytes(StandardCharsets.UTF_8));
        }
        return Sha256.digits(all).substring(0, DIGITS);
    }
}
