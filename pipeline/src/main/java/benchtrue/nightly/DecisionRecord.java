package benchtrue.nightly;

import benchtrue.format.Words;
import benchtrue.revision.DecidedDraft;
import benchtrue.revision.Decision;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the owner decided, who did, when, and on which night's figures; kept for ever. */
final class DecisionRecord {
    private DecisionRecord() {}

    static String text(
            PriceBook today, DecidedDraft draft, LocalDate effective, LocalDate decidedOn, String by, String run) {
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("effective", effective.toString());
        record.put("decided_on", decidedOn.toString());
        record.put("decided_by", by);
        record.put("draft_sha256", draft.draft());
        record.put("run_sha256", run);
        List<Map<String, Object>> rows = draft.decisions().stream()
                .filter(decision -> decision.choice() != Decision.Choice.OPEN)
                .map(decision -> row(today, decision))
                .toList();
        record.put("decisions", rows);
        return Json.text(record);
    }

    private static Map<String, Object> row(PriceBook today, Decision decision) {
        RepairType before = today.type(decision.repairType()).orElseThrow();
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("repair_type", decision.repairType());
        row.put("decision", Words.of(decision.choice()));
        row.put("hours_before", Hours.text(before.bookSeconds()));
        row.put("hours", Hours.text(decision.seconds()));
        row.put("labour_before", Money.text(before.bookLabour()));
        row.put("labour", Money.text(decision.labour()));
        row.put("reason", decision.reason());
        row.put(
                "until",
                Absent.has(decision.until())
                        ? LocalDate.ofEpochDay(decision.until()).toString()
                        : "");
        return row;
    }
}
