package benchtrue.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import picocli.AutoComplete;
import picocli.CommandLine;

/** Writes the manual page and the shell's completion; the build calls it for the installation archive. */
public final class WriteHelpFiles {
    private WriteHelpFiles() {}

    /** Writes below the folder it is given, in the layout of a Unix {@code share}. */
    public static void main(String[] folder) throws IOException {
        Path share = Path.of(folder[0]);
        write(share.resolve("man/man1/benchtrue.1"), manual());
        write(share.resolve("bash-completion/completions/benchtrue"), AutoComplete.bash("benchtrue", line()));
    }

    static String manual() {
        return Manual.of(line(), Program.version());
    }

    /** Returns the commands of a program that is not run. */
    static CommandLine line() {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        Clock never = Clock.fixed(Instant.EPOCH, ZoneOffset.UTC);
        return new Program(nowhere, nowhere, false, never, Map.of()).line();
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }
}
