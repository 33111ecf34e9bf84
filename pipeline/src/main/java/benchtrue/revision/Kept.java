package benchtrue.revision;

/**
 * What the owner decided to leave as it is for a while.
 *
 * @param repairType its key
 * @param until first day on which it is asked again
 * @param reason why, in the owner's words
 */
public record Kept(String repairType, int until, String reason) {}
