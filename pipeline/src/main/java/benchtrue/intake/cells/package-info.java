/** The text of one cell to a day, a time, an amount or hours, or to the reason why it can't be. */
package benchtrue.intake.cells;
