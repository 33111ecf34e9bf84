package benchtrue.command;

import benchtrue.mapping.Draft;
import benchtrue.mapping.DraftMapping;
import benchtrue.mapping.WriteDraft;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Drafts how unknown exports are read. */
@Command(
        name = "map",
        description = "Looks into exports that it does not know and drafts their mapping as " + WriteDraft.FILE
                + ", for a person to correct and rename.",
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class MapCommand implements Callable<Integer> {
    @Option(names = "--shop", paramLabel = "DIR", required = true, description = "The shop's folder.")
    private Path shop;

    @Mixin
    private Loudness loudness;

    private final Console console;

    MapCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (!Files.isDirectory(shop)) {
            throw new Refusal(
                    ExitCode.MISSING,
                    shop + ": found no such folder, expected the shop's folder. Name it with --shop.");
        }
        Draft draft = new DraftMapping().draft(shop, new ReadSettings().read(shop), own());
        if (!draft.text().isEmpty()) {
            new WriteDraft().write(shop, draft.text());
        }
        if (!loudness.quiet()) {
            tell(draft);
        }
        return ExitCode.PUBLISHED.number();
    }

    private String own() {
        Path settings = shop.resolve(ReadSettings.FILE);
        try {
            return Files.exists(settings)
                    ? Files.readString(settings, StandardCharsets.UTF_8).replace("\uFEFF", "")
                    : "";
        } catch (IOException failed) {
            throw new Refusal(ExitCode.SETTINGS, ReadSettings.FILE + ": can't be read: " + failed.getMessage(), failed);
        }
    }

    private void tell(Draft draft) {
        draft.found().forEach(console.out()::println);
        if (!draft.questions().isEmpty()) {
            console.out().println("Still to be said:");
            draft.questions().forEach(question -> console.out().println("  " + question));
        }
        console.out()
                .println(
                        draft.text().isEmpty()
                                ? "Nothing to draft: every other file is read as it is."
                                : "Next: read " + WriteDraft.FILE + ", correct it, rename it to " + ReadSettings.FILE
                                        + ", and run benchtrue check --shop " + shop + ".");
    }
}
