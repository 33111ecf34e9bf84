package benchtrue.answers;

/**
 * Where unread hours lie.
 *
 * @param what a repair, a month or a technician
 * @param unreadSeconds that could not be read
 * @param readSeconds that could
 */
public record Unread(String what, double unreadSeconds, double readSeconds) {}
