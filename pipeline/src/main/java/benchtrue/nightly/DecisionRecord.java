package benchtrue.nightly;

import benchtrue.format.Words;
import benchtrue.revision.DecidedDraft;
import benchtrue.revision.Decision;
import benchtrue.revision.SurchargeDecision;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the owner decided, who did, when, and on which night's figures; and what was taken back. Kept for ever. */
final class DecisionRecord {
    /** Every name that a record of either kind may have. */
    static final Set<String> NAMES = Set.of(
            "effective",
            "decided_on",
            "decided_by",
            "used_already_because",
            "draft_sha256",
            "run_sha256",
            "decisions",
            "surcharges",
            "withdrawn_on",
            "withdrawn_by",
            "reason",
            "withdraws");

    private DecisionRecord() {}

    /**
     * Returns the record of one sitting.
     *
     * @param before the book that the next one begins from
     * @param next the next one
     * @param run digest of the night's record
     */
    static String sitting(PriceBook before, PriceBook next, DecidedDraft draft, Adoption adoption, String run) {
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("effective", adoption.effective().toString());
        record.put("decided_on", adoption.decidedOn().toString());
        record.put("decided_by", adoption.by());
        adoption.usedAlready().ifPresent(reason -> record.put("used_already_because", reason));
        record.put("draft_sha256", draft.draft());
        record.put("run_sha256", run);
        record.put(
                "decisions",
                draft.decided().stream()
                        .map(decision -> row(before, next, decision))
                        .toList());
        if (!draft.surcharges().isEmpty()) {
            record.put(
                    "surcharges",
                    draft.surcharges().stream().map(DecisionRecord::row).toList());
        }
        return SealedRecord.text(record);
    }

    private static Map<String, Object> row(SurchargeDecision decision) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("repair_type", decision.line().repairType());
        row.put("when", decision.line().when());
        row.put("decision", Words.of(decision.choice()));
        row.put("hours", Hours.text(decision.line().seconds()));
        row.put("labour", Money.text(decision.line().labour()));
        return row;
    }

    private static Map<String, Object> row(PriceBook before, PriceBook next, Decision decision) {
        RepairType was = before.type(decision.repairType()).orElseThrow();
        RepairType is = next.type(decision.repairType()).orElseThrow();
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("repair_type", decision.repairType());
        row.put("decision", Words.of(decision.choice()));
        row.put("hours_before", Hours.text(was.bookSeconds()));
        row.put("hours", Hours.text(is.bookSeconds()));
        row.put("labour_before", Money.text(was.bookLabour()));
        row.put("labour", Money.text(is.bookLabour()));
        row.put("reason", decision.reason());
        row.put(
                "until",
                Absent.has(decision.until())
                        ? LocalDate.ofEpochDay(decision.until()).toString()
                        : "");
        return row;
    }

    /**
     * Returns the record of a book that was taken back.
     *
     * @param sittings names of the records of what was decided for it
     */
    static String withdrawal(Withdraw.Request request, List<String> sittings) {
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("effective", request.effective().toString());
        record.put("withdrawn_on", request.withdrawnOn().toString());
        record.put("withdrawn_by", request.by());
        record.put("reason", request.reason());
        record.put(
                "withdraws", sittings.stream().map(file -> Map.of("file", file)).toList());
        return SealedRecord.text(record);
    }

    /** Returns where the rows of a withdrawn book are kept: beside the record. */
    static Path book(Path record) {
        String name = record.getFileName().toString();
        return record.resolveSibling(name.substring(0, name.lastIndexOf('.')) + ".csv");
    }
}
