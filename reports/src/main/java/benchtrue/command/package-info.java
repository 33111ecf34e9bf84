/**
 * The command line.
 *
 * <p>In: arguments, the machine's clock and terminal. Out: results in the shop folder, messages and progress on the error
 * stream, a summary on the output stream, an exit code. Refused: arguments that are not understood.
 */
package benchtrue.command;
