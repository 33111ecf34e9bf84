/** How a file is written: encoding, layout, order of dates, decimal sign, totals; told from the whole file or asked. */
package benchtrue.intake.dialects;
