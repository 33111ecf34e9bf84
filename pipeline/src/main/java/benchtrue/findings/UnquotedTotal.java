package benchtrue.findings;

/**
 * Work that tickets never quoted: given away (methods, section 3a).
 *
 * @param repairType code of the repair type done
 * @param tickets tickets it was done on unquoted
 * @param seconds hours given away in all
 * @param annualHours hours given away a year
 * @param annualMoney what they would have earned a year at the shop's rate, ten-thousandths
 */
public record UnquotedTotal(int repairType, int tickets, long seconds, double annualHours, long annualMoney) {}
