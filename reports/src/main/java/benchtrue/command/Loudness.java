package benchtrue.command;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** How much a command says; the same options on every command. */
final class Loudness {
    @ArgGroup
    private Choice choice = new Choice();

    private static final class Choice {
        @Option(
                names = {"-q", "--quiet"},
                description = "Say only what went wrong.")
        private boolean quiet;

        @Option(
                names = {"-v", "--verbose"},
                description = "Say also how long each stage took and every balance.")
        private boolean verbose;
    }

    boolean quiet() {
        return choice.quiet;
    }

    boolean verbose() {
        return choice.verbose;
    }
}
