/**
 * Drafts how a shop's own files are read.
 *
 * <p>In: what stands in the files of the inbox and of the price book, by {@link benchtrue.intake.ProfileFiles}. Out: the
 * text of {@code shop-draft.toml}, with a confidence and the reason for each column, and what is to be asked. Refused: a
 * draft that the owner has changed is never written over.
 */
package benchtrue.mapping;
