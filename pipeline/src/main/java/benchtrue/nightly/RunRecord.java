package benchtrue.nightly;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Balance;
import benchtrue.shop.Notice;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * {@code run.json}: everything needed to repeat a run and to check what it published. It holds no clock time, duration,
 * host, path or Java version, so that the same inputs give the same bytes.
 */
final class RunRecord {
    static final String FILE = "run.json";

    private RunRecord() {}

    /** Returns the record's text. */
    static String text(
            String version, Review review, Inputs inputs, List<FileDigest> comparedWith, List<FileDigest> outputs) {
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("program", "benchtrue");
        record.put("version", version);
        record.put("as_of", LocalDate.ofEpochDay(review.ledger().asOf()).toString());
        record.put("settings", review.settings().byKey());
        record.put("inputs", files(inputs.files()));
        record.put("read_as", inputs.told());
        record.put("compared_with", files(comparedWith));
        record.put("counts", counts(review));
        record.put("missing_tables", List.copyOf(new TreeSet<>(review.ledger().missing())));
        record.put(
                "balances", review.balances().stream().map(RunRecord::balance).toList());
        record.put("money", MoneyRecord.of(review.costs()));
        record.put(
                "restatements",
                review.restatements().stream().map(MoneyRecord::restatement).toList());
        record.put("set_aside", review.setAside());
        record.put("warnings", review.notices().stream().map(RunRecord::warning).toList());
        record.put("outputs", files(outputs));
        return Json.text(record);
    }

    private static List<Map<String, Object>> files(List<FileDigest> files) {
        return files.stream()
                .map(file -> {
                    Map<String, Object> entry = new LinkedHashMap<>();
                    entry.put("file", file.file());
                    entry.put("bytes", file.bytes());
                    entry.put("sha256", file.sha256());
                    return entry;
                })
                .toList();
    }

    private static Map<String, Object> counts(Review review) {
        Ledger ledger = review.ledger();
        Map<String, Object> counts = new LinkedHashMap<>();
        counts.put("tickets", ledger.tickets().size());
        counts.put("quoted_lines", ledger.lines().size());
        counts.put("time_entries", ledger.time().size());
        counts.put("part_uses", ledger.partUses().size());
        counts.put("price_book_versions", ledger.books().versions().size());
        counts.put("findings", review.findings().repairs().size());
        counts.put("proposals", review.revision().changes().size());
        return counts;
    }

    private static Map<String, Object> balance(Balance balance) {
        Map<String, Long> terms = new LinkedHashMap<>();
        balance.terms().forEach(term -> terms.merge(term.name(), term.amount(), Math::addExact));
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("name", balance.name());
        entry.put("unit", balance.unit());
        entry.put("read", balance.read());
        entry.put("terms", terms);
        return entry;
    }

    private static Map<String, Object> warning(Notice notice) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("code", notice.code());
        entry.put("count", notice.count());
        entry.put("words", notice.words());
        entry.put("examples", notice.examples());
        return entry;
    }
}
