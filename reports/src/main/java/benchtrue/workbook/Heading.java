package benchtrue.workbook;

import java.util.List;
import org.apache.poi.ss.usermodel.Sheet;

/**
 * One column's heading.
 *
 * @param words what it says, with its unit
 * @param width in characters
 * @param kind stands above text or above figures
 */
record Heading(String words, int width, Look.Kind kind) {
    static Heading text(String words, int width) {
        return new Heading(words, width, Look.Kind.HEADING);
    }

    /** Stands off from a figure before it. */
    static Heading note(String words, int width) {
        return new Heading(words, width, Look.Kind.NOTE_HEADING);
    }

    /** Figures stand at the right of their column, and so does their heading. */
    static Heading figure(String words, int width) {
        return new Heading(words, width, Look.Kind.FIGURE_HEADING);
    }

    /** Writes headings into a row, sets widths, freezes what stands above the rows and repeats it on paper. */
    static void write(List<Heading> headings, int row, Sheet sheet, Grid grid) {
        float height = 0;
        for (Heading heading : headings) {
            height = Math.max(height, TextHeight.bold(heading.words, heading.width));
        }
        grid.row(row).tall(height);
        for (int i = 0; i < headings.size(); i++) {
            grid.text(headings.get(i).words, headings.get(i).kind);
            sheet.setColumnWidth(i, headings.get(i).width * 256);
        }
        sheet.createFreezePane(1, row);
        Paper.landscape(sheet);
        Paper.repeat(sheet, row);
    }
}
