package benchtrue.page;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.Desk;
import benchtrue.InventedShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page as it is opened: a file on a disk, in a browser that may forbid scripts. */
@Tag("browser")
class FromFileTest {
    /** The page twice, side by side, once with scripts forbidden; says what they asked for and whether they look alike. */
    private static final String FRAMES = """
            <!DOCTYPE html><title>frames</title><pre id="result"></pre>
            <iframe id="without" sandbox="allow-same-origin" src="review.html" width="1200" height="900"></iframe>
            <iframe id="with" src="review.html" width="1200" height="900"></iframe>
            <script>
            function look(id) {
              const shown = document.getElementById(id).contentDocument;
              return [...shown.body.querySelectorAll('*')].map(part => {
                const box = part.getBoundingClientRect();
                return [part.tagName, box.x, box.y, box.width, box.height].join(' ');
              }).join('\\n') + shown.body.innerText;
            }
            onload = () => {
              const one = document.getElementById('with');
              document.getElementById('result').textContent = one.contentDocument.title + ': '
                + one.contentWindow.performance.getEntriesByType('resource').length + ' asked for, '
                + (look('with') === look('without') ? 'alike' : 'different') + ' in '
                + look('with').split('\\n').length + ' lines';
            };
            </script>
            """;

    @TempDir
    Path folder;

    @Test
    void itAsksForNothingElseAndShowsTheSameWithScriptsOff() throws IOException, InterruptedException {
        new WritePage().write(InventedShop.review(), folder);
        Path frames = Files.writeString(folder.resolve("frames.html"), FRAMES);
        String dom = new Desk(folder)
                .chromium(
                        "--allow-file-access-from-files",
                        "--virtual-time-budget=60000",
                        "--dump-dom",
                        frames.toUri().toString());
        assertThat(dom).containsPattern("Bench review, 31 Oct 2026: 0 asked for, alike in [0-9]{4,} lines");
    }
}
