package benchtrue.findings;

/**
 * The jobs of one repair type in opening order.
 *
 * @param repairType code of the repair type
 * @param days day each was opened
 * @param residuals ln(hours) of each above what its repair, people, instrument and quote foretold
 */
record DriftJobs(int repairType, int[] lines, int[] days, double[] residuals) {
    int size() {
        return lines.length;
    }
}
