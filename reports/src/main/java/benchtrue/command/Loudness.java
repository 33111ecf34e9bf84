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
                description = "Say everything: every balance, every doubt, how long each stage took.")
        private boolean verbose;
    }

    boolean quiet() {
        return choice.quiet;
    }

    boolean verbose() {
        return choice.verbose;
    }
}
