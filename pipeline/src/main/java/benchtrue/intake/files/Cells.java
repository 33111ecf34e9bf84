package benchtrue.intake.files;

import benchtrue.intake.columns.Dictionary;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The cells of a record as texts. */
public final class Cells {
    private Cells() {}

    /** Returns the texts of a record's cells without spaces around them, cut where no column takes more. */
    public static List<String> of(Records record) {
        List<String> texts = new ArrayList<>(record.size());
        for (int cell = 0; cell < record.size(); cell++) {
            int length = Math.min(record.end(cell) - record.start(cell), Dictionary.KEPT);
            texts.add(new String(record.bytes(), record.start(cell), length, StandardCharsets.UTF_8).strip());
        }
        return texts;
    }
}
