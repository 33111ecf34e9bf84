/** The tables and columns that are read, and how a shop's own words map to them. */
package benchtrue.intake.columns;
