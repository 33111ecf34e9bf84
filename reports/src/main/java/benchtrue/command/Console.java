package benchtrue.command;

import java.io.PrintWriter;
import java.time.Clock;

/**
 * What the program knows of the machine it runs on.
 *
 * @param terminal where only the program's own words and marks go: help, and the bar that is drawn over
 * @param out summaries
 * @param err progress and messages
 * @param watched whether somebody watches the error stream on a terminal
 * @param clock the machine's clock
 */
record Console(PrintWriter terminal, PrintWriter out, PrintWriter err, boolean watched, Clock clock) {}
