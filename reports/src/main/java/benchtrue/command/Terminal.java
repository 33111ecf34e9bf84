package benchtrue.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Whether somebody watches a stream. */
final class Terminal {
    private Terminal() {}

    /** Returns whether a stream's file is a terminal on which a line can be drawn over. */
    static boolean isOne(Path stream, Map<String, String> environment) {
        if (environment.getOrDefault("TERM", "dumb").equals("dumb")) {
            return false;
        }
        try {
            Path device = stream.toRealPath();
            return device.startsWith("/dev/pts") || device.toString().startsWith("/dev/tty") && Files.exists(device);
        } catch (IOException notALink) {
            return false; // A pipe or a machine without such a folder: plain lines serve both.
        }
    }
}
