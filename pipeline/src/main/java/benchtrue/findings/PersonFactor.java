package benchtrue.findings;

/**
 * How long jobs take with a person, the mix of jobs apart. For scheduling and training; no ground for pay or discipline.
 *
 * @param name as in the shop's records
 * @param jobs finished jobs
 * @param repairTypes kinds of repair among them
 * @param factor hours with this person over hours with the usual mix; for a quote writer, hours per hour quoted over those of
 *     quotes at the book: the writer's own effect and what the usual distance from the book costs
 * @param lower lower end of its 90 % interval
 * @param upper upper end
 */
public record PersonFactor(
        Role role, String name, int jobs, int repairTypes, double factor, double lower, double upper) {

    /** What a person did on the jobs. */
    public enum Role {
        TECHNICIAN,
        QUOTE_WRITER
    }
}
