package benchtrue.command;

import benchtrue.nightly.Progress;
import java.io.PrintWriter;

/** Says nothing of how far a run is, only what the owner should know at once. */
final class QuietProgress implements Progress {
    private final PrintWriter err;

    QuietProgress(PrintWriter err) {
        this.err = err;
    }

    @Override
    public void begins(int number, int of, String what) {
        // Nobody watches.
    }

    @Override
    public void tells(String what) {
        err.println("benchtrue: note: " + what);
    }
}
