package benchtrue.command;

import benchtrue.nightly.VerifyResult;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Holds a published result against its own record. */
@Command(
        name = "verify",
        description = {
            "Compares the files of a published result with the record of the run that wrote them, and names those that"
                    + " are missing, changed or not of that run."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class VerifyCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FOLDER", description = "A result folder, such as shop/out/latest.")
    private Path folder;

    @Mixin
    private Loudness loudness;

    private final Console console;

    VerifyCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (!Files.isRegularFile(folder.resolve("run.json"))) {
            throw new Refusal(
                    ExitCode.MISSING, folder + ": found no run.json, expected a result folder such as out/latest.");
        }
        List<String> differences = differences();
        if (!differences.isEmpty()) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    folder + " is not as the run wrote it:\n  " + String.join("\n  ", differences));
        }
        if (!loudness.quiet()) {
            console.out().println("Every file of " + folder + " is as the run wrote it.");
        }
        return ExitCode.PUBLISHED.number();
    }

    private List<String> differences() {
        try {
            return new VerifyResult().verify(folder);
        } catch (IOException e) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE, folder + ": the result or its run.json can't be read: " + e + ".", e);
        }
    }
}
