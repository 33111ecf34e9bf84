package benchtrue.nightly;

import benchtrue.intake.columns.InputFile;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.shop.Sha256;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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

    /**
     * Returns the exports as they were digested while they were read, and the other files of the shop folder.
     *
     * @param beside the other files as they were before anything was read
     * @throws Refusal where one of those is not as it was
     */
    static Inputs of(Path shop, List<InputFile> exports, List<FileDigest> beside) {
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
        expectAsBefore(beside, beside(shop));
        files.addAll(beside);
        return new Inputs(files, told);
    }

    /** Returns the files that a night reads beside exports and books: settings, sealed months and decisions. */
    static List<FileDigest> beside(Path shop) {
        List<Path> paths = new ArrayList<>();
        Path settings = shop.resolve(ReadSettings.FILE);
        if (Files.exists(settings)) {
            paths.add(settings);
        }
        paths.addAll(files(shop.resolve(Seals.FOLDER), ".csv"));
        paths.addAll(files(shop.resolve(DecisionFiles.FOLDER), DecisionFiles.ENDING));
        List<FileDigest> digests = new ArrayList<>();
        for (Path path : paths) {
            try {
                digests.add(FileDigest.of(shop, path));
            } catch (IOException e) {
                throw new Refusal(ExitCode.READ_FAILED, path + ": reading failed part-way: " + e + ".", e);
            }
        }
        return digests;
    }

    private static void expectAsBefore(List<FileDigest> before, List<FileDigest> now) {
        Set<FileDigest> changed = new LinkedHashSet<>(before);
        changed.addAll(now);
        changed.removeIf(file -> before.contains(file) && now.contains(file));
        changed.stream().findFirst().ifPresent(file -> {
            throw new Refusal(
                    ExitCode.READ_FAILED,
                    file.file()
                            + ": found that the file changed while the night ran, expected it to stay as it was. Run"
                            + " it again.");
        });
    }

    /**
     * Returns the files of a folder with an ending, by name; none where the folder is missing.
     *
     * @throws Refusal where its name stands for something else: what was decided or sealed is not nothing then, but away
     */
    static List<Path> files(Path folder, String ending) {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        if (!Files.isDirectory(folder)) {
            throw new Refusal(
                    ExitCode.MISSING,
                    folder + ": found something that is no folder, or a link that leads nowhere, expected the folder of"
                            + " the files that benchtrue wrote there. Put it back, or see whether its disk is there, and run"
                            + " again.");
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
