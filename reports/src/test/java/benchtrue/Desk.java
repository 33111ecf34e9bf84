package benchtrue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Programs of a desktop that show, print and check what is written; says which is missing and where it comes from. */
public final class Desk {
    private final Path folder;

    /** Takes a folder for what the programs leave behind. */
    public Desk(Path folder) {
        this.folder = folder;
    }

    /** Runs a program in the folder and returns what it prints. */
    public String run(String missing, String program, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(program));
        command.addAll(List.of(arguments));
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Process process;
        try {
            process = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile())
                    .start();
        } catch (IOException e) {
            return fail("expected the program " + program + " on the path, found none: " + missing, e);
        }
        if (!process.waitFor(180, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            return fail(program + " gave no answer within 180 s");
        }
        assertThat(process.exitValue())
                .as(program + ": " + Files.readString(err))
                .isZero();
        return Files.readString(out);
    }

    /** Runs Chromium without a window. */
    public String chromium(String... arguments) throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(List.of(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-background-networking",
                "--hide-scrollbars",
                "--user-data-dir=" + folder.resolve("profile")));
        all.addAll(List.of(arguments));
        return run("on Debian, apt-get install chromium", "chromium", all.toArray(String[]::new));
    }

    /** Runs one of the programs that read PDF. */
    public String poppler(String program, String... arguments) throws IOException, InterruptedException {
        return run("on Debian, apt-get install poppler-utils", program, arguments);
    }

    /** Fetches a package of the npm registry at one version into the folder. */
    public void npm(String packageAndVersion) throws IOException, InterruptedException {
        run(
                "on Debian, apt-get install npm; it must reach its registry",
                "npm",
                "install",
                "--no-audit",
                "--no-fund",
                "--no-save",
                "--prefix",
                folder.toString(),
                packageAndVersion);
    }
}
