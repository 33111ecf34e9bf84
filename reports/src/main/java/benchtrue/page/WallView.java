package benchtrue.page;

import java.util.List;

/**
 * What hangs on the wall of the bench: hours alone, without wages, costs, tickets and names.
 *
 * @param title of the page
 * @param summary the finding in one sentence
 * @param changes hours from and to, by repair
 * @param pictures the evidence
 * @param cautions what to mind
 */
record WallView(
        String title,
        String summary,
        List<Change> changes,
        List<ReviewView.Illustration> pictures,
        List<ReviewView.Caution> cautions) {

    /** Hours of a repair from and to. */
    record Change(String label, String hours) {}
}
