package benchtrue.nightly;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Holds a result folder against the record of the run that wrote it. */
public final class VerifyResult {
    /**
     * Returns what differs, in words: files that are missing, changed or not of the run. Empty where all is as written.
     *
     * @param folder a result folder, such as {@code out/2026-10-31}; a link is followed
     * @throws IOException where the folder or its {@code run.json} can't be read
     */
    public List<String> verify(Path folder) throws IOException {
        Path real = folder.toRealPath();
        Map<String, FileDigest> found = new TreeMap<>();
        for (FileDigest file : RunFolder.digests(real)) {
            found.put(file.file(), file);
        }
        found.remove(RunRecord.FILE);
        List<String> differences = new ArrayList<>();
        String text = Files.readString(real.resolve(RunRecord.FILE), StandardCharsets.UTF_8);
        for (FileDigest written : outputs(Json.read(text))) {
            FileDigest now = found.remove(written.file());
            if (now == null) {
                differences.add(written.file() + " is missing");
            } else if (!now.equals(written)) {
                differences.add(written.file() + " was changed: " + now.bytes() + " bytes, written " + written.bytes());
            }
        }
        found.keySet().forEach(name -> differences.add(name + " is not of this run"));
        return differences;
    }

    /** Returns the files that a record of a run lists. */
    static List<FileDigest> outputs(JsonObject record) throws IOException {
        List<FileDigest> outputs = new ArrayList<>();
        for (JsonObject file : record.objects("outputs")) {
            outputs.add(new FileDigest(file.text("file"), file.whole("bytes"), file.text("sha256")));
        }
        return outputs;
    }
}
