package benchtrue.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
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
}
