package benchtrue.costing;

import benchtrue.shop.Absent;

/**
 * What a bench hour costs. Money an hour in ten-thousandths, absent where no table tells it; all but {@code wages} is
 * spread over the hours sold or put into the shop's own stock.
 *
 * @param wages wages and payroll on-costs of an hour on such jobs
 * @param unsold wages of logged time that stands on no such job
 * @param overtime what overtime cost above the wage
 * @param notLogged wages of paid time that never reached the log
 * @param overhead what keeping the doors open cost
 * @param supplies parts and materials drawn without a ticket
 */
public record HourCost(long wages, long unsold, long overtime, long notLogged, long overhead, long supplies) {
    /** Returns all that is known together; absent without wages or overheads. */
    public long total() {
        if (!Absent.has(wages) || !Absent.has(overhead)) {
            return Absent.AMOUNT;
        }
        return wages
                + Absent.firstOf(unsold, 0)
                + Absent.firstOf(overtime, 0)
                + overhead
                + Absent.firstOf(notLogged, 0)
                + Absent.firstOf(supplies, 0);
    }
}
