package benchtrue.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.logging.LogManager;

/** The one place that asks the machine for its clock, its streams and its environment. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.setProperty("java.awt.headless", "true");
        // Libraries log what they also throw; the program says it in its own words.
        LogManager.getLogManager().reset();
        Map<String, String> environment = System.getenv();
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        boolean watched = Terminal.isOne(Path.of("/proc/self/fd/2"), environment);
        System.exit(new Program(out, err, watched, Clock.systemUTC(), environment).run(args));
    }

    /** Whether somebody watches a stream. */
    static final class Terminal {
        private Terminal() {}

        /** Returns whether a stream's file is a terminal on which a line can be drawn over. */
        static boolean isOne(Path stream, Map<String, String> environment) {
            if (environment.getOrDefault("TERM", "dumb").equals("dumb")) {
                return false;
            }
            try {
                Path device = stream.toRealPath();
                return device.startsWith("/dev/pts")
                        || device.toString().startsWith("/dev/tty") && Files.exists(device);
            } catch (IOException notALink) {
                return false; // A pipe or a machine without such a folder: plain lines serve both.
            }
        }
    }
}
