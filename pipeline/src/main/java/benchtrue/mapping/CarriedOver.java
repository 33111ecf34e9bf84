package benchtrue.mapping;

import benchtrue.format.TomlText;
import benchtrue.intake.ColumnProfile;
import benchtrue.intake.FileProfile;
import benchtrue.intake.columns.WideNames;
import benchtrue.settings.FileRule;
import benchtrue.settings.ReadSettings;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The owner's own settings in a new draft: word for word, but for rules whose files have other columns by now. */
final class CarriedOver {
    private final List<String> own;
    private final List<FileProfile> read;
    private final List<FileProfile> changed;

    /**
     * Takes what there is.
     *
     * @param own text of {@code shop.toml}
     * @param read files that the settings explain
     * @param changed files that have a new rule
     */
    CarriedOver(String own, List<FileProfile> read, Collection<FileProfile> changed) {
        this.own = own.stripTrailing().lines().toList();
        this.read = read;
        this.changed = List.copyOf(changed);
    }

    /** Returns the lines of the draft. */
    List<String> lines(List<FileRule> rules) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("# Carried over from " + ReadSettings.FILE + ":");
        int at = 0;
        for (FileRule rule : rules) {
            if (changed.stream().anyMatch(file -> fits(rule, file))) {
                lines.addAll(own.subList(at, rule.line() - 1));
                at = end(rule.line());
                lines.addAll(narrowed(rule, own.subList(rule.line() - 1, at)));
            }
        }
        lines.addAll(own.subList(at, own.size()));
        return lines;
    }

    private static boolean fits(FileRule rule, FileProfile file) {
        return rule.fits(file.file())
                && (file.sheet().isEmpty()
                        || rule.shape().sheets().isEmpty()
                        || rule.shape().sheets().stream()
                                .anyMatch(pattern ->
                                        FileRule.fits(pattern, file.sheet().get())));
    }

    /** Returns the line behind a rule that begins on one, both from 1 and 0. */
    private int end(int line) {
        int end = line;
        while (end < own.size()
                && (!own.get(end).startsWith("[") || own.get(end).startsWith("[files."))) {
            end++;
        }
        return end;
    }

    /** The files that it still reads keep the rule, each under its own name. */
    private List<String> narrowed(FileRule rule, List<String> block) {
        List<String> kept = new ArrayList<>();
        read.stream()
                .filter(file -> fits(rule, file)
                        && changed.stream().noneMatch(other -> other.file().equals(file.file())))
                .map(FileProfile::file)
                .distinct()
                .forEach(name -> block.forEach(
                        line -> kept.add(line.startsWith("name") ? "name = " + TomlText.quoted(name) : line)));
        if (kept.isEmpty()) {
            kept.add("# Replaced below, since its files have other columns by now:");
            block.forEach(line -> kept.add(line.isBlank() || line.startsWith("#") ? line : "# " + line));
        }
        return kept;
    }

    /** Returns columns of files with a rule that the settings do not name, not even as not read. */
    List<String> newColumns(List<FileRule> rules) {
        String text = String.join("\n", own);
        List<String> found = new ArrayList<>();
        for (FileProfile file : read) {
            rules.stream()
                    .filter(rule -> fits(rule, file))
                    .findFirst()
                    .ifPresent(rule -> file.columns().stream()
                            .filter(column -> column.known().isEmpty() && !isWide(rule, column.header()))
                            .map(ColumnProfile::header)
                            .filter(name -> !name.isBlank() && !text.contains(TomlText.quoted(name)))
                            .forEach(name -> found.add(file.shown() + ": the column " + TomlText.quoted(name)
                                    + " is new, and not read.")));
        }
        return found.stream().distinct().toList();
    }

    private static boolean isWide(FileRule rule, String name) {
        return rule.shape()
                .unpivot()
                .filter(unpivot -> WideNames.isOf(unpivot.header(), name))
                .isPresent();
    }
}
