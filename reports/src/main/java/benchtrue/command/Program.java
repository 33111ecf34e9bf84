package benchtrue.command;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;

/** The program from its arguments to its exit code, with everything of the machine handed in. */
@Command(
        name = "benchtrue",
        description = "Keeps a fretted-instrument repair shop's price book true, every night.",
        synopsisSubcommandLabel = "COMMAND",
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:results were published, also where rows were set aside",
            "64:the arguments were not understood",
            "65:a file or its columns can't be used",
            "66:the shop folder, its exports or a needed table is missing",
            "69:no Java 17 or newer was found (said by the launcher)",
            "70:a fault of the program",
            "73:results can't be written",
            "74:reading failed part-way",
            "75:another run is working on the shop folder",
            "78:the settings are wrong"
        })
final class Program implements Runnable {
    private final PrintWriter help;
    private final Console console;
    private final Map<String, String> environment;

    Program(PrintWriter out, PrintWriter err, boolean watched, Clock clock, Map<String, String> environment) {
        this.help = out;
        this.console = new Console(err, plain(out), plain(err), watched, clock);
        this.environment = Map.copyOf(environment);
    }

    private static PrintWriter plain(PrintWriter screen) {
        return new PrintWriter(new PlainScreen(screen), true);
    }

    /** Returns the version that the build wrote beside the classes. */
    static String version() {
        try (InputStream text = Program.class.getResourceAsStream("version.txt")) {
            return new String(text.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"benchtrue " + version()};
        }
    }

    /** Runs one command and returns the number that the process ends with. */
    int run(String... arguments) {
        try {
            return line(arguments).execute(arguments);
        } catch (Error e) { // Out of memory, above all: the last good result stands, and the exit code must say so.
            return fault(e);
        } finally {
            console.out().flush();
            console.err().flush();
        }
    }

    /**
     * Returns every command with its options: what is run, and what help, manual and completion are written from. Where the
     * arguments begin with one, it stands alone, since describing the others takes longer than starting it.
     */
    CommandLine line(String... arguments) {
        List<Object> all = List.of(
                new NightlyCommand(console),
                new CheckCommand(console),
                new MapCommand(console),
                new AdoptCommand(console),
                new WithdrawCommand(console),
                new CloseCommand(console),
                new BreakdownCommand(console),
                new VerifyCommand(console));
        List<Object> asked = all.stream()
                .filter(command -> arguments.length > 0 && arguments[0].equals(name(command)))
                .toList();
        CommandLine line = new CommandLine(this);
        (asked.isEmpty() ? all : asked).forEach(line::addSubcommand);
        return line.addSubcommand(new CommandLine.HelpCommand())
                .registerConverter(LocalDate.class, text -> day(text, LocalDate::parse, "a day such as 2026-10-31"))
                .registerConverter(YearMonth.class, text -> day(text, YearMonth::parse, "a month such as 2026-09"))
                .setOut(help)
                .setErr(console.terminal())
                .setColorScheme(CommandLine.Help.defaultColorScheme(colour() ? Ansi.ON : Ansi.OFF))
                .setParameterExceptionHandler(this::notUnderstood)
                .setExecutionExceptionHandler(this::stopped);
    }

    private static String name(Object command) {
        return command.getClass().getAnnotation(Command.class).name();
    }

    private static <T> T day(String text, Function<String, T> reading, String expected) {
        try {
            return reading.apply(text);
        } catch (DateTimeException unreadable) {
            throw new TypeConversionException("found \"" + text + "\", expected " + expected);
        }
    }

    private boolean colour() {
        return console.watched() && environment.getOrDefault("NO_COLOR", "").isEmpty();
    }

    /** Without a command there is nothing to do, and saying so with the help is kinder than an error alone. */
    @Override
    public void run() {
        throw new ParameterException(line(), "Which command?");
    }

    private int notUnderstood(ParameterException found, String[] arguments) {
        CommandLine line = found.getCommandLine();
        ParameterException e =
                found instanceof MissingParameterException ? unknownOption(line, arguments, found) : found;
        console.err().println("benchtrue: error " + ExitCode.USAGE.number() + ": " + e.getMessage());
        if (!CommandLine.UnmatchedArgumentException.printSuggestions(e, console.err())) {
            line.usage(console.err());
        }
        return ExitCode.USAGE.number();
    }

    /** A mistyped option explains a missing one, not the other way round. */
    private static ParameterException unknownOption(CommandLine line, String[] arguments, ParameterException other) {
        return Arrays.stream(arguments)
                .map(argument -> argument.replaceFirst("=.*", ""))
                .filter(argument -> argument.startsWith("-")
                        && !line.getCommandSpec().optionsMap().containsKey(argument))
                .findFirst()
                .<ParameterException>map(
                        unknown -> new CommandLine.UnmatchedArgumentException(line, new ArrayList<>(List.of(unknown))))
                .orElse(other);
    }

    private int stopped(Exception e, CommandLine line, ParseResult arguments) {
        if (e instanceof Refusal refusal) {
            int code = refusal.exitCode().number();
            console.err().println("benchtrue: error " + code + ": " + refusal.getMessage());
            return code;
        }
        return fault(e);
    }

    private int fault(Throwable e) {
        console.err()
                .println("benchtrue: error " + ExitCode.FAULT.number()
                        + ": a fault of the program, not of your files. Nothing was published by this run. Report it where"
                        + " you got the program, with the lines below that begin with \"at\" and \"benchtrue "
                        + version()
                        + "\". Leave out the line above them if it shows anything of your shop, and send no files.");
        e.printStackTrace(console.err());
        return ExitCode.FAULT.number();
    }
}
