/**
 * The shop's settings.
 *
 * <p>In: {@code shop.toml}, which may be missing. Out: {@link benchtrue.settings.Settings}, every default in one place.
 * Refused: an unknown key, a value out of range; the message names line, column and the nearest known key.
 */
package benchtrue.settings;
