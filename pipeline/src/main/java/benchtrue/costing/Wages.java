package benchtrue.costing;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.Wage;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;

/** Wage on the day x hours x (1 + burden). */
final class Wages implements EntryPrice {
    private static final long MILLION = 1_000_000;
    private static final long DENOMINATOR = Hours.SECONDS * MILLION;
    private final int[] effectiveFrom;
    private final long[] hourlyWage;
    private final TimeEntries time;
    private final int[] first;
    private final long onePlusBurden;

    /** Takes the wage list and the payroll on-costs as a share of the wage, to the millionth. */
    Wages(Ledger ledger, double burden) {
        List<Wage> byTechnician = ledger.wages();
        effectiveFrom = byTechnician.stream().mapToInt(Wage::effectiveFrom).toArray();
        hourlyWage = byTechnician.stream().mapToLong(Wage::hourlyWage).toArray();
        time = ledger.time();
        int technicians = ledger.technicians().size();
        first = new int[technicians + 1];
        for (Wage wage : byTechnician) {
            first[wage.technician() + 1]++;
        }
        for (int i = 0; i < technicians; i++) {
            first[i + 1] += first[i];
        }
        onePlusBurden = BigDecimal.ONE
                .add(BigDecimal.valueOf(burden))
                .movePointRight(6)
                .setScale(0, RoundingMode.HALF_EVEN)
                .longValueExact();
    }

    /** Returns the hourly wage of a technician on a day, or absent. */
    long hourly(int technician, int day) {
        for (int i = first[technician + 1] - 1; i >= first[technician]; i--) {
            if (effectiveFrom[i] <= day) {
                return hourlyWage[i];
            }
        }
        return Absent.AMOUNT;
    }

    @Override
    public long of(int entry) {
        long wage = hourly(time.technician(entry), time.workDay(entry));
        return Absent.has(wage) ? cost(wage, time.seconds(entry)) : Absent.AMOUNT;
    }

    /** Returns what some seconds at an hourly wage cost with payroll on-costs, rounded once. */
    long cost(long wage, long seconds) {
        long loaded = Math.multiplyExact(wage, onePlusBurden);
        long product = loaded * seconds;
        if (Math.multiplyHigh(loaded, seconds) != product >> 63) {
            return new BigDecimal(BigInteger.valueOf(loaded).multiply(BigInteger.valueOf(seconds)))
                    .divide(BigDecimal.valueOf(DENOMINATOR), 0, RoundingMode.HALF_EVEN)
                    .longValueExact();
        }
        return Rate.halfEven(product, DENOMINATOR);
    }
}
