package benchtrue.command;

import benchtrue.nightly.Progress;
import java.io.PrintWriter;

/** Shows on the error stream how far a run is: one bar drawn over on a terminal, one line a stage elsewhere. */
final class ShowProgress implements Progress {
    private static final int WIDTH = 30;
    private static final int WIDEST = 100;
    private final PrintWriter terminal;
    private final PrintWriter err;
    private final boolean watched;
    private boolean drawn;

    ShowProgress(PrintWriter terminal, PrintWriter err, boolean watched) {
        this.terminal = terminal;
        this.err = err;
        this.watched = watched;
    }

    @Override
    public void begins(int number, int of, String what) {
        if (watched) {
            int done = WIDTH * (number - 1) / of;
            String bar = "=".repeat(done) + " ".repeat(WIDTH - done);
            drawn = true;
            terminal.print("\r" + padded("[" + bar + "] " + number + " of " + of + "  " + what));
        } else {
            err.println("benchtrue: stage " + number + "/" + of + ": " + what);
        }
        terminal.flush();
        err.flush();
    }

    @Override
    public void tells(String what) {
        ends();
        err.println("benchtrue: note: " + what);
    }

    /** Takes the bar away, so that what follows begins on an empty line. */
    void ends() {
        if (drawn) {
            drawn = false;
            terminal.print("\r" + padded("") + "\r");
            terminal.flush();
        }
    }

    private static String padded(String text) {
        return text + " ".repeat(Math.max(0, WIDEST - text.length()));
    }
}
