package benchtrue.settings;

/**
 * One {@code key = "text"} of a file rule.
 *
 * @param key as written
 * @param text as written
 * @param line of {@code shop.toml}, from 1, for messages
 */
public record Pair(String key, String text, int line) {}
