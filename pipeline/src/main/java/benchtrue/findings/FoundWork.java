package benchtrue.findings;

/**
 * One repair type that the bench finds while doing another, so that the first quote can warn of it (methods, section 3a).
 *
 * @param quoted code of the repair type quoted first
 * @param found code of the repair type found and quoted later
 * @param tickets accepted tickets with {@code quoted} among their first lines
 * @param times tickets of those on which {@code found} followed
 * @param lower lower end of the 90 % interval of times / tickets
 * @param upper upper end
 * @param annualHours quoted hours of it a year, against today's book
 * @param annualMoney what they are worth a year at the shop's rate, ten-thousandths
 */
public record FoundWork(
        int quoted,
        int found,
        int tickets,
        int times,
        double lower,
        double upper,
        double annualHours,
        long annualMoney) {

    /** Returns how often the one follows the other. */
    public double share() {
        return times / (double) tickets;
    }
}
