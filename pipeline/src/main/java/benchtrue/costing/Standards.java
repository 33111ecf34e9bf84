package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.QuotedLines;

/**
 * Standard hours of each line: a repair's or package's hours in the price book; of other charges and of one-off work, the
 * quote; without either, the hours it took, so that it moves nothing.
 */
final class Standards {
    private final JobLines jobs;
    private final long[] todayOfType;

    Standards(JobLines jobs) {
        this.jobs = jobs;
        Ledger ledger = jobs.ledger();
        todayOfType = new long[ledger.repairTypes().size()];
        for (int type = 0; type < todayOfType.length; type++) {
            todayOfType[type] = ledger.books()
                    .type(ledger.repairTypes().name(type), ledger.asOf())
                    .map(found -> found.bookSeconds())
                    .orElse(Absent.AMOUNT);
        }
    }

    /** Returns the hours the book in force at the quote allows. */
    long then(int line) {
        return standard(line, jobs.bookSecondsThen(line));
    }

    /** Returns the hours today's book allows, so that months under different books compare. */
    long today(int line) {
        return standard(line, todayOfType[jobs.ledger().lines().repairType(line)]);
    }

    /** Returns the hours quoted, else those the book allows. */
    long quoted(int line) {
        long quoted = jobs.ledger().lines().judgedSeconds(line);
        return quoted > 0 ? quoted : then(line);
    }

    private long standard(int line, long book) {
        QuotedLines lines = jobs.ledger().lines();
        ChargeKind kind = lines.chargeKind(line);
        boolean fromBook = kind == ChargeKind.REPAIR || kind == ChargeKind.PACKAGE;
        if (fromBook && Absent.has(book)) {
            return book;
        }
        return lines.judgedSeconds(line) > 0 ? lines.judgedSeconds(line) : Math.max(0, jobs.actualSeconds(line));
    }
}
