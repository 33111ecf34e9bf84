package benchtrue.command;

import benchtrue.sample.SampleOptions;
import benchtrue.sample.Tidiness;
import benchtrue.sample.WriteSample;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes an invented shop to try the program on. */
@Command(
        name = "sample",
        description = "Writes an invented shop folder, and what is true of it in truth.json, to try the program on.",
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class SampleCommand implements Callable<Integer> {
    @Parameters(paramLabel = "DIR", description = "A new or empty folder.")
    private Path folder;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "The same seed gives the same shop; 1 where not given.",
            defaultValue = "1")
    private long seed;

    @Option(
            names = "--tickets",
            paramLabel = "N",
            description = "How many tickets; 1200 where not given.",
            defaultValue = "1200")
    private int tickets;

    @Option(names = "--years", paramLabel = "Y", description = "How many years; 4 where not given.", defaultValue = "4")
    private int years;

    @Option(names = "--clean", description = "One price book, one file a table, no row that is wrong or unusual.")
    private boolean clean;

    @Mixin
    private Loudness loudness;

    @Spec
    private CommandSpec command;

    private final Console console;

    SampleCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        try {
            WriteSample.write(options());
        } catch (FileAlreadyExistsException full) {
            throw new Refusal(
                    ExitCode.CANNOT_WRITE, folder + ": found files in it, expected a new or empty folder.", full);
        } catch (IOException e) {
            throw new Refusal(ExitCode.CANNOT_WRITE, folder + ": can't be written: " + e + ".", e);
        }
        if (!loudness.quiet()) {
            console.out().println("An invented shop of " + tickets + " tickets is in " + folder + ".");
            console.out().println("Next: benchtrue nightly --shop " + folder + " --as-of 2026-10-31");
        }
        return ExitCode.PUBLISHED.number();
    }

    private SampleOptions options() {
        try {
            return SampleOptions.standard(folder)
                    .withSeed(seed)
                    .withTickets(tickets)
                    .withYears(years)
                    .with(clean ? Tidiness.TIDY : Tidiness.UNTIDY);
        } catch (IllegalArgumentException outOfRange) {
            throw new ParameterException(command.commandLine(), outOfRange.getMessage(), outOfRange);
        }
    }
}
