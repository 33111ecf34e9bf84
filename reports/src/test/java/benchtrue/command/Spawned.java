package benchtrue.command;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The program as a process of its own, under a Java of the test's choosing. */
final class Spawned {
    private Spawned() {}

    /** Starts the program in a working folder; its streams go to a file beside it. */
    static Process start(Path folder, List<String> java, String... arguments) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add("-Xmx512m");
        command.addAll(java);
        command.add("-cp");
        command.add(absolute(System.getProperty("java.class.path")));
        command.add("benchtrue.command.Main");
        command.addAll(List.of(arguments));
        File log = folder.resolve("spawned.log").toFile();
        return new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(log))
                .start();
    }

    /** Waits for the end and returns the exit code. */
    static int end(Process process) throws InterruptedException {
        if (!process.waitFor(5, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IllegalStateException("the program did not end within five minutes");
        }
        return process.exitValue();
    }

    private static String absolute(String classPath) {
        List<String> entries = new ArrayList<>();
        for (String entry : classPath.split(File.pathSeparator)) {
            entries.add(Path.of(entry).toAbsolutePath().toString());
        }
        return String.join(File.pathSeparator, entries);
    }
}
