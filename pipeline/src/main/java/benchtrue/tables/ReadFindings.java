package benchtrue.tables;

import benchtrue.shop.Absent;
import benchtrue.shop.Harmless;
import benchtrue.shop.Money;
import java.io.IOException;
import java.io.Reader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads back the findings of an earlier result, to say what changed since. */
public final class ReadFindings {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    /** Returns the rows of a result folder's {@code findings.csv}, in its order. */
    public List<EarlierFinding> read(Path folder) throws IOException {
        List<EarlierFinding> findings = new ArrayList<>();
        try (Reader text = Files.newBufferedReader(folder.resolve(WriteTables.FINDINGS), StandardCharsets.UTF_8)) {
            for (CSVRecord row : FORMAT.parse(text)) {
                findings.add(finding(row));
            }
        } catch (IllegalArgumentException e) {
            throw new IOException(folder.resolve(WriteTables.FINDINGS) + " is not as it was written", e);
        }
        return findings;
    }

    private static EarlierFinding finding(CSVRecord row) {
        String factor = row.get("load_factor");
        String shortfall = row.get("annual_shortfall");
        return new EarlierFinding(
                Harmless.read(row.get("repair_type")),
                Integer.parseInt(row.get("lines")),
                factor.isEmpty() ? Double.NaN : Double.parseDouble(factor),
                shortfall.isEmpty() ? Absent.AMOUNT : Money.of(new BigDecimal(shortfall)),
                row.get("verdict"));
    }
}
