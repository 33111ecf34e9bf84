package benchtrue.intake;

import benchtrue.settings.FileRule;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Notice;
import benchtrue.shop.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The owner's rules for files, and which of them found any. */
final class Rules {
    private final List<MappedTable> rules;
    private final List<FileRule> unused;

    Rules(List<FileRule> rules) {
        this.rules = rules.stream().map(CheckRules::mapping).toList();
        unused = new ArrayList<>(rules);
    }

    /**
     * Returns the rule that fits a file.
     *
     * @param folder within the shop folder
     * @param file name without the folder
     * @throws Refusal where two rules fit
     */
    Optional<MappedTable> of(String folder, String file) {
        List<MappedTable> fitting =
                rules.stream().filter(rule -> rule(rule).fits(file)).toList();
        if (fitting.size() > 1) {
            throw new Refusal(
                    ExitCode.SETTINGS,
                    ReadSettings.FILE + ", lines " + rule(fitting.get(0)).line() + " and "
                            + rule(fitting.get(1)).line() + ": found two rules for " + folder + "/" + file
                            + ", expected one. Make the pattern of one narrower.");
        }
        fitting.forEach(found -> unused.remove(rule(found)));
        return fitting.stream().findFirst();
    }

    private static FileRule rule(MappedTable rule) {
        return rule.mapping().rule().orElseThrow();
    }

    /** Returns what to say of rules that fit no file. */
    List<Notice> notices() {
        return unused.isEmpty()
                ? List.of()
                : List.of(new Notice(
                        "unused-rule",
                        "A rule of shop.toml fits no file: correct its pattern, or take it out.",
                        unused.size(),
                        unused.stream()
                                .map(rule -> "line " + rule.line() + ": " + rule.name())
                                .limit(5)
                                .toList()));
    }
}
