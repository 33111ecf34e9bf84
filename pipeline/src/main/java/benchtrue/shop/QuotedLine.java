package benchtrue.shop;

/**
 * One repair type quoted on a ticket. Amounts of seconds and money not recorded are {@link Absent#AMOUNT}.
 *
 * @param ticket index of the ticket
 * @param line the line's key within its ticket
 * @param repairType code of the repair type
 * @param quotedSeconds hours quoted, newest export
 * @param quotedLabour labour price quoted
 * @param quotedParts parts price quoted
 * @param outcome what the customer said
 * @param quotedOn day quoted where later than the ticket's first lines (found work), or {@link Absent#DAY}
 * @param firstQuotedSeconds hours of the first accepted quote
 * @param firstQuotedLabour labour price of the first accepted quote
 * @param quoteBasis what the quote promises
 * @param paidBy who pays
 * @param reworkOf index of the ticket this line puts right, or {@link Absent#INDEX}
 * @param reworkOfLine index of the line this line puts right, or {@link Absent#INDEX}
 * @param returnReason why it came back, or null where it did not or nobody said
 */
public record QuotedLine(
        int ticket,
        String line,
        int repairType,
        long quotedSeconds,
        long quotedLabour,
        long quotedParts,
        Outcome outcome,
        int quotedOn,
        long firstQuotedSeconds,
        long firstQuotedLabour,
        long billedLabour,
        long billedParts,
        ChargeKind chargeKind,
        QuoteBasis quoteBasis,
        PaidBy paidBy,
        int reworkOf,
        int reworkOfLine,
        ReturnReason returnReason) {}
