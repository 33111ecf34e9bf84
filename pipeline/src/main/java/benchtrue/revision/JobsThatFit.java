package benchtrue.revision;

import benchtrue.findings.Findings;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Hours;
import benchtrue.shop.RepairType;

/** How many of a repair's finished jobs fit some hours: jobs that tell it, brought to today's pace and book. */
public final class JobsThatFit {
    private final PastJobs past;
    private final Ledger ledger;

    private JobsThatFit(PastJobs past, Ledger ledger) {
        this.past = past;
        this.ledger = ledger;
    }

    /** Counts the jobs of a shop. */
    public static JobsThatFit of(JobLines jobs, Findings findings) {
        return new JobsThatFit(new PastJobs(jobs, findings.surelyOwn().rows(), findings.pace()), jobs.ledger());
    }

    /** Returns how many jobs of a repair type tell it. */
    public int jobs(int repairType) {
        return repairType >= 0 ? past.count(repairType) : 0;
    }

    /** Returns how many of them took no longer than some seconds would allow where today's book stands. */
    public int within(int repairType, long seconds) {
        double today = ledger.books()
                .type(ledger.repairTypes().name(repairType), ledger.asOf())
                .map(RepairType::bookSeconds)
                .map(Hours::of)
                .orElse(0.0);
        double share = today > 0 ? past.within(repairType, Hours.of(seconds) / today) : Double.NaN;
        return Double.isNaN(share) ? 0 : (int) StrictMath.rint(share * past.count(repairType));
    }
}
