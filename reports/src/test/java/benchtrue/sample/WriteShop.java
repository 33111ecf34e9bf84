package benchtrue.sample;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes an invented shop of any size, for contributors; DEVELOPERS.md says how it is started. */
@Command(
        name = "sample",
        description = "Writes an invented shop folder, and what is true of it in truth.json.",
        mixinStandardHelpOptions = true)
public final class WriteShop implements Callable<Integer> {
    @Parameters(paramLabel = "DIR", description = "A new or empty folder.")
    private Path folder;

    @Option(names = "--seed", description = "The same seed gives the same shop.", defaultValue = "1")
    private long seed;

    @Option(names = "--tickets", description = "How many tickets.", defaultValue = "1200")
    private int tickets;

    @Option(names = "--years", description = "How many years.", defaultValue = "4")
    private int years;

    @Option(names = "--clean", description = "One price book, one file a table, no row that is wrong or unusual.")
    private boolean clean;

    private WriteShop() {}

    /** Takes the folder and the options as the command line has them. */
    public static void main(String[] arguments) {
        int code = new CommandLine(new WriteShop()).execute(arguments);
        if (code != 0) {
            throw new IllegalArgumentException("The shop was not written.");
        }
    }

    @Override
    public Integer call() throws Exception {
        WriteSample.write(SampleOptions.standard(folder)
                .withSeed(seed)
                .withTickets(tickets)
                .withYears(years)
                .with(clean ? Tidiness.TIDY : Tidiness.UNTIDY));
        return 0;
    }
}
