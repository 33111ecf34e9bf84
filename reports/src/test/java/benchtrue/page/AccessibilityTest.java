package benchtrue.page;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.Desk;
import benchtrue.InventedShop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Runs axe-core (npm, MPL-2.0) over the page in Debian's Chromium; both must be reachable. */
@Tag("browser")
class AccessibilityTest {
    private static final String AXE = "axe-core@4.14.1";
    private static final String RESULT = "<pre id=\"result\">";

    @TempDir
    private static Path folder;

    private static String page;
    private static Desk desk;

    @BeforeAll
    static void fetchTheRulesAndWriteThePage() throws IOException, InterruptedException {
        new WritePage().write(InventedShop.review(), folder);
        page = Files.readString(folder.resolve("review.html"));
        desk = new Desk(folder);
        desk.npm(AXE);
    }

    /** The page as it is, but with the rules added and so without the policy that forbids scripts. */
    private static String withRules() {
        String rules = "<script src=\"node_modules/axe-core/axe.min.js\"></script><script>"
                + "axe.run(document,{resultTypes:['violations']}).then(r=>parent.postMessage(JSON.stringify("
                + "{passes:r.passes.length,violations:r.violations.map(v=>v.id+': '+v.nodes.map(n=>n.html+' '+n.failureSummary)"
                + ".join(' | '))}),'*'),e=>parent.postMessage('failed '+e,'*'))</script>";
        return page.replaceFirst("<meta http-equiv[^>]*>", "").replace("</body>", rules + "</body>");
    }

    private static String frame(int width) {
        return "<!DOCTYPE html><title>frame</title><iframe src=\"page.html\" width=\"" + width
                + "\" height=\"900\"></iframe>" + RESULT + "</pre><script>onmessage=e=>"
                + "{document.getElementById('result').textContent=e.data}</script>";
    }

    @ParameterizedTest
    @CsvSource({"360, 1", "360, 0", "1440, 1", "1440, 0"})
    void nobodyIsShutOutInLightOrDarkOnTelephoneOrDesk(int width, int scheme) throws IOException, InterruptedException {
        Files.writeString(folder.resolve("page.html"), withRules(), StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("frame.html"), frame(width), StandardCharsets.UTF_8);
        String dom = desk.chromium(
                "--allow-file-access-from-files",
                "--blink-settings=preferredColorScheme=" + scheme,
                "--window-size=1600,1000",
                "--virtual-time-budget=60000",
                "--dump-dom",
                folder.resolve("frame.html").toUri().toString());
        String result = dom.substring(dom.indexOf(RESULT) + RESULT.length(), dom.indexOf("</pre>"));
        assertThat(result).contains("\"violations\":[]");
        assertThat(result).containsPattern("\"passes\":[1-9][0-9]+");
    }
}
