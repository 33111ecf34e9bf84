package benchtrue.intake.dialects;

import benchtrue.intake.cells.NumberText;
import benchtrue.intake.files.CsvRecords;
import benchtrue.intake.files.Encoding;
import benchtrue.intake.files.Records;
import benchtrue.intake.files.TextLayout;
import benchtrue.settings.DecimalSign;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * Opens a text file of any encoding and layout.
 *
 * @param encoding of its letters
 * @param layout of its cells
 * @param title what stands above the column names
 */
public record TextFile(Encoding encoding, TextLayout layout, String title) implements Source {
    @Override
    public Records open(InputStream bytes, String file) throws IOException {
        bytes.skipNBytes(encoding.mark());
        return CsvRecords.open(bytes, file, encoding.charset(), layout);
    }

    /** In the data contract's own layout a point stands before decimals; elsewhere three figures behind it may be a thousand. */
    @Override
    public DecimalSign decimals(NumberText.Sign sign, DialectEvidence evidence) {
        if (evidence.decimals() != null) {
            return evidence.decimals();
        }
        boolean open =
                sign == NumberText.Sign.OPEN_COMMA || sign == NumberText.Sign.OPEN_POINT && layout.delimiter() != ',';
        return open ? null : DialectEvidence.asItTells(sign);
    }

    @Override
    public List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        reasons.add("encoding " + encoding.charset().name() + " (" + encoding.reason() + ")");
        reasons.addAll(layout.reasons());
        return reasons;
    }
}
