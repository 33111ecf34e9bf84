package benchtrue.costing;

import benchtrue.shop.Absent;

/**
 * Why the margin of the jobs finished in one month differs from that of an earlier one, in ten-thousandths; positive parts
 * raise it. The parts add up to the difference exactly; parts and overhead are absent where no table tells them. Volume is measured in the standard hours of today's book.
 *
 * @param from earlier month
 * @param to later month
 * @param before margin of the earlier month
 * @param volume more or less work at the earlier month's mix and margin
 * @param mix other kinds of jobs
 * @param price labour revenue of a standard hour
 * @param efficiency hours taken for a standard hour
 * @param wages what an hour cost
 * @param overhead overhead carried by jobs
 * @param after margin of the later month
 */
public record MarginBridge(
        int from,
        int to,
        long before,
        long volume,
        long mix,
        long price,
        long efficiency,
        long wages,
        long parts,
        long overhead,
        long after) {

    /** Returns the parts together: the whole difference. */
    public long change() {
        return volume + mix + price + efficiency + wages + Absent.firstOf(parts, 0) + Absent.firstOf(overhead, 0);
    }

    /** Returns this bridge with the parts absent that a basis can't tell. */
    MarginBridge on(MarginBasis basis) {
        return new MarginBridge(
                from,
                to,
                before,
                volume,
                mix,
                price,
                efficiency,
                wages,
                basis.parts() ? parts : Absent.AMOUNT,
                basis.overheads() ? overhead : Absent.AMOUNT,
                after);
    }

    /**
     * Returns the bridge between two months. The earlier month's figures of each repair type are scaled to the later
     * month's standard hours of the type, each rounded once; every part is the difference of two such sums, so that they
     * telescope. A type that the earlier month lacks is measured against that month's average.
     */
    static MarginBridge between(int from, TypeMoney before, int to, TypeMoney after) {
        long hoursBefore = TypeMoney.sum(before.standardSeconds());
        long hoursAfter = TypeMoney.sum(after.standardSeconds());
        if (hoursBefore == 0) {
            long change = after.margin() - before.margin();
            return new MarginBridge(from, to, before.margin(), change, 0, 0, 0, 0, 0, 0, after.margin());
        }
        Flexed flexed = Flexed.of(before, after);
        long atOldMix = Rate.scaled(before.margin(), hoursAfter, hoursBefore);
        return new MarginBridge(
                from,
                to,
                before.margin(),
                atOldMix - before.margin(),
                flexed.margin() - atOldMix,
                TypeMoney.sum(after.labourRevenue()) - flexed.revenue,
                flexed.labour - flexed.labourAtOldWage,
                flexed.labourAtOldWage - TypeMoney.sum(after.labourCost()),
                TypeMoney.sum(after.partsMargin()) - flexed.parts,
                flexed.overhead - TypeMoney.sum(after.overheadCost()),
                after.margin());
    }

    /**
     * The earlier month's figures at the later month's standard hours.
     *
     * @param labour labour cost at the earlier month's hours for a standard hour
     * @param labourAtOldWage the hours really taken, at the earlier month's wage
     */
    private record Flexed(long revenue, long labour, long labourAtOldWage, long parts, long overhead) {
        static Flexed of(TypeMoney before, TypeMoney after) {
            Flexed sum = new Flexed(0, 0, 0, 0, 0);
            for (int type = 0; type < after.types(); type++) {
                sum = sum.plus(of(before, after, type));
            }
            return sum;
        }

        private static Flexed of(TypeMoney before, TypeMoney after, int type) {
            boolean known = before.standardSeconds()[type] > 0;
            long from = known ? before.standardSeconds()[type] : TypeMoney.sum(before.standardSeconds());
            long to = after.standardSeconds()[type];
            return new Flexed(
                    Rate.scaled(of(before.labourRevenue(), type, known), to, from),
                    Rate.scaled(of(before.labourCost(), type, known), to, from),
                    atOldWage(before, after, type),
                    Rate.scaled(of(before.partsMargin(), type, known), to, from),
                    Rate.scaled(of(before.overheadCost(), type, known), to, from));
        }

        private static long of(long[] column, int type, boolean known) {
            return known ? column[type] : TypeMoney.sum(column);
        }

        private static long atOldWage(TypeMoney before, TypeMoney after, int type) {
            boolean known = before.actualSeconds()[type] > 0;
            long hours = of(before.actualSeconds(), type, known);
            return hours > 0
                    ? Rate.scaled(of(before.labourCost(), type, known), after.actualSeconds()[type], hours)
                    : after.labourCost()[type];
        }

        private Flexed plus(Flexed other) {
            return new Flexed(
                    Math.addExact(revenue, other.revenue),
                    Math.addExact(labour, other.labour),
                    Math.addExact(labourAtOldWage, other.labourAtOldWage),
                    Math.addExact(parts, other.parts),
                    Math.addExact(overhead, other.overhead));
        }

        private long margin() {
            return revenue - labour + parts - overhead;
        }
    }
}
