/**
 * How values become text: figures in the shop's region, words of enums, the glossary of words that may be shown, near names,
 * text that a spreadsheet must not run.
 *
 * <p>In: values of {@code shop}. Out: text. Nothing of the machine's locale is asked.
 */
package benchtrue.format;
