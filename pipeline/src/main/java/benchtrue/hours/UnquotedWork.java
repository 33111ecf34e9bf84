package benchtrue.hours;

/**
 * Hours on a repair type that the ticket never quoted: given away (methods, section 3a).
 *
 * @param ticket index of the ticket
 * @param repairType code of the repair type done
 * @param seconds hours given away
 */
public record UnquotedWork(int ticket, int repairType, long seconds) {}
