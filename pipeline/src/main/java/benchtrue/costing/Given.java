package benchtrue.costing;

/**
 * One time something was given away.
 *
 * @param ticket index of the ticket
 * @param repairType code of the repair type
 * @param seconds bench time, 0 where it is a discount alone
 * @param worth what it would have brought, in ten-thousandths
 */
public record Given(int ticket, int repairType, long seconds, long worth) {}
